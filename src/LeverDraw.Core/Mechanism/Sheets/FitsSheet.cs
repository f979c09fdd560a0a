using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Mechanism.Fitting;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Parts.HostPlanes;
using LeverDraw.Profiles;

namespace LeverDraw.Mechanism.Sheets;

/// <summary>Which lever goes into which plane, as a table; the first lever is drawn between the first plane's lugs, where most turns out.</summary>
public static class FitsSheet
{
    public const string Kind = "fits";

    /// <summary>Reasons of this many pairs stand on the sheet; the rest is told by the command.</summary>
    private const int MostReasons = 6;

    /// <param name="profile">Of the first lever: owner and author are its.</param>
    public static SheetContent Content(FitMatrix matrix, FittedLever lever, HostPlane plane, Profile profile, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(matrix);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(options);
        var text = new DimensionText(options.Units, options.Tolerances);
        TitleBlock title = MechanismSheet.Title(profile, "LEVERS AND PLANES", "FITS", options.Units) with { Title = "LEVERS AND PLANES", SupplementaryTitle = "Drawn: " + lever.Name, DrawingNumber = profile.Values.Get(CommonFields.Number) is { Length: > 0 } n ? n + "-F" : "" };
        return new SheetContent(Kind, PartState.Assembly, View(lever.Lever, plane, text), [], [], [], Notes(matrix, lever, plane), title) { Tables = [Table(matrix)] };
    }

    private static ViewSource View(Lever lever, HostPlane plane, DimensionText text)
    {
        PlaneLugs lugs = plane.Lugs;
        double inner = lugs.Gap.Millimetres / 2, outer = inner + lugs.Thickness.Millimetres, reach = lugs.EdgeDistance.Millimetres, start = lugs.ReliefStart.Millimetres;
        double slope = Math.Tan(lugs.Relief.Radians), foot = Math.Min(outer, inner + ((reach - start) * slope)), top = plane.PivotDepth.Millimetres;
        double end = foot < outer || slope == 0 ? -reach : -(start + ((outer - inner) / slope));
        List<Point2D> right = [new(inner, top), new(inner, -start), new(foot, end)];
        if (foot < outer - 1e-6)
            right.Add(new(outer, end));
        right.Add(new(outer, top));
        var edges = ImmutableArray.CreateBuilder<ViewEdge>();
        var hatching = ImmutableArray.CreateBuilder<HatchedRegion>();
        double pin = lugs.Hole.Millimetres / 2;
        foreach (int side in (ReadOnlySpan<int>)[1, -1])
        {
            Point2D[] corners = [.. right.Select(p => new Point2D(p.X * side, p.Y)).Distinct()];
            Edge[] loop = [.. corners.Select((c, i) => new LineEdge(c, corners[(i + 1) % corners.Length])).Where(e => e.Length > 1e-6)];
            edges.AddRange(loop.Select(e => new ViewEdge(LineRole.Section, e)));
            Contour cut = Contour.Of(loop);
            // Section lines stop at the pin.
            foreach (Contour part in ContourClip.ByLine(cut, new Point2D(0, pin), new Vector2D(1, 0)).Concat(ContourClip.ByLine(cut, new Point2D(0, -pin), new Vector2D(-1, 0))))
                hatching.Add(new HatchedRegion([part]) { Angle = 3 * Math.PI / 4 });
            foreach (double z in (ReadOnlySpan<double>)[pin, -pin])
            {
                foreach (Interval chord in ContourChords.HorizontalAt(cut, z))
                    edges.Add(new(LineRole.Edge, new LineEdge(new(chord.From, z), new(chord.To, z))));
            }
        }

        edges.AddRange(lever.ForkProfile.Edges.Select(e => new ViewEdge(LineRole.Edge, e)));
        double head = lever.Sizes[LeverFields.HeadWidth].Millimetres / 2;
        if (lever.Boss is { } boss)
            edges.AddRange(Bosses(lever, head, head + boss.Height.Millimetres, boss.Diameter.Millimetres / 2));
        edges.Add(new(LineRole.Hidden, new LineEdge(new(-head, lever.Hole.AtMid.Millimetres / 2), new(head, lever.Hole.AtMid.Millimetres / 2))));
        edges.Add(new(LineRole.Hidden, new LineEdge(new(-head, -lever.Hole.AtMid.Millimetres / 2), new(head, -lever.Hole.AtMid.Millimetres / 2))));
        edges.Add(new(LineRole.Centre, new LineEdge(new(-outer, 0), new(outer, 0))));
        edges.Add(new(LineRole.Centre, new LineEdge(new(0, lever.ForkProfile.Box.MinY), new(0, lever.ForkProfile.Box.MaxY))));
        return new ViewSource("lugs", null)
        {
            Edges = edges.ToImmutable(),
            Hatching = hatching.ToImmutable(),
            Annotations =
            [
                new LinearDimension("lugs.gap", lugs.Gap.Millimetres, text.Reference(lugs.Gap.Nominal), new(-inner, top), new(inner, top), 0) { Sides = DimensionSides.Left },
                new LinearDimension(LeverFields.HeadWidth.Name, head * 2, text.Reference(lever.Sizes[LeverFields.HeadWidth].Nominal), new(-head, lever.Fork.HeadCorner.Y - 1), new(head, lever.Fork.HeadCorner.Y - 1), 0) { Sides = DimensionSides.Left },
                new LeaderNote("lugs", 0, Label.Of("LUG OF THE FROG"), [new(outer - 1, top - 1.2), new(1 - outer, top - 1.2)]) { OnFace = true },
            ],
        };
    }

    /// <summary>As far as they stand clear of the shoulders.</summary>
    private static IEnumerable<ViewEdge> Bosses(Lever lever, double head, double face, double radius)
    {
        double foot = Math.Max(-radius, ShoulderHeight.At(lever.Fork, face));
        foreach (int side in (int[])[1, -1])
        {
            Point2D[] corners = [new(side * head, radius), new(side * face, radius), new(side * face, foot), new(side * head, foot)];
            for (int i = 0; i < (foot > -radius ? 2 : 3); i++)
                yield return new(LineRole.Edge, new LineEdge(corners[i], corners[i + 1]));
        }
    }

    private static SheetTable Table(FitMatrix matrix) => new(
        "WHICH LEVER GOES INTO WHICH PLANE: TURNS OF THE NUT LOST",
        [new("PLANE"), .. matrix.Levers.Select(l => new TableColumn(Broken(l.ToUpperInvariant()), 0.5))],
        [.. matrix.Planes.Select(p => (ImmutableArray<string>)[p.ToUpperInvariant(), .. matrix.Levers.Select(l => Cell(matrix.Of(l, p)))])]);

    private static string Broken(string name) => name.IndexOf(", ", StringComparison.Ordinal) is > 0 and var at ? name[..(at + 1)] + "\n" + name[(at + 2)..] : name;

    private static string Cell(LeverFit fit) => fit.Verdict switch
    {
        FitVerdict.GoesIn => "GOES IN" + Lost(fit),
        FitVerdict.WithPlay => "WITH PLAY" + Lost(fit),
        _ => fit.Rework is null ? "NO" : "AFTER REWORK",
    };

    private static string Lost(LeverFit fit) => fit.Turns is { } turns ? "\n" + Words.Turns(turns) : "";

    private static ImmutableArray<string> Notes(FitMatrix matrix, FittedLever lever, HostPlane plane)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        notes.Add($"DRAWN: {lever.Name} IN {plane.Name}, SEEN SQUARE TO THE ARMS, THE LUGS CUT THROUGH THE PIN'S AXIS.".ToUpperInvariant());
        notes.Add("EACH LEVER ON THE PIN THAT BELONGS TO IT. SIZES AT THE MIDDLE OF THEIR LIMITS.");
        LeverFit[] told = [.. matrix.Fits.Where(f => f.Verdict == FitVerdict.DoesNotGo && f.Rework is { IsEmpty: false })];
        foreach (LeverFit fit in told.Take(MostReasons))
            notes.Add($"{fit.Lever} IN {fit.Plane}: {string.Join("; ", fit.Rework!.Value)}.".ToUpperInvariant().Replace(" MM", " mm", StringComparison.Ordinal));
        if (told.Length > MostReasons)
            notes.Add("FURTHER REWORK: SEE THE LIST.");
        notes.Add("SAFETY: REAM, DO NOT FORCE: LUGS ARE BRITTLE IRON. EYE PROTECTION. FOLLOW LOCAL RULES.");
        return notes.ToImmutable();
    }
}
