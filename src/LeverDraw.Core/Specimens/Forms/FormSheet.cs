using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;
using LeverDraw.Geometry;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Units;

namespace LeverDraw.Specimens.Forms;

/// <summary>The form as a sheet for the bench: the part with numbers where to measure, and a table of blanks to write into.</summary>
public static class FormSheet
{
    public const string Kind = "form";

    /// <summary>Stands where the hand will write; its length makes the room.</summary>
    private const string Blank = "....................";

    /// <summary>More rows than this are a second block beside the first.</summary>
    private const int MostRows = 16;

    public static BuiltSheet Of(PartKind kind) => new(Kind, kind == PartKinds.Pin ? PartState.Pin : PartState.Finished, options =>
        FormShape.Of(kind).Sheets[0].Content(options).Then(drawn => Diagnostics.Checked<SheetContent>.Good(Numbered(kind, drawn))));

    private static SheetContent Numbered(PartKind kind, SheetContent drawn)
    {
        ImmutableArray<FormLine> lines = FormLines.Sizes(kind.Name);
        HashSet<string> shown = new(StringComparer.Ordinal);
        SheetContent numbered = drawn with
        {
            Kind = Kind,
            Front = In(drawn.Front, lines, shown),
            FromRight = [.. drawn.FromRight.Select(v => In(v, lines, shown))],
            FromLeft = [.. drawn.FromLeft.Select(v => In(v, lines, shown))],
        };
        return numbered with
        {
            Others = [.. drawn.Others.Select(v => In(v, lines, shown)).Select(v => WithHoleEnds(v, lines)).Where(v => v.Annotations.Any(LabelledSizes.IsSize))],
            Notes = Notes(kind),
            NotedSizes = [],
            Signs = null,
            Tables = [.. Tables(lines), Seen(kind)],
            Title = TitleOf(kind),
        };
    }

    /// <summary>The view with its sizes numbered; what is no line of the form, or stands in another view already, goes.</summary>
    private static ViewSource In(ViewSource view, ImmutableArray<FormLine> lines, HashSet<string> shown) => view with
    {
        Annotations =
        [
            .. view.Annotations.Where(a => a is SectionEnd or DetailLetter or ViewArrow || LabelledSizes.IsSize(a)).SelectMany<Annotation, Annotation>(a => a is DimensionRun run ? run.Single() : [a])
                .Select(a => !LabelledSizes.IsSize(a) ? a : NumberOf(a.Name, lines) is { } number && shown.Add(a.Name) ? a with { Label = Label.Of(number), Further = [] } : null).OfType<Annotation>(),
        ],
    };

    /// <summary>The hole's two ends, which no drawing states: its taper shows in them.</summary>
    private static ViewSource WithHoleEnds(ViewSource view, ImmutableArray<FormLine> lines)
    {
        if (view.Id != "section")
            return view;
        PivotHole hole = FormShape.Hole;
        return view with { Annotations = [.. view.Annotations, End("hole.larger_side", hole.AtRight, 1), End("hole.smaller_side", hole.AtLeft, -1)] };

        Annotation End(string name, Length diameter, int side)
        {
            double r = diameter.Millimetres / 2, x = side * hole.HalfLength.Millimetres;
            return new LinearDimension(name, diameter.Millimetres, Label.Of(NumberOf(name, lines)!), new Point2D(x, -r), new Point2D(x, r), LinearDimension.Upright)
            {
                Sides = side > 0 ? DimensionSides.Right : DimensionSides.Left,
            };
        }
    }

    private static string? NumberOf(string name, ImmutableArray<FormLine> lines) =>
        lines.FirstOrDefault(l => l.Measurand.Name == name) is { Number: > 0 } line ? line.Number.ToString(CultureInfo.InvariantCulture) : null;

    private static IEnumerable<SheetTable> Tables(ImmutableArray<FormLine> lines)
    {
        ImmutableArray<TableColumn> columns = [new("NO.", 0.5), new("SIZE"), new("READING", 0.5), new("WITNESS", 0.5)];
        return new SheetTable(string.Empty, columns, [.. lines.Select(Row)]).InBlocks(MostRows);
    }

    private static ImmutableArray<string> Row(FormLine line) =>
        [line.Number.ToString(CultureInfo.InvariantCulture), line.Measurand.Name + "\n" + (line.Measurand.Witness.Length > 0 ? "unworn: " + line.Measurand.Witness.Split(',')[0] : string.Empty), Blank, line.Measurand.Wear == WearSide.None ? "–" : Blank];

    private static SheetTable Seen(PartKind kind) => new(string.Empty, [new("SEEN"), new("RING ONE")],
        [.. FormLines.Seen(kind.Name).Select(m => ImmutableArray.Create(m.Name, m.Kind == ReadingKind.Taper ? "tapered / parallel" : m.Words.IsEmpty ? Blank : string.Join(" / ", m.Words)))]);

    private static ImmutableArray<string> Notes(PartKind kind)
    {
        ImmutableArray<string> notes =
        [
            "SPECIMEN: .............. INSTRUMENT: .............. DATE: ..............",
            "WRITE THE UNIT BESIDE EACH READING. SHAPE SHOWN IS A STAND-IN: MEASURE, DO NOT SCALE.",
            "WITNESS: AN UNWORN PLACE OF THE SAME SIZE. READ THERE FIRST.",
            "STRIKE OUT A FEATURE THAT WAS FILED, DRILLED OUT, SQUEEZED OR SOLDERED.",
        ];
        return kind == PartKinds.Pin
            ? notes.Add("SAFETY: DRIVE NO PIN OUT ONLY TO MEASURE IT. SMALL END FIRST, LUG SUPPORTED: BRITTLE IRON. EYE PROTECTION.")
            : [.. notes, "HOLE: PIN GAUGES FROM BOTH SIDES; THE DIFFERENCE OVER THE WIDTH IS THE TAPER.", "SAFETY: DO NOT SQUEEZE OR BEND A CAST LEVER. DRIVE NO PIN OUT ONLY TO MEASURE. EYE PROTECTION."];
    }

    private static TitleBlock TitleOf(PartKind kind) => new(
        Owner: string.Empty, Title: kind == PartKinds.Pin ? "READINGS OF A PIN" : "READINGS OF A LEVER", SupplementaryTitle: string.Empty, DrawingNumber: string.Empty, Revision: string.Empty, Date: string.Empty,
        Creator: string.Empty, Approver: string.Empty, DocumentType: "MEASURING FORM", Material: string.Empty, Process: string.Empty, GeneralTolerance: string.Empty, Units: "as written", Sheet: "1 of 1", Reproduction: false);
}
