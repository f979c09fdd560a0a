using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Tests.Tolerancing.Allowances;

public sealed class ContractionTests
{
    [Fact]
    public void Factor_FourInchesByAnEighthRule_IsTheBooksWorkedCheck()
    {
        // Reference 04d: 4 in with a 1/8 in/ft rule measures 4 + 1/24 in.
        Length pattern = Length.FromInches(4) * ContractionText.Parse("1/8 in/ft")!.Value.Factor;
        Assert.Equal(4.041667, pattern.Inches, 5e-7);
    }

    [Fact]
    public void Then_AluminiumForBronze_CompoundsWhatBooksAdd()
    {
        ContractionRate aluminium = ContractionRate.FromInchesPerFoot(5.0 / 32), bronze = ContractionRate.FromInchesPerFoot(3.0 / 16);
        // Reference 04d: added 11/32 in/ft; compounded 0.34619 in/ft, 28.849 mm/m.
        Assert.Equal(11.0 / 32, aluminium.InchesPerFoot + bronze.InchesPerFoot, 1e-12);
        Assert.Equal(0.34619, aluminium.Then(bronze).InchesPerFoot, 5e-6);
        Assert.Equal(28.849, aluminium.Then(bronze).Value * 1000, 5e-4);
    }

    [Fact]
    public void Trial_RateMeasuredOnTheMould_GivesThePublishedRule()
    {
        // Reference 04d: 2.1 % of the mould, so 12 in come out of 12.2574 in; as a rate on the casting 0.02145.
        ContractionRate trial = ContractionRate.Trial(Length.FromInches(12.2574), Length.FromInches(12), Length.Zero);
        Assert.Equal(1.02145, trial.Factor, 5e-6);
        Assert.Equal(0, trial.Above);
    }

    [Fact]
    public void Trial_UncertainReadings_ReachTheWorstTwo()
    {
        ContractionRate trial = ContractionRate.Trial(Length.FromMillimetres(48.8), Length.FromMillimetres(48), Length.FromMillimetres(0.05));
        // By hand: 48.85/47.95 and 48.75/48.05.
        Assert.Equal(0.0187695516 - 0.0166666667, trial.Above, 1e-9);
        Assert.Equal(0.0166666667 - 0.0145681582, trial.Below, 1e-9);
    }

    [Theory]
    // Two handbooks' ways of saying one thing: reference 04a and 04d.
    [InlineData("1/8 in/ft", 0.010416667)]
    [InlineData("1 in 96", 0.010416667)]
    [InlineData("1.0416667 %", 0.010416667)]
    [InlineData("3/16 in/ft", 0.015625)]
    [InlineData("1 in 64", 0.015625)]
    [InlineData("15.625 mm/m", 0.015625)]
    [InlineData("7/32 in/ft", 0.018229167)]
    [InlineData("0 %", 0)]
    public void Parse_AnyForm_IsOneRate(string text, double expected) => Assert.Equal(expected, ContractionText.Parse(text)!.Value.Value, 5e-10);

    [Theory]
    [InlineData("")]
    [InlineData("1.6")]
    [InlineData("1 in 0")]
    [InlineData("-1 %")]
    [InlineData("16 %")]
    [InlineData("1 in 20")]
    [InlineData("0.2 mm")]
    [InlineData("%")]
    public void Parse_NoContraction_IsNone(string text) => Assert.Null(ContractionText.Parse(text));

    [Theory]
    // Trade notes 2.2: 1 in 96, 1 in 64; 5/32 in/ft is 1 in 76.8.
    [InlineData("1/8 in/ft", "1 in 96")]
    [InlineData("3/16 in/ft", "1 in 64")]
    [InlineData("5/32 in/ft", "1 in 76.8")]
    public void OneIn_BookRates_AsTheRuleIsNamed(string text, string expected) => Assert.Equal(expected, ContractionText.OneIn(ContractionText.Parse(text)!.Value));

    [Theory]
    // A course's exercise: steel, 21 mm/m, a side of 200 mm; then its aluminium master at 13 mm/m. 200 × 1.021 = 204.2; × 1.013 = 206.855.
    [InlineData(200, 204.2, 206.855)]
    [InlineData(150, 153.15, 155.141)]
    public void Pattern_CoursesExerciseInSteel_IsRecomputed(double casting, double pattern, double master)
    {
        ContractionRate steel = ContractionText.Parse("21 mm/m")!.Value, aluminium = ContractionText.Parse("13 mm/m")!.Value;
        Assert.Equal(pattern, casting * steel.Factor, 5e-4);
        Assert.Equal(master, casting * aluminium.Then(steel).Factor, 5e-4);
    }

    /// <summary>An examination's question: a grey iron block 200 × 100 × 10 at 1 %, pattern's volume by casting's 1.03.</summary>
    [Fact]
    public void Volume_OfAPatternAtOnePerCent_IsTheExaminationsAnswer() =>
        Assert.Equal(1.03, Math.Pow(ContractionRate.FromPercent(1).Factor, 3), 0.0005);
}
