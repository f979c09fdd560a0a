using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tests.Standards;

public sealed class FoundryTablesTests
{
    // A casting shop publishes half the DCTG 11 width plus the grade G allowance, rounded up to whole millimetres.
    [Theory]
    [InlineData(100, 4)]
    [InlineData(160, 5)]
    [InlineData(250, 6)]
    [InlineData(400, 7)]
    [InlineData(630, 8)]
    [InlineData(1000, 9)]
    public void StockAndHalfTolerance_GradeElevenAndG_IsThePublishedWholeMillimetre(double size, double published)
    {
        Length nominal = Length.FromMillimetres(size);
        double sum = (CastingTolerances.PlusMinus(11, nominal).Value + RequiredMachiningAllowances.PerFace('G', nominal).Value).Millimetres;
        Assert.Equal(published, Math.Ceiling(sum - 1e-9));
    }

    // An engineering note on a DCTG 11 drawing gives a 25 to 40 mm wall a total of 5 mm, one grade coarser.
    [Fact]
    public void WallGrade_DctgEleven_IsOneCoarserAsPublished()
    {
        Assert.Equal(12, CastingTolerances.WallGrade(11));
        Assert.Equal(16, CastingTolerances.WallGrade(16));
        Assert.Equal(5, CastingTolerances.TotalWidth(CastingTolerances.WallGrade(11), Length.FromMillimetres(40)).Value.Millimetres);
    }

    // Total widths as two copies of ISO 8062-3:2007 table 2 print them, both ends of a step.
    [Theory]
    [InlineData(4, 10, 0.26)]
    [InlineData(8, 10.001, 1.1)]
    [InlineData(9, 10, 1.5)]
    [InlineData(10, 16, 2.2)]
    [InlineData(10, 16.001, 2.4)]
    [InlineData(12, 63, 5.6)]
    [InlineData(13, 16.001, 6)]
    public void TotalWidth_PublishedCell_IsEqualAndHalvesToPlusMinus(int grade, double mm, double total)
    {
        Assert.Equal(total, CastingTolerances.TotalWidth(grade, Length.FromMillimetres(mm)).Value.Millimetres);
        Assert.Equal(total / 2, CastingTolerances.PlusMinus(grade, Length.FromMillimetres(mm)).Value.Millimetres);
    }

    [Theory]
    [InlineData(13, 16)]
    [InlineData(1, 160.001)]
    [InlineData(5, 1000.001)]
    [InlineData(0, 20)]
    [InlineData(17, 20)]
    public void TotalWidth_NotGiven_IsRefused(int grade, double mm) =>
        Assert.False(CastingTolerances.TotalWidth(grade, Length.FromMillimetres(mm)).IsGiven);

    // The grades run in steps of about √2 up to 12 and 1.25 above; a lost digit would break the run.
    [Fact]
    public void TotalWidth_NeighbouringCells_StepEvenly()
    {
        double[] sizes = [10, 16, 25, 40, 63, 100, 160, 250, 400, 630, 1000];
        for (int i = 0; i < sizes.Length; i++)
        {
            for (int grade = 1; grade <= 16; grade++)
            {
                double? here = Total(grade, sizes[i]);
                if (here is not null && Total(grade + 1, sizes[i]) is { } coarser)
                    Assert.InRange(coarser / here.Value, 1.15, 1.55);
                if (here is not null && i > 0 && Total(grade, sizes[i - 1]) is { } smaller)
                    Assert.InRange(here.Value / smaller, 1.0, 1.36);
            }
        }
    }

    [Fact]
    public void PerFace_GradesAndSizes_NeverFall()
    {
        double[] sizes = [40, 63, 100, 160, 250, 400, 630, 1000];
        const string grades = "ABCDEFGHJK";
        for (int i = 0; i < sizes.Length; i++)
        {
            for (int g = 1; g < grades.Length; g++)
                Assert.True(Rma(grades[g], sizes[i]) >= Rma(grades[g - 1], sizes[i]));
            for (int g = 0; i > 0 && g < grades.Length; g++)
                Assert.True(Rma(grades[g], sizes[i]) >= Rma(grades[g], sizes[i - 1]));
        }
        Assert.False(RequiredMachiningAllowances.PerFace('I', Length.FromMillimetres(50)).IsGiven);
        Assert.False(RequiredMachiningAllowances.PerFace('G', Length.FromMillimetres(1001)).IsGiven);
    }

    // One annex (informative): three, two and one grades finer up to 10, 16, 25 mm.
    [Theory]
    [InlineData(10, 3)]
    [InlineData(10.001, 2)]
    [InlineData(16, 2)]
    [InlineData(25, 1)]
    [InlineData(25.001, 0)]
    public void GradesFinerWhenSmall_Border_SidesWithTheSmaller(double mm, int finer) =>
        Assert.Equal(finer, CastingGradesByProcess.GradesFinerWhenSmall(Length.FromMillimetres(mm)));

    // Two copies of the annex: hand-moulded clay-bonded sand, short series.
    [Theory]
    [InlineData("grey iron", 13, 15)]
    [InlineData("copper alloys", 13, 15)]
    [InlineData("light alloys", 11, 13)]
    public void CastingGrades_ClayBondedHandMoulded_AreThePublishedBands(string metal, int finest, int coarsest)
    {
        CastingGradeBand band = CastingGradesByProcess.For(metal).First(b => b.Process.Contains("clay", StringComparison.Ordinal));
        Assert.Equal((finest, coarsest), (band.FinestGrade, band.CoarsestGrade));
        Assert.Equal(Certainty.Solid, band.Certainty);
    }

    [Fact]
    public void Bands_AllRows_RunFromFineToCoarse()
    {
        Assert.All(CastingGradesByProcess.All, band => Assert.InRange(band.FinestGrade, 1, band.CoarsestGrade));
        Assert.All(MachiningAllowanceGrades.All, band => Assert.True(band.FinestGrade <= band.CoarsestGrade));
        Assert.All(LeastSections.All, row => Assert.True(row.From <= row.To));
        Assert.All(DraftRanges.All, row => Assert.InRange(row.LeastDegrees, 0, row.MostDegrees));
        Assert.All(OtherFinishAllowances.All, row => Assert.True(row.Least <= row.Most && row.Over < row.UpTo));
    }

    // A contraction-rule page: 1/8 in per foot is 1 in 96. A worked exercise: 4 in by that rule measures 4.041667 in.
    [Fact]
    public void Contraction_GreyIron_IsAnEighthPerFoot()
    {
        Contraction iron = Contractions.Of("grey iron").Value;
        Assert.Equal(1.0 / 96, iron.Usual, 12);
        Assert.Equal(4.041667, 4 * Contractions.PatternFactor(iron.Usual), 6);
    }

    // Patternmaking pages: aluminium pattern for bronze castings; compounded by hand 28.849 mm/m (they add to 28.646).
    [Fact]
    public void MasterFactor_AluminiumPatternForBronze_Compounds() =>
        Assert.Equal(0.028849, Contractions.MasterFactor(5.0 / 32 / 12, 3.0 / 16 / 12) - 1, 6);

    // Usual values in inches per foot as the books print them.
    [Theory]
    [InlineData("brass", 3, 16)]
    [InlineData("carbon steel", 1, 4)]
    [InlineData("aluminium", 5, 32)]
    [InlineData("aluminium bronze", 7, 32)]
    [InlineData("zinc", 5, 16)]
    public void Contraction_Usual_IsTheBooksFraction(string metal, double numerator, double denominator) =>
        Assert.Equal(numerator / denominator / 12, Contractions.Of(metal).Value.Usual, 9);

    [Theory]
    [InlineData("grey iron", "grey iron|cast iron")]
    [InlineData("brass", "brass|yellow brass|brass and bronze")]
    [InlineData("aluminium", "aluminium")]
    [InlineData("carbon steel", "steel")]
    [InlineData("zinc", "zinc")]
    [InlineData("magnesium", "magnesium")]
    [InlineData("copper", "copper")]
    [InlineData("tin bronze / gunmetal", "bronze|gunmetal|brass and bronze")]
    public void Contraction_Spread_IsThatOfItsReadings(string metal, string names)
    {
        ContractionReading[] readings =
        [
            .. ContractionReadings.All.Where(r => names.Split('|').Contains(r.Metal, StringComparer.Ordinal) && r.Kind != "from memory"),
        ];
        Contraction row = Contractions.Of(metal).Value;
        Assert.Equal(readings.Min(r => r.Lowest), row.Lowest * 1000, 6);
        Assert.Equal(readings.Max(r => r.Highest), row.Highest * 1000, 6);
        Assert.InRange(row.Usual, row.Lowest - 1e-5, row.Highest + 1e-5);
    }

    [Fact]
    public void Contraction_UnknownMetal_IsRefused() => Assert.False(Contractions.Of("wood").IsGiven);

    // From memory: the reprinted lecture table; 2 ft belongs to the first row.
    [Theory]
    [InlineData("grey iron", 2, 0.125)]
    [InlineData("grey iron", 2.001, 0.105)]
    [InlineData("grey iron", 100, 0.083)]
    [InlineData("cast steel", 6, 0.191)]
    [InlineData("aluminium", 0.1, 0.155)]
    public void ContractionBySize_Border_BelongsToTheStepBelow_FromMemory(string metal, double feet, double perFoot) =>
        Assert.Equal(perFoot / 12, ContractionBySize.Of(metal, Length.FromInches(12 * feet)).Value, 12);

    // One transcription of ISO 8062-4:2017, both ends of a step.
    [Theory]
    [InlineData(DraftProcess.SandHandMoulded, 4, 6.9)]
    [InlineData(DraftProcess.SandHandMoulded, 4.001, 6.5)]
    [InlineData(DraftProcess.SandMachineOrShell, 16, 2.7)]
    [InlineData(DraftProcess.Investment, 250, 0.2)]
    public void Draft_ByHeight_IsThePublishedAngle(DraftProcess process, double height, double degrees) =>
        Assert.Equal(degrees, DraftByHeight.External(process, Length.FromMillimetres(height)).Value.Degrees, 9);

    [Fact]
    public void Draft_OutsideTheTable_IsRefused()
    {
        Assert.False(DraftByHeight.External(DraftProcess.Investment, Length.FromMillimetres(250.001)).IsGiven);
        Assert.False(DraftByPatternMaterial.Wood(Length.FromInches(33)).IsGiven);
    }

    // From memory: the reprinted lecture table.
    [Fact]
    public void Draft_ByPatternMaterial_IsAsRemembered_FromMemory()
    {
        DraftPair wood = DraftByPatternMaterial.Wood(Length.FromInches(1)).Value;
        DraftPair metal = DraftByPatternMaterial.MetalOrPlastic(Length.FromInches(1.001)).Value;
        Assert.Equal((3.0, 3.0), (Math.Round(wood.External.Degrees, 9), Math.Round(wood.Internal.Degrees, 9)));
        Assert.Equal((1.0, 2.0), (Math.Round(metal.External.Degrees, 9), Math.Round(metal.Internal.Degrees, 9)));
    }

    // The course notes print these in mm, to 0.01, at the upper end of each step; held here are the inch fractions.
    [Theory]
    [InlineData("cast iron", FinishFace.Bore, 6, 3.17)]
    [InlineData("cast iron", FinishFace.Surface, 6, 2.38)]
    [InlineData("cast iron", FinishFace.Cope, 6, 4.76)]
    [InlineData("cast iron", FinishFace.Bore, 12, 3.17)]
    [InlineData("cast iron", FinishFace.Surface, 12, 3.17)]
    [InlineData("cast iron", FinishFace.Cope, 12, 6.35)]
    [InlineData("cast iron", FinishFace.Bore, 20, 4.76)]
    [InlineData("cast iron", FinishFace.Surface, 20, 3.97)]
    [InlineData("cast iron", FinishFace.Cope, 20, 6.35)]
    [InlineData("cast iron", FinishFace.Bore, 36, 6.35)]
    [InlineData("cast iron", FinishFace.Surface, 36, 4.76)]
    [InlineData("cast iron", FinishFace.Cope, 36, 6.35)]
    [InlineData("cast iron", FinishFace.Bore, 60, 7.94)]
    [InlineData("cast iron", FinishFace.Surface, 60, 4.76)]
    [InlineData("cast iron", FinishFace.Cope, 60, 7.94)]
    [InlineData("cast steel", FinishFace.Bore, 6, 3.17)]
    [InlineData("cast steel", FinishFace.Surface, 6, 3.17)]
    [InlineData("cast steel", FinishFace.Cope, 6, 6.35)]
    [InlineData("cast steel", FinishFace.Bore, 12, 6.35)]
    [InlineData("cast steel", FinishFace.Surface, 12, 4.76)]
    [InlineData("cast steel", FinishFace.Cope, 12, 6.35)]
    [InlineData("cast steel", FinishFace.Bore, 20, 6.35)]
    [InlineData("cast steel", FinishFace.Surface, 20, 6.35)]
    [InlineData("cast steel", FinishFace.Cope, 20, 7.94)]
    [InlineData("cast steel", FinishFace.Bore, 36, 7.14)]
    [InlineData("cast steel", FinishFace.Surface, 36, 6.35)]
    [InlineData("cast steel", FinishFace.Cope, 36, 9.52)]
    [InlineData("cast steel", FinishFace.Bore, 60, 7.94)]
    [InlineData("cast steel", FinishFace.Surface, 60, 6.35)]
    [InlineData("cast steel", FinishFace.Cope, 60, 12.70)]
    [InlineData("non-ferrous", FinishFace.Bore, 3, 1.59)]
    [InlineData("non-ferrous", FinishFace.Surface, 3, 1.59)]
    [InlineData("non-ferrous", FinishFace.Cope, 3, 1.59)]
    [InlineData("non-ferrous", FinishFace.Bore, 6, 2.38)]
    [InlineData("non-ferrous", FinishFace.Surface, 6, 1.59)]
    [InlineData("non-ferrous", FinishFace.Cope, 6, 2.38)]
    [InlineData("non-ferrous", FinishFace.Bore, 12, 2.38)]
    [InlineData("non-ferrous", FinishFace.Surface, 12, 1.59)]
    [InlineData("non-ferrous", FinishFace.Cope, 12, 3.17)]
    [InlineData("non-ferrous", FinishFace.Bore, 20, 3.17)]
    [InlineData("non-ferrous", FinishFace.Surface, 20, 2.38)]
    [InlineData("non-ferrous", FinishFace.Cope, 20, 3.17)]
    [InlineData("non-ferrous", FinishFace.Bore, 36, 3.17)]
    [InlineData("non-ferrous", FinishFace.Surface, 36, 3.17)]
    [InlineData("non-ferrous", FinishFace.Cope, 36, 3.97)]
    [InlineData("non-ferrous", FinishFace.Bore, 60, 3.97)]
    [InlineData("non-ferrous", FinishFace.Surface, 60, 3.17)]
    [InlineData("non-ferrous", FinishFace.Cope, 60, 4.76)]
    public void Stock_CourseNotes_IsThePrintedMillimetres(string metal, FinishFace face, double upToInches, double millimetres) =>
        Assert.InRange(FinishAllowances.Stock(metal, face, Length.FromInches(upToInches)).Value.Millimetres, millimetres - 0.011, millimetres + 0.011);

    [Fact]
    public void Stock_NotGiven_IsRefused()
    {
        Assert.False(FinishAllowances.Stock("cast iron", FinishFace.Bore, Length.FromInches(61)).IsGiven);
        Assert.False(FinishAllowances.Stock("iron (foundry chart)", FinishFace.Bore, Length.FromInches(5)).IsGiven);
        Assert.False(FinishAllowances.Stock("wood", FinishFace.Surface, Length.FromInches(5)).IsGiven);
    }

    // One aluminium guide: half the sum of the two walls.
    [Fact]
    public void Fillet_UnequalWalls_IsHalfTheSum() =>
        Assert.Equal(5, CastingDesignRules.Fillet(Length.FromMillimetres(4), Length.FromMillimetres(6)).Millimetres);

    // Two or three handbooks each; generic figures.
    [Theory]
    [InlineData("grey iron, generic", 6.6, 7.4)]
    [InlineData("brass, casting", 8.4, 8.7)]
    [InlineData("steel, rolled", 7.85, 7.85)]
    public void Material_Density_IsThePublishedRange(string name, double from, double to)
    {
        Material material = Materials.Named(name).Value;
        Assert.Equal((from, to), (material.DensityMin, material.DensityMax));
    }

    [Fact]
    public void Materials_AllRows_AreOrderedAndNamedOnce()
    {
        Assert.All(Materials.All, m => Assert.False(m.DensityMin > m.DensityMax || m.ModulusMin > m.ModulusMax || m.YieldStrength > m.TensileStrength));
        Assert.Equal(Materials.All.Length, Materials.All.Select(m => m.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.False(Materials.Named("unobtainium").IsGiven);
    }

    private static double? Total(int grade, double mm) =>
        CastingTolerances.TotalWidth(grade, Length.FromMillimetres(mm)) is { IsGiven: true } answer ? answer.Value.Millimetres : null;

    private static double Rma(char grade, double mm) => RequiredMachiningAllowances.PerFace(grade, Length.FromMillimetres(mm)).Value.Millimetres;
}
