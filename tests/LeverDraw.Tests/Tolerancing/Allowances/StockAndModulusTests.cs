using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing.Allowances;

public sealed class StockAndModulusTests
{
    private static Length Mm(double v) => Length.FromMillimetres(v);

    [Theory]
    // Reference 03f: a design guide's published allowances, DCTG 11 and RMA grade G, one face, before rounding up to whole millimetres.
    [InlineData(100, 3.6)]
    [InlineData(160, 4.7)]
    [InlineData(250, 5.6)]
    [InlineData(400, 6.6)]
    [InlineData(630, 7.5)]
    [InlineData(1000, 9.0)]
    public void OneFace_GuidesWorkedTable_IsRecomputed(double largest, double expected)
    {
        Length allowance = RequiredMachiningAllowances.PerFace('G', Mm(largest)).Value, half = CastingTolerances.PlusMinus(11, Mm(largest)).Value;
        Assert.Equal(largest + expected, RawSize.OneFace(Mm(largest), allowance, half).Millimetres, 1e-9);
    }

    [Fact]
    public void BothFacesAndBore_ByHand()
    {
        Assert.Equal(9.5 + 1 + 1.1, RawSize.BothFaces(Mm(9.5), Mm(0.5), Mm(1.1)).Millimetres, 1e-12);
        Assert.Equal(3.4 - 1 - 0.5, RawSize.Bore(Mm(3.4), Mm(0.5), Mm(0.5)).Millimetres, 1e-12);
    }

    [Fact]
    public void ByRawSize_PadInGreenSand_ByHand()
    {
        // Grey iron, hand moulded: DCTG 13, three finer up to 10 mm is 10, total 2.0 mm; RMA grade F up to 40 mm is 0.5. Raw 3.05 + 1.0 + 1.0 = 5.05, so 1.0 on each face.
        CastingToleranceRule rule = CastingToleranceRule.Usual(FoundryMetal.GreyIron, MouldingProcess.GreenSand)!.Value;
        Assert.Equal(13, rule.Grade);
        Assert.Equal(1.0, MachiningStock.ByRawSize(Mm(3.05), Mm(3.05), Mm(0.5), rule, 0).Value.Millimetres, 1e-9);
    }

    [Fact]
    public void ByRawSize_AcrossAStep_SettlesOnTheLargerTolerance()
    {
        // 9.5 + 1.0 is over 10 mm: DCTG 13 − 2 = 11, total 3.0; raw 9.5 + 1 + 1.5 = 12.0, so 1.25 on each face.
        CastingToleranceRule rule = new(13, true);
        Assert.Equal(1.25, MachiningStock.ByRawSize(Mm(9.5), Mm(9.5), Mm(0.5), rule, 0).Value.Millimetres, 1e-9);
    }

    [Theory]
    [InlineData(10, 10)]
    [InlineData(10.001, 11)]
    [InlineData(16, 11)]
    [InlineData(16.001, 12)]
    [InlineData(25, 12)]
    [InlineData(25.001, 13)]
    public void GradeOf_ShortSeries_IsFinerBelowEachStep(double size, int grade)
    {
        CastingToleranceRule rule = new(13, true);
        Assert.Equal(grade, rule.GradeOf(Mm(size)));
        // Reference 03f: a wall is one grade coarser.
        Assert.Equal(grade + 1, rule.GradeOf(Mm(size), wall: true));
    }

    [Fact]
    public void Usual_EveryMetalAndProcess_HasGradesAndSections()
    {
        foreach (FoundryMetal metal in FoundryMetal.All)
        {
            foreach (MouldingProcess process in MouldingProcess.All)
            {
                Assert.NotNull(CastingToleranceRule.Usual(metal, process));
                Assert.NotNull(process.Allowances(metal));
                Assert.NotNull(process.LeastSection(metal));
                Assert.InRange(metal.BookRate.Value, 0.008, 0.0183);
            }
        }
    }

    [Fact]
    public void Modulus_BarPlateCylinderBlock_ClosedFormulas()
    {
        // Trade notes 7.3: bar hw/2(h+w): 4.2 × 5.5 is 23.1/19.4.
        Assert.Equal(1.1907216, CastingModulus.Bar(Mm(4.2), Mm(5.5)).Millimetres, 1e-7);
        // A plate between two faces: half the thickness, the bar's limit.
        Assert.Equal(CastingModulus.Plate(Mm(4)).Millimetres, CastingModulus.Bar(Mm(4), Mm(1e9)).Millimetres, 1e-6);
        // Cylinder d = l: d/6; a cube: side/6 (every foundry textbook).
        Assert.Equal(2, CastingModulus.Cylinder(Mm(12), Mm(12)).Millimetres, 1e-12);
        Assert.Equal(2, CastingModulus.Block(Mm(12), Mm(12), Mm(12)).Millimetres, 1e-12);
    }
}
