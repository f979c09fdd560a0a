using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever.Sheets;

/// <summary>A machinist with the sheet alone can make and check the part: expected values by hand, the sum beside each.</summary>
public class LeverContentTests
{
    // Small end of the hole: 3.057 − 4.75/48 = 2.958; less 0.1 for the reamer .1125 in, so drill #34 (.1110 in = 2.819 mm); the 3/0 reamer runs from .1029 to .1302 in.
    // At the face of a head 9.4 to 9.5 wide 4.75/48 = 0.09896 more than 3.057, 4.7/48 = 0.09792 more than 3.075: rounded inwards 3.156 and 3.172, which lie 0.016 × 48 = 0.768 apart on a plug.
    [Theory]
    [InlineData("levers/middle", "DRILL #34 (⌀2.819)", "PIN REAMER NO. 3/0", "⌀3.156 / 3.172", "0.76", "TC-P-02")]
    // 3.423 − 5.25/48 = 3.3136, less 0.1 .1265 in: 1/8 (3.175 mm); large end 3.532 mm = .1391 in: only 2/0 (to .1462 in) reaches. H7 at the faces of bosses 10.4 to 10.5 apart: 3.423 + 5.25/48 = 3.5324, 3.435 + 5.2/48 = 3.5433; 0.010 × 48 = 0.48.
    [InlineData("levers/early", "DRILL 1/8 (⌀3.175)", "PIN REAMER NO. 2/0", "⌀3.533 / 3.543", "0.48", "TC-P-01")]
    public void HoleCallout_TaperedHole_SaysToolsSideFitAndGauge(string profile, string drill, string reamer, string atFace, string apart, string pin)
    {
        string[] lines = Dimension(profile, "hole.diameter").Text.Split('\n');
        Assert.Equal(
            ["AT MID-PLANE, TAPER 1:48", "LARGE END AT RIGHT IN FORK VIEW", "CHECK " + atFace + " AT LARGE END,", "PLUG LINES " + apart + " APART", drill + ", " + reamer, "REAM LEVER ALONE, RUNNING FIT ON " + pin],
            lines[1..]);
    }

    /// <summary>The callout's limits at the large end's face, rounded inwards, beside the same diameter rounded to nearest would be two numbers for one fact.</summary>
    [Theory]
    [InlineData("levers/early")]
    [InlineData("levers/middle")]
    public void TaperedHole_CheckedAtItsLargeEnd_HasNoEndInBrackets(string profile)
    {
        PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3"));
        Assert.Contains("AT LARGE END,", Dimension(profile, "hole.diameter").Text, StringComparison.Ordinal);
        Assert.DoesNotContain(sheet.Dimensions, d => d.Name is "hole.left_end" or "hole.right_end");
    }

    [Fact]
    public void TaperedHole_WithoutLimits_HasBothEndsInBrackets()
    {
        ValueBag values = DemoLevers.Middle().With(LeverFields.HoleDiameter, 3.057);
        SheetContent content = LeverDraw.Parts.AdjustingLever.Sheets.FinishedLeverSheet.Content(LeverPart.Build(values).Value!, SheetMaker.Around("lever", values), SheetMaker.Options("A3"));
        Assert.Equal(["hole.left_end", "hole.right_end"], content.Views.SelectMany(v => v.Annotations).Select(a => a.Name).Where(n => n is "hole.left_end" or "hole.right_end").Order());
    }

    // In two units the lines are long anyway: each tool has its own.
    [Fact]
    public void HoleCallout_InBothUnits_HasShorterLines()
    {
        PlotSheet sheet = SheetMaker.Draw("levers/middle", SheetMaker.Options("A3", ShownUnits.MillimetresAndInches));
        string[] lines = sheet.Dimensions.Single(d => d.Name == "hole.diameter").Text.Split('\n');
        Assert.Equal(["DRILL #34 (⌀2.819 [.1110])", "PIN REAMER NO. 3/0", "REAM LEVER ALONE,", "RUNNING FIT ON TC-P-02"], lines[^4..]);
    }

    // 0.1 mm for the reamer: 2.8 − 0.1 = 2.7 mm = .1063 in: #37 (.1040 in = 2.642 mm), for #36 is .1065 in. 3.5 − 0.1 = 3.4 mm = .1339 in: #30 (.1285 in).
    [Theory]
    [InlineData("levers/late", "DRILL #37 (⌀2.642)", "RUNNING FIT ON TC-P-03")]
    [InlineData("levers/rare", "DRILL #30 (⌀3.264)", "RUNNING FIT ON TC-P-05")]
    public void HoleCallout_ParallelHole_SaysDrillAndParallel(string profile, string drill, string pin)
    {
        string[] lines = Dimension(profile, "hole.diameter").Text.Split('\n');
        Assert.EndsWith(" THROUGH", lines[0], StringComparison.Ordinal);
        Assert.Equal([drill, "REAM PARALLEL, LEVER ALONE,", pin], lines[1..]);
    }

    // Hole (ISO 286-2: H7 over 3 mm 12 µm, H8 18 µm, up to 3 mm H9 25 µm) less the pin's limits, as its sheet gives them. Clearance × 48 (trade notes 3.4: 2.4 mm gives 0.05, 3.8 mm 0.08).
    // A taper pin in a parallel hole: late 2.8 − 2.595 − 9.2/96 = 0.1091 and 2.825 − 2.571 + 9.2/96 = 0.3498; smallest 2.36 − 2.247 − 7.6/96 = 0.0338 and 2.385 − 2.223 + 7.6/96 = 0.2412.
    [Theory]
    [InlineData("levers/early", "INFORMATION: CLEARANCE 0.015 TO 0.052 mm ON PIN ⌀3.383 / 3.408 AT MID-PLANE. FOR 0.04 REAM 1.92 DEEPER THAN WHERE PIN JUST SEATS, WITHIN HOLE'S LIMITS.")]
    [InlineData("levers/middle", "INFORMATION: CLEARANCE 0.056 TO 0.098 mm ON PIN ⌀2.977 / 3.001 AT MID-PLANE. FOR 0.08 REAM 3.84 DEEPER THAN WHERE PIN JUST SEATS, WITHIN HOLE'S LIMITS.")]
    [InlineData("levers/late", "INFORMATION: CLEARANCE 0.109 TO 0.35 mm ON PIN ⌀2.571 / 2.595 AT MID-PLANE, LEAST ON SIDE OF PIN'S LARGE END.")]
    [InlineData("levers/smallest", "INFORMATION: CLEARANCE 0.033 TO 0.242 mm ON PIN ⌀2.223 / 2.247 AT MID-PLANE, LEAST ON SIDE OF PIN'S LARGE END.")]
    [InlineData("levers/rare", "INFORMATION: CLEARANCE 0.04 TO 0.07 mm ON PIN ⌀3.448 / 3.460.")]
    public void Notes_AnyHole_SayHowTheClearanceIsReached(string profile, string note) => Assert.Contains(note, Content(profile).Notes);

    // The profile states grade 7 as agreed. ISO 8062-3:2007 total widths 0.74, 0.78, 0.82 and 0.90 mm, halved. Without one, the process's usual grades: MaterialNotesTests.
    [Fact]
    public void Notes_SandCast_GiveTheAgreedToleranceBySize() =>
        Assert.Contains("REST AS CAST TO ISO 8062-3:2007, ±0.37 UP TO 10, ±0.39 UP TO 16, ±0.41 UP TO 25, ±0.45 UP TO 40 (DCTG 7), WALLS ONE GRADE COARSER, AS AGREED WITH FOUNDRY.", Content("levers/middle").Notes);

    [Fact]
    public void Notes_AnyLever_EndWithSafetyAndSayTheMassOnce()
    {
        foreach (string profile in SheetMaker.Levers)
        {
            SheetContent content = Content(profile);
            Assert.StartsWith("SAFETY", content.Notes[^1], StringComparison.Ordinal);
            Assert.Single(content.Notes, n => n.StartsWith("MASS ", StringComparison.Ordinal) && n.EndsWith(" g AT 8.4 TO 8.7 g/cm³. FINISH: AS CAST, FETTLED.", StringComparison.Ordinal));
            Assert.Contains(content.Notes, n => n.Contains("LEVEL WITH PIVOT AXIS", StringComparison.Ordinal));
        }
    }

    /// <summary>A, B and C are kept for the datums; I, O and Q could be read as figures (common practice).</summary>
    [Fact]
    public void Letters_CutsAndDetails_AreNoDatumLetters()
    {
        foreach (string profile in SheetMaker.Levers)
        {
            SheetContent content = Content(profile);
            Assert.Equal(["D–D", "E", "F", "G"], content.Others.Select(o => o.Title));
            string[] inViews = [.. content.FromRight.Add(content.Front).SelectMany(v => v.Annotations).Where(a => a.Name is "detail.nose" or "detail.pad" or "view.tongue" or "section.left" or "section.right").Select(a => a.Label.ToString())];
            Assert.Equal(["D", "D", "E", "F", "G"], inViews.Order(StringComparer.Ordinal));
        }
    }

    [Theory]
    [InlineData("levers/early")]
    [InlineData("levers/middle")]
    [InlineData("levers/late")]
    [InlineData("levers/smallest")]
    [InlineData("levers/rare")]
    public void PadDetail_AnyLever_HasNothingOutsideItsCircle(string profile)
    {
        ViewSource pad = Assert.Single(Content(profile).Others, v => v.Id == "pad");
        Box2D circle = pad.Edges.Select(e => e.Edge.Box).MaxBy(b => b.Width);
        Assert.All(pad.Edges, e => Assert.True(circle.Inflated(1e-9).Contains(e.Edge.Start) && circle.Inflated(1e-9).Contains(e.Edge.End)));
    }

    [Theory]
    [InlineData("levers/middle")]
    [InlineData("levers/late")]
    [InlineData("levers/smallest")]
    [InlineData("levers/rare")]
    public void ViewArrow_OfTongue_AimsAtItsFlankOutsideTheNosesCircle(string profile)
    {
        ViewSource side = Assert.Single(Content(profile).FromRight);
        LineEdge face = Assert.Single(side.Annotations.OfType<ViewArrow>()).Face;
        DetailLetter nose = Assert.Single(side.Annotations.OfType<DetailLetter>(), d => d.Name == "detail.nose");
        Assert.Contains(side.Outlines.SelectMany(o => o.Contour.Edges).OfType<LineEdge>(), e => Off(e, face.From) < 1e-9 && Off(e, face.To) < 1e-9);
        Assert.True(Math.Min(face.From.DistanceTo(nose.Centre), face.To.DistanceTo(nose.Centre)) > nose.Radius);
        Assert.True(face.Length > 0.5);

        static double Off(LineEdge e, Point2D p) => e.From.DistanceTo(p) + p.DistanceTo(e.To) - e.Length;
    }

    [Theory]
    [InlineData("pads.thickness", "pad")]
    [InlineData("pads.length", "pad")]
    [InlineData("pads.crown_radius", "pad")]
    [InlineData("pads.end_corner", "pad")]
    [InlineData("blends.fillet", "pad")]
    [InlineData("tongue.width", "tongue")]
    [InlineData("tongue.thickness", "nose")]
    [InlineData("tongue.flank_taper", "nose")]
    public void Detail_OfMiddleLever_CarriesItsSizes(string name, string view) => Assert.Equal(view, Dimension("levers/middle", name).View);

    [Fact]
    public void FlankTaper_GearTooth_IsAnAngleOfBothFlanks()
    {
        PlotDimension taper = Dimension("levers/middle", "tongue.flank_taper");
        Assert.Equal(PlotDimensionKind.Angle, taper.Kind);
        Assert.Equal(8 * Math.PI / 180, taper.Value, 9);
        Assert.Equal("2× 8°", taper.Text);
    }

    [Fact]
    public void Arms_Tapered_HaveThicknessAtStatedLevelAndThePadsIsSaidOnce()
    {
        Assert.Equal((3.0, "3"), Said("levers/late", "arms.thickness"));
        // One head fillet of 5 below the lower end of the head, 7.2 / 2.
        Assert.Contains("ARMS TAPER FROM THEIR THICKNESS, 8.6 BELOW AXIS, TO PADS' AT PADS' TOP.", Content("levers/late").Notes);
        // At its lower end it is as thick as the pad, which the detail says.
        ViewSource pad = Assert.Single(Content("levers/late").Others, v => v.Id == "pad");
        Assert.Equal(2.75, Assert.Single(pad.Annotations, a => a is LinearDimension { Direction: 0 }).Value, 9);
    }

    // Rise 0.8 over the chord from pivot to top of pad; the chord's square is (21 − 3.25)² + 3.175² = 325.14, so R = 325.14 / 6.4 + 0.4 = 51.20; the hollow face lies half the thickness of 4.2 inside.
    [Fact]
    public void Arms_Curved_HavePadShiftInFullAndTheRadiusThatFollowsInBrackets()
    {
        PlotDimension radius = Dimension("levers/rare", "arms.hollow_radius");
        Assert.Equal(49.10, radius.Value, 2);
        Assert.StartsWith("(R49.1", radius.Text, StringComparison.Ordinal);
        PlotDimension shift = Dimension("levers/rare", "arms.pad_shift");
        Assert.Equal(3.175, shift.Value, 3);
        Assert.Equal("3.175", shift.Text);
    }

    /// <summary>Two arrows side by side on one face would be taken for each other's (common practice, no source).</summary>
    [Fact]
    public void Arms_Curved_HaveRadiusAndThicknessApartOnTheHollowFace()
    {
        ViewSource side = Assert.Single(Content("levers/rare").Views, v => v.Id == "side");
        RadiusDimension radius = Assert.Single(side.Annotations.OfType<RadiusDimension>(), d => d.Name == "arms.hollow_radius");
        LinearDimension thickness = Assert.Single(side.Annotations.OfType<LinearDimension>(), d => d.Name == "arms.thickness");
        ArcEdge arc = Assert.Single(radius.Arcs);
        // The pads stand to the left, so the hollow is on the right.
        Point2D right = thickness.First.X > thickness.Second.X ? thickness.First : thickness.Second;
        Assert.Equal(arc.Radius, right.DistanceTo(arc.Centre), 1e-9);
        Assert.True(arc.Start.DistanceTo(right) > 3 && arc.End.DistanceTo(right) > 3);
    }

    // 21 + 6.5/2 and 21 + 6/2.
    [Theory]
    [InlineData("levers/rare", "(24.25)")]
    [InlineData("levers/middle", "(24)")]
    public void Arms_Any_SayHowFarTheyReachFromTheAxis(string profile, string words) => Assert.Equal(words, Dimension(profile, "arms.end_from_axis").Text);

    // Two pads, each with two crowns, two end corners, two step fillets.
    [Fact]
    public void PadDetail_Arcs_AreCountedOnBothPads()
    {
        Assert.Equal("4× R6", Dimension("levers/middle", "pads.crown_radius").Text);
        Assert.Equal("4× R0.3", Dimension("levers/middle", "pads.end_corner").Text);
        Assert.Equal("4× R1.5", Dimension("levers/middle", "blends.fillet").Text);
        Assert.StartsWith("(2× R", Dimension("levers/rare", "pads.end_radius").Text, StringComparison.Ordinal);
    }

    // Bosses run in the frog, so the head's tolerance goes over them: 9.5 + 2 × 0.5.
    [Theory]
    [InlineData("levers/early")]
    [InlineData("levers/rare")]
    public void Bosses_Head_CarryItsToleranceAndDatumOverTheirFaces(string profile)
    {
        Assert.Equal((10.5, "10.5 0/−0.1"), Said(profile, "boss.over_both"));
        Assert.Equal((9.5, "9.5"), Said(profile, "head.width"));
        Assert.Equal((0.5, "(2× 0.5)"), Said(profile, "boss.height"));
        string notes = string.Join('\n', Content(profile).Notes);
        Assert.Contains("B MID-PLANE OF BOSS FACES", notes, StringComparison.Ordinal);
        Assert.DoesNotContain("HEAD FACES", notes, StringComparison.Ordinal);
    }

    // Nose radius of a gear tooth (tt/2)·cos g = 2·cos 8° = 1.981; a bulb's is half its diameter, 4.2; a parallel end lies half of 4 beyond the length's end.
    [Fact]
    public void Notes_Tongue_SayWhereItsThicknessHolds()
    {
        Assert.Contains("TONGUE'S THICKNESS HOLDS AT NOSE CENTRE, 1.981 BELOW TIP.", Content("levers/middle").Notes);
        Assert.Contains("TONGUE'S THICKNESS: BULB'S DIAMETER. ITS CENTRE 2.1 BELOW TIP, NECK'S SIZE AS FAR BEHIND IT.", Content("levers/rare").Notes);
        Assert.Contains("TONGUE'S LENGTH ENDS 2 BELOW TIP, HALF ITS THICKNESS.", NotesOf(DemoLevers.Middle().With(LeverFields.TongueForm, LeverFields.Parallel)));
    }

    [Fact]
    public void Notes_Shoulders_SayDownToWhereTheHeadIsFaced()
    {
        Assert.Contains("SHOULDER FILLETS BEGIN LEVEL WITH PIVOT AXIS: FACE HEAD DOWN TO THERE.", Content("levers/middle").Notes);
        Assert.Contains("FACE HEAD'S SIDES DOWN TO SHOULDER FILLETS.", NotesOf(DemoLevers.Middle().With(LeverFields.ShoulderStart, 1)));
        Assert.DoesNotContain(Content("levers/rare").Notes, n => n.Contains("FACE THE", StringComparison.Ordinal));
    }

    /// <summary>The mid-line's radius follows from the pads' shift and level only for an arc through the axis with its centre level with the pad's top, so the sheet says so: H²+s² = 2Rs with 17.75 and 3.175 gives 51.204.</summary>
    [Fact]
    public void Notes_CurvedArms_SayHowTheirMidLineLies()
    {
        Assert.Contains("ARMS: ARCS ABOUT ONE CENTRE, LEVEL WITH PAD TOP; MID-LINE THROUGH AXIS.", Content("levers/rare").Notes);
        SideFeatures side = SheetMaker.Lever("levers/rare").Side;
        var midline = (ArcEdge)side.ArmMidline!;
        Assert.Equal(midline.Radius, midline.Centre.DistanceTo(Point2D.Origin), 9);
        Assert.Equal(side.PadTop, midline.Centre.Y, 9);
        Assert.Equal(((17.75 * 17.75) + (3.175 * 3.175)) / (2 * 3.175), midline.Radius, 2);
    }

    // Common practice, no source.
    [Fact]
    public void Notes_HoleMouth_IsOnlyDeburred() =>
        Assert.Contains("EDGE SIGN: MACHINED EDGES. HOLE'S MOUTH: DEBURR, AT MOST 0.1.", Content("levers/late").Notes);

    /// <summary>The mark's place is a round number of tenths, and its proud edge is seen in the side view.</summary>
    [Fact]
    public void Mark_OnArm_IsPlacedAndSeenEdgewise()
    {
        PlotDimension place = Dimension("levers/early", "mark.middle_from_axis");
        Assert.Equal(Math.Round(place.Value, 1), place.Value, 9);
        Lever lever = SheetMaker.Lever("levers/early");
        double left = LeverViews.Side(lever).Edges.Where(e => e.Role == LineRole.Edge).Min(e => e.Edge.Box.MinX + (e.Edge.Box.MaxY < -6 ? 0 : 100));
        // Half the arm's 4.2 and the letters' 0.5.
        Assert.Equal(-2.6, left, 9);
        Assert.DoesNotContain(Sheet("levers/late").Dimensions, d => d.Name == "mark.middle_from_axis");
    }

    [Fact]
    public void AuxiliaryView_SlightSweep_IsLeftOutAndTheForkViewHasTheWidth()
    {
        foreach ((double sweep, bool needed) in new[] { (14.0, false), (16.0, true) })
        {
            ValueBag values = DemoLevers.Middle().With(LeverFields.Sweep, sweep);
            PlotSheet sheet = SheetMaker.TryDrawLever(values, SheetMaker.Options("A3")).Value!;
            Assert.Equal(needed, sheet.Views.Any(v => v.Id == "tongue"));
            Assert.Equal(needed ? "tongue" : "fork", sheet.Dimensions.Single(d => d.Name == "tongue.width").View);
        }
    }

    [Fact]
    public void Title_NameBeginsWithTitle_IsShownOnce()
    {
        SheetContent content = Content("levers/rare");
        Assert.Equal(("ADJUSTING LEVER", "Rare bulb-nosed"), (content.Title.Title, content.Title.SupplementaryTitle));
    }

    private static SheetContent Content(string profile) => SheetMaker.Content(profile, SheetMaker.Options("A3"));

    private static IEnumerable<string> NotesOf(ValueBag values) => SheetMaker.Content(SheetMaker.Around("lever", values), SheetMaker.Options("A3")).Notes;

    private static PlotSheet Sheet(string profile) => SheetMaker.Draw(profile, SheetMaker.Options("A3"));

    private static PlotDimension Dimension(string profile, string name) => Sheet(profile).Dimensions.Single(d => d.Name == name);

    private static (double Value, string Text) Said(string profile, string name)
    {
        PlotDimension dimension = Dimension(profile, name);
        return (Math.Round(dimension.Value, 9), dimension.Text);
    }
}
