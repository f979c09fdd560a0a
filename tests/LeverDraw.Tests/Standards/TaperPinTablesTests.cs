using System.Globalization;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Tests.Standards;

public sealed class TaperPinTablesTests
{
    /// <summary>US Army TM 9-254 table 3-1: pin number, pin length (in), drill, its diameter (in); then the small end worked out apart from this code (in).</summary>
    private const string DrillTable =
        """
        6/0|0.75|1/16|0.0625|0.0624
        5/0|0.75|#47|0.0785|0.0784
        4/0|0.75|#42|0.0935|0.0934
        3/0|0.75|7/64|0.1094|0.1094
        2/0|0.75|1/8|0.1250|0.1254
        0|0.75|9/64|0.1406|0.1404
        1|0.75|5/32|0.1562|0.1564
        2|0.75|#16|0.1770|0.1774
        3|0.75|13/64|0.2031|0.2034
        4|0.75|15/64|0.2344|0.2344
        5|0.75|I|0.2720|0.2734
        5/0|1|#49|0.0730|0.0732
        4/0|1|#44|0.0860|0.0882
        3/0|1|#37|0.1040|0.1042
        2/0|1|#31|0.1200|0.1202
        0|1|#29|0.1360|0.1352
        1|1|#25|0.1495|0.1512
        2|1|11/64|0.1719|0.1722
        3|1|#9|0.1960|0.1982
        4|1|#1|0.2280|0.2292
        5|1|H|0.2660|0.2682
        2/0|1.25|#32|0.1160|0.1150
        0|1.25|#30|0.1285|0.1300
        1|1.25|#26|0.1470|0.1460
        2|1.25|#19|0.1660|0.1670
        3|1.25|#10|0.1935|0.1930
        4|1.25|#2|0.2210|0.2240
        5|1.25|G|0.2610|0.2630
        0|1.5|1/8|0.1250|0.1247
        1|1.5|9/64|0.1406|0.1407
        2|1.5|#20|0.1610|0.1618
        3|1.5|3/16|0.1875|0.1878
        4|1.5|7/32|0.2188|0.2188
        5|1.5|F|0.2570|0.2577
        0|1.75|#31|0.1200|0.1195
        1|1.75|#29|0.1360|0.1355
        2|1.75|5/32|0.1562|0.1565
        3|1.75|#14|0.1820|0.1825
        4|1.75|#3|0.2130|0.2135
        5|1.75|E|0.2500|0.2525
        0|2|#33|0.1130|0.1143
        1|2|#30|0.1285|0.1303
        2|2|#25|0.1495|0.1513
        3|2|#16|0.1770|0.1773
        4|2|#4|0.2090|0.2083
        5|2|D|0.2460|0.2473
        0|2.25|7/64|0.1094|0.1091
        1|2.25|1/8|0.1250|0.1251
        2|2.25|#26|0.1470|0.1461
        3|2.25|11/64|0.1719|0.1721
        4|2.25|13/64|0.2031|0.2031
        5|2.25|C|0.2420|0.2421
        0|2.5|#37|0.1040|0.1039
        1|2.5|#31|0.1200|0.1199
        2|2.5|#28|0.1405|0.1409
        3|2.5|#19|0.1660|0.1669
        4|2.5|#8|0.1990|0.1979
        5|2.5|B|0.2380|0.2369
        """;

    // A second, independent page lists these large ends to three decimals or as fractions.
    [Theory]
    [InlineData("7/0", 0.0625)]
    [InlineData("6/0", 0.078)]
    [InlineData("5/0", 0.094)]
    [InlineData("4/0", 0.109)]
    [InlineData("3/0", 0.125)]
    [InlineData("2/0", 0.141)]
    [InlineData("0", 0.156)]
    [InlineData("1", 0.172)]
    [InlineData("2", 0.193)]
    [InlineData("3", 0.219)]
    [InlineData("4", 0.25)]
    public void InchPins_LargeEnd_IsThePublishedOne(string number, double inches) =>
        Assert.Equal(inches, InchTaperPins.Numbered(number).Value.LargeEnd.Inches, 4);

    // Above No. 4 only one table was seen; the series is known to be geometric, and no step is out of line.
    [Fact]
    public void InchPins_AboveFour_RunGeometrically()
    {
        for (int i = 1; i < InchTaperPins.All.Length; i++)
        {
            double ratio = InchTaperPins.All[i].LargeEnd / InchTaperPins.All[i - 1].LargeEnd;
            Assert.InRange(ratio, 1.09, 1.26);
        }
        Assert.Equal(21, InchTaperPins.All.Length);
    }

    // ASME B18.8.2 classes, from memory: numbers typed from the class limits, not from the offsets.
    [Theory]
    [InlineData("7/0", 0.0638, 0.0618, 0.0635)]
    [InlineData("3/0", 0.1263, 0.1243, 0.1260)]
    [InlineData("0", 0.1573, 0.1553, 0.1570)]
    [InlineData("5", 0.2903, 0.2883, 0.2900)]
    [InlineData("14", 1.5223, 1.5203, 1.5220)]
    public void InchPins_ClassLimits_AreAsRemembered_FromMemory(string number, double commercialMax, double commercialMin, double precisionMax)
    {
        Length large = InchTaperPins.Numbered(number).Value.LargeEnd;
        Assert.Equal(commercialMax, (large + InchTaperPins.CommercialOver).Inches, 9);
        Assert.Equal(commercialMin, (large - InchTaperPins.CommercialUnder).Inches, 9);
        Assert.Equal(precisionMax, (large + InchTaperPins.PrecisionOver).Inches, 9);
    }

    [Fact]
    public void InchPins_SmallEnd_AgreesWithThePublishedArithmeticAndTheArmyDrills()
    {
        int rows = 0;
        foreach (string[] cell in DrillTable.Split('\n').Select(line => line.Trim().Split('|')))
        {
            Length length = Length.FromInches(Number(cell[1]));
            Length smallEnd = InchTaperPins.Numbered(cell[0]).Value.SmallEnd(length);
            Assert.InRange(smallEnd.Inches, Number(cell[4]) - 0.00006, Number(cell[4]) + 0.00006);
            // The Army drill is meant for this very small end: none lies further off than 0.0035 in.
            Assert.InRange(Number(cell[3]) - smallEnd.Inches, -0.0035, 0.0035);
            Assert.Equal(cell[2], TaperPinDrills.For(cell[0], length).Value.Drill);
            Assert.InRange(TwistDrills.Named(cell[2]).Value.Diameter.Inches, Number(cell[3]) - 0.00005001, Number(cell[3]) + 0.00005001);
            rows++;
        }
        Assert.Equal(58, rows);
        Assert.Equal(58, TaperPinDrills.All.Length);
    }

    [Theory]
    [InlineData("6/0", 1.0)]
    [InlineData("6", 1.0)]
    [InlineData("3", 0.8)]
    public void Drills_NotListed_IsRefused(string number, double inches) => Assert.False(TaperPinDrills.For(number, Length.FromInches(inches)).IsGiven);

    // One club page (reference 07d), all its rows, printed to four decimals.
    [Theory]
    [InlineData("7/0", 0.0469, null, null)]
    [InlineData("6/0", 0.0469, null, null)]
    [InlineData("5/0", 0.0625, null, null)]
    [InlineData("4/0", 0.0781, null, null)]
    [InlineData("3/0", 0.0938, null, null)]
    [InlineData("2/0", 0.0938, 0.1094, 1.25)]
    [InlineData("0", 0.0938, 0.125, 1.5)]
    [InlineData("1", 0.1094, 0.1406, 1.5)]
    [InlineData("2", 0.1094, 0.1406, 1.75)]
    [InlineData("3", 0.1406, 0.1719, 1.75)]
    public void StepDrills_EveryRow_IsThePublishedOne_OneSource(string number, double first, double? second, double? depth)
    {
        TaperPinSteps steps = TaperPinStepDrills.For(number).Value;
        Assert.InRange(steps.First.Inches, first - 0.0000501, first + 0.0000501);
        Assert.Equal(second is null, steps.Second is null);
        if (second is { } drill)
        {
            Assert.InRange(steps.Second!.Drill.Inches, drill - 0.0000501, drill + 0.0000501);
            Assert.Equal(depth!.Value, steps.Second.Depth.Inches, 9);
        }
    }

    [Fact]
    public void StepDrills_NotListed_IsRefused()
    {
        Assert.False(TaperPinStepDrills.For("4").IsGiven);
        Assert.Equal(10, TaperPinStepDrills.All.Length);
    }

    // From memory; the last column is flute length over 48 worked out apart from this code.
    [Theory]
    [InlineData("7/0", 0.0497, 0.0666, 0.0169)]
    [InlineData("6/0", 0.0611, 0.0806, 0.0195)]
    [InlineData("5/0", 0.0719, 0.0966, 0.0247)]
    [InlineData("4/0", 0.0869, 0.1142, 0.0273)]
    [InlineData("3/0", 0.1029, 0.1302, 0.0273)]
    [InlineData("2/0", 0.1137, 0.1462, 0.0326)]
    [InlineData("0", 0.1287, 0.1638, 0.0352)]
    [InlineData("1", 0.1447, 0.1798, 0.0352)]
    [InlineData("2", 0.1605, 0.2008, 0.0404)]
    [InlineData("3", 0.1813, 0.2294, 0.0482)]
    [InlineData("4", 0.2071, 0.2604, 0.0534)]
    [InlineData("5", 0.2409, 0.2994, 0.0586)]
    [InlineData("6", 0.2773, 0.3540, 0.0768)]
    [InlineData("7", 0.3297, 0.4220, 0.0924)]
    [InlineData("8", 0.3971, 0.5050, 0.1081)]
    [InlineData("9", 0.4805, 0.6066, 0.1263)]
    [InlineData("10", 0.5799, 0.7216, 0.1419)]
    public void Reamers_Ends_DifferByTheTaperOverTheFlutes_FromMemory(string number, double smallEnd, double largeEnd, double rise)
    {
        TaperPinReamer reamer = TaperPinReamers.Numbered(number).Value;
        Assert.Equal(smallEnd, reamer.SmallEnd.Inches, 9);
        Assert.Equal(largeEnd, reamer.LargeEnd.Inches, 9);
        Assert.InRange((reamer.LargeEnd - reamer.SmallEnd).Inches, rise - 0.00025, rise + 0.00025);
        Assert.InRange((reamer.FluteLength * Taper.InchPins.Rate).Inches, rise - 0.0001, rise + 0.0001);
    }

    // The longest such pin ends 0.0011 to 0.0014 in above the reamer's small end in every row, which settles No. 5 as 2 1/4 in.
    [Fact]
    public void Reamers_StandardLengths_AreCoveredByTheReamer()
    {
        foreach (InchTaperPin pin in InchTaperPins.All.Where(pin => pin.StandardReamerLengths is not null))
        {
            TaperPinReamer reamer = TaperPinReamers.Numbered(pin.Number).Value;
            Length smallEnd = pin.SmallEnd(pin.StandardReamerLengths!.Longest);
            Assert.True(reamer.Covers(smallEnd, pin.LargeEnd), pin.Number);
            Assert.InRange((smallEnd - reamer.SmallEnd).Inches, 0.0010, 0.0015);
        }
    }

    // A reaming manual: the 6 x 50 pin is 7 mm at the top. Others by hand, l/50.
    [Theory]
    [InlineData(6, 50, 7)]
    [InlineData(3, 20, 3.4)]
    [InlineData(2.5, 16, 2.82)]
    [InlineData(50, 200, 54)]
    public void MetricPins_LargeEnd_IsSmallEndPlusAFiftieth(double d, double length, double largeEnd) =>
        Assert.Equal(largeEnd, MetricTaperPins.WithSmallEnd(Length.FromMillimetres(d)).Value.LargeEnd(Length.FromMillimetres(length)).Millimetres, 9);

    // One scan of ISO 2339: the lower deviations of d are h10.
    [Theory]
    [InlineData(0.6, -40)]
    [InlineData(0.8, -40)]
    [InlineData(1, -40)]
    [InlineData(1.2, -40)]
    [InlineData(1.5, -40)]
    [InlineData(2, -40)]
    [InlineData(2.5, -40)]
    [InlineData(3, -40)]
    [InlineData(4, -48)]
    [InlineData(5, -48)]
    [InlineData(6, -48)]
    [InlineData(8, -58)]
    [InlineData(10, -58)]
    [InlineData(12, -70)]
    [InlineData(16, -70)]
    [InlineData(20, -84)]
    [InlineData(25, -84)]
    [InlineData(30, -84)]
    [InlineData(40, -100)]
    [InlineData(50, -100)]
    public void MetricPins_Deviation_IsH10(double d, double lowerMicrometres)
    {
        Length nominal = MetricTaperPins.WithSmallEnd(Length.FromMillimetres(d)).Value.SmallEnd;
        Assert.Equal(lowerMicrometres, Iso286.Deviations(ToleranceZone.Parse("h10").Value, nominal).Value.Lower.Millimetres * 1000, 9);
    }

    // Limits of every length as printed in one excerpt of the pin standard.
    [Theory]
    [InlineData(2, 1.75, 2.25)]
    [InlineData(3, 2.75, 3.25)]
    [InlineData(4, 3.75, 4.25)]
    [InlineData(5, 4.75, 5.25)]
    [InlineData(6, 5.75, 6.25)]
    [InlineData(8, 7.75, 8.25)]
    [InlineData(10, 9.75, 10.25)]
    [InlineData(12, 11.5, 12.5)]
    [InlineData(14, 13.5, 14.5)]
    [InlineData(16, 15.5, 16.5)]
    [InlineData(18, 17.5, 18.5)]
    [InlineData(20, 19.5, 20.5)]
    [InlineData(22, 21.5, 22.5)]
    [InlineData(24, 23.5, 24.5)]
    [InlineData(26, 25.5, 26.5)]
    [InlineData(28, 27.5, 28.5)]
    [InlineData(30, 29.5, 30.5)]
    [InlineData(32, 31.5, 32.5)]
    [InlineData(35, 34.5, 35.5)]
    [InlineData(40, 39.5, 40.5)]
    [InlineData(45, 44.5, 45.5)]
    [InlineData(50, 49.5, 50.5)]
    [InlineData(55, 54.25, 55.75)]
    [InlineData(60, 59.25, 60.75)]
    [InlineData(65, 64.25, 65.75)]
    [InlineData(70, 69.25, 70.75)]
    [InlineData(75, 74.25, 75.75)]
    [InlineData(80, 79.25, 80.75)]
    [InlineData(85, 84.25, 85.75)]
    [InlineData(90, 89.25, 90.75)]
    [InlineData(95, 94.25, 95.75)]
    [InlineData(100, 99.25, 100.75)]
    [InlineData(120, 119.25, 120.75)]
    [InlineData(140, 139.25, 140.75)]
    [InlineData(160, 159.25, 160.75)]
    [InlineData(180, 179.25, 180.75)]
    [InlineData(200, 199.25, 200.75)]
    public void PinLengths_Limits_AreThePublishedOnes(double nominal, double min, double max)
    {
        Length length = Length.FromMillimetres(nominal);
        Assert.Contains(length, MetricPinLengths.All);
        Length plusMinus = MetricPinLengths.PlusMinus(length).Value;
        Assert.Equal(min, (length - plusMinus).Millimetres, 9);
        Assert.Equal(max, (length + plusMinus).Millimetres, 9);
    }

    [Theory]
    [InlineData(18.5, 20)]
    [InlineData(20, 20)]
    [InlineData(1, 2)]
    public void PinLengths_AtLeast_IsTheNextListed(double wanted, double listed) =>
        Assert.Equal(listed, MetricPinLengths.AtLeast(Length.FromMillimetres(wanted)).Value.Millimetres);

    [Fact]
    public void PinLengths_OverTheList_IsRefused() => Assert.False(MetricPinLengths.AtLeast(Length.FromMillimetres(201)).IsGiven);

    // Three sources print the m6 and h8 limits (µm) beside the pins.
    [Theory]
    [InlineData(0.6, 2, 8, -14)]
    [InlineData(0.8, 2, 8, -14)]
    [InlineData(1, 2, 8, -14)]
    [InlineData(1.2, 2, 8, -14)]
    [InlineData(1.5, 2, 8, -14)]
    [InlineData(2, 2, 8, -14)]
    [InlineData(2.5, 2, 8, -14)]
    [InlineData(3, 2, 8, -14)]
    [InlineData(4, 4, 12, -18)]
    [InlineData(5, 4, 12, -18)]
    [InlineData(6, 4, 12, -18)]
    [InlineData(8, 6, 15, -22)]
    [InlineData(10, 6, 15, -22)]
    [InlineData(12, 7, 18, -27)]
    [InlineData(16, 7, 18, -27)]
    [InlineData(20, 8, 21, -33)]
    [InlineData(25, 8, 21, -33)]
    [InlineData(30, 8, 21, -33)]
    [InlineData(40, 9, 25, -39)]
    [InlineData(50, 9, 25, -39)]
    public void ParallelPins_M6AndH8_AreThePublishedLimits(double d, double m6Lower, double m6Upper, double h8Lower)
    {
        Length nominal = ParallelPins.WithDiameter(Length.FromMillimetres(d)).Value.Diameter;
        LimitDeviations m6 = Iso286.Deviations(ToleranceZone.Parse("m6").Value, nominal).Value;
        Assert.Equal(m6Lower, m6.Lower.Millimetres * 1000, 9);
        Assert.Equal(m6Upper, m6.Upper.Millimetres * 1000, 9);
        Assert.Equal(h8Lower, Iso286.Deviations(ToleranceZone.Parse("h8").Value, nominal).Value.Lower.Millimetres * 1000, 9);
    }

    [Fact]
    public void Lookups_UnknownPin_AreRefused()
    {
        Assert.False(InchTaperPins.Numbered("8/0").IsGiven);
        Assert.False(InchTaperPins.Numbered("2/0 ").IsGiven);
        Assert.False(TaperPinReamers.Numbered("11").IsGiven);
        Assert.False(MetricTaperPins.WithSmallEnd(Length.FromMillimetres(7)).IsGiven);
        Assert.False(ParallelPins.WithDiameter(Length.FromMillimetres(3.5)).IsGiven);
        Assert.False(InchTaperPins.Above(InchTaperPins.All[^1]).IsGiven);
        Assert.False(MetricTaperPins.Above(MetricTaperPins.All[^1]).IsGiven);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
