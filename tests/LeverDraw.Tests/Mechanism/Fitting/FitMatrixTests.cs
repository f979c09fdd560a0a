using LeverDraw.Drafting.Sheets;
using LeverDraw.Mechanism.Fitting;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Tests.Support;
using LeverDraw.Units;

namespace LeverDraw.Tests.Mechanism.Fitting;

public sealed class FitMatrixTests
{
    private static readonly string[] Eras = ["early", "middle", "late", "smallest", "rare"];

    // Each lever goes into the plane of its own era; only the late one rattles there (its play on the pin is 0.23: trade notes 6.1).
    [Theory]
    [InlineData("early", FitVerdict.GoesIn)]
    [InlineData("middle", FitVerdict.GoesIn)]
    [InlineData("late", FitVerdict.WithPlay)]
    [InlineData("smallest", FitVerdict.GoesIn)]
    [InlineData("rare", FitVerdict.GoesIn)]
    public void Lever_InItsOwnPlane_Goes(string era, FitVerdict verdict)
    {
        LeverFit fit = Matrix().Of(SheetMaker.Profile("levers/" + era).Name, Plane(era).Name);
        Assert.Equal(verdict, fit.Verdict);
        Assert.NotNull(fit.Turns);
    }

    // The smallest plane takes its own lever only, and that goes into no other plane (the demo's facts, common practice).
    [Fact]
    public void SmallestLever_GoesIntoNoOtherPlane()
    {
        FitMatrix matrix = Matrix();
        string lever = SheetMaker.Profile("levers/smallest").Name, plane = Plane("smallest").Name;
        Assert.All(matrix.Fits.Where(f => f.Lever == lever != (f.Plane == plane)), f => Assert.Equal(FitVerdict.DoesNotGo, f.Verdict));
        LeverFit wrong = matrix.Fits.First(f => f.Lever != lever && f.Plane == plane);
        Assert.Equal(lever, matrix.Alternative(wrong)!.Lever);
        Assert.Null(wrong.Rework);
    }

    // By hand: 9.5 over the face and two bosses of 0.5 make 10.5 (+0/−0.1) against lugs of 9.8 ± 0.1: 10.45 − 9.8 = 0.65 too wide.
    [Fact]
    public void EarlyLever_InTheMiddlePlane_IsTooWideByHand()
    {
        LeverFit fit = Matrix().Of(SheetMaker.Profile("levers/early").Name, Plane("middle").Name);
        FitContact head = fit.Contacts.Single(c => c.Name == "head between lugs");
        Assert.Equal(FitState.Fails, head.State);
        Assert.Equal(-0.65, head.Typical.Millimetres, 1e-9);
        // Worst: 10.5 − 9.7 = 0.8, and 0.1 to run: 0.45 off each side, which the bosses have.
        Assert.Contains("0.45 mm", head.Rework!, StringComparison.Ordinal);
        // The lugs reamed to 2/0: its large end is 0.141 in, so 4.5 − 3.5814/2 = 2.709 of wall.
        Assert.Contains(fit.Rework!.Value, r => r.Contains("2/0", StringComparison.Ordinal) && r.Contains("2.709 mm", StringComparison.Ordinal));
    }

    // Shoulders begin level with the axis: a lug that is not cut back there stands in their way.
    [Fact]
    public void Shoulders_UnrelievedLugs_AreInTheWay()
    {
        HostPlane plane = Plane("middle");
        HostPlane plain = plane with { Lugs = plane.Lugs with { Relief = Angle.FromDegrees(0) } };
        FittedLever lever = Fitted("middle");
        FitContact contact = FitMatrix.Of([lever], [plain]).Fits[0].Contacts.Single(c => c.Name == "shoulders beside lugs");
        Assert.Equal(FitState.Fails, contact.State);
        Assert.Contains("shoulders", contact.Reason, StringComparison.Ordinal);
        // By hand at the lug's lower end, 4.5 below the axis. The shoulder is the line from (12.2, −12.25) that touches the fillet of 1.5 about (6.25, 0): it runs 32.2° off the arms.
        double to = Math.Atan2(12.2 - 6.25, 12.25) + Math.Asin(1.5 / Math.Sqrt(Math.Pow(12.2 - 6.25, 2) + (12.25 * 12.25)));
        double half = 12.2 - ((12.25 - 4.5) * Math.Tan(to));
        Assert.Equal(4.9 - half, contact.Typical.Millimetres, 0.002);
        Assert.Equal(FitState.Good, FitMatrix.Of([lever], [plane]).Fits[0].Contacts.Single(c => c.Name == "shoulders beside lugs").State);
    }

    // The early plane's lugs are reamed for a 2/0 pin: nobody must ream them larger to make the middle lever go, when that pin fits them as they are.
    [Fact]
    public void Rework_LugsFitAStandardPin_AreLeftAlone()
    {
        string advice = string.Join("; ", FitMatrix.Of([Fitted("middle")], [Plane("early")]).Fits[0].Rework!.Value);
        Assert.Contains("take pin 2/0, which fits the lugs as they are", advice, StringComparison.Ordinal);
        Assert.DoesNotContain("ream both lugs", advice, StringComparison.Ordinal);
    }

    // By hand: the late head of 9.2 (+0/−0.1) between the early plane's lugs of 10.8 ± 0.1 has 1.65 to spare: reamed to fit its pin, it still rattles, and that is said.
    [Fact]
    public void Play_LeftAfterRework_IsTold() =>
        Assert.Contains("head between lugs: 1.65 mm of play", FitMatrix.Of([Fitted("late")], [Plane("early")]).Fits[0].Play);

    // By hand: 3.383 in the middle at 1:48 over 18.8 from face to face is 3.579 at the large end; no reamer of 3.46 cleans that up.
    [Fact]
    public void Rework_ParallelPinInAWiderTaper_IsRefused()
    {
        LeverFit fit = FitMatrix.Of([Fitted("rare")], [Plane("early")]).Fits[0];
        Assert.Equal(FitVerdict.DoesNotGo, fit.Verdict);
        Assert.Null(fit.Rework);
    }

    [Fact]
    public void Reasons_InInches_NameInchesOnly()
    {
        FitMatrix matrix = FitMatrix.Of([.. Eras.Select(Fitted)], [.. Eras.Select(Plane)], ShownUnits.Inches);
        string all = string.Join("; ", matrix.Fits.SelectMany(f => f.Reasons.Concat(f.Rework ?? [])));
        Assert.Contains(" in", all, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", all, StringComparison.Ordinal);
    }

    [Fact]
    public void Rework_TooLittleLugWall_IsRefused()
    {
        HostPlane plane = Plane("middle");
        HostPlane thin = plane with { Lugs = plane.Lugs with { EdgeDistance = new(Length.FromMillimetres(2.2)) } };
        Assert.Null(FitMatrix.Of([Fitted("early")], [thin]).Fits[0].Rework);
    }

    private static FitMatrix Matrix() => FitMatrix.Of([.. Eras.Select(Fitted)], [.. Eras.Select(Plane)]);

    private static FittedLever Fitted(string era) =>
        new(SheetMaker.Profile("levers/" + era).Name, "", SheetMaker.Lever("levers/" + era), SheetMaker.Pin("pins/" + era));

    private static HostPlane Plane(string era)
    {
        var profile = SheetMaker.Profile("planes/" + era);
        return HostPlanePart.Build(profile.Name, profile.Values).Value!;
    }
}
