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

/// <summary>The form for the bench: the part with numbers where to measure, and blanks to write into. A lever has too many sizes for both on one small sheet, so its blanks are a sheet of their own.</summary>
public static class FormSheet
{
    public const string Kind = "form", BlanksKind = "form-blanks";

    /// <summary>Stands where the hand will write; its length makes the room.</summary>
    private const string Blank = "............................................", Name = "........................................................................";

    public static ImmutableArray<BuiltSheet> Of(PartKind kind) => kind == PartKinds.Pin
        ? [Sheet(kind, Kind, drawn => Numbered(kind, drawn) with { Tables = [Specimen, Sizes(kind), Seen(kind)] })]
        :
        [
            Sheet(kind, Kind, drawn => Numbered(kind, drawn) with { Tables = [Specimen, Seen(kind)], Title = TitleOf(kind, "1 of 2", "WHERE TO MEASURE") }),
            Sheet(kind, BlanksKind, drawn => Blanks(kind, Numbered(kind, drawn))),
        ];

    private static BuiltSheet Sheet(PartKind kind, string name, Func<SheetContent, SheetContent> content) => new(name, kind == PartKinds.Pin ? PartState.Pin : PartState.Finished, options =>
        FormShape.Of(kind).Sheets[0].Content(options).Then(drawn => Diagnostics.Checked<SheetContent>.Good(content(drawn))));

    /// <summary>The front view stays as a reminder; its sizes stand on the other sheet.</summary>
    private static SheetContent Blanks(PartKind kind, SheetContent numbered) => numbered with
    {
        Kind = BlanksKind,
        FromRight = [],
        FromLeft = [],
        Others = [],
        Front = numbered.Front with { Annotations = [.. numbered.Front.Annotations.Where(LabelledSizes.IsSize)] },
        Tables = [Specimen, Sizes(kind)],
        Notes = ["NUMBERS: WHERE TO MEASURE STANDS ON SHEET 1.", .. WritingNotes],
        Title = TitleOf(kind, "2 of 2", "WHAT WAS READ"),
    };

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
            Title = TitleOf(kind, "1 of 1", string.Empty),
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

    private static SheetTable Specimen { get; } = new(string.Empty, [new("SPECIMEN"), new("MEASURED BY"), new("DATE")], [["\n" + Name, "\n" + Blank, "\n" + Blank]]);

    private static SheetTable Sizes(PartKind kind) => new(
        string.Empty, [new("NO.", 0.5), new("SIZE"), new("READING", 0.5), new("UNWORN PLACE", 0.5), new("INSTRUMENT", 0.5), new("ALTERED", 0.5)],
        [.. FormLines.Sizes(kind.Name).Select(Row)]);

    /// <summary>What does not wear has one reading. Dots on a second line leave the height of two to write above them.</summary>
    private static ImmutableArray<string> Row(FormLine line)
    {
        bool wears = line.Measurand.Wear != WearSide.None;
        string number = line.Number.ToString(CultureInfo.InvariantCulture), size = line.Measurand.Name + (wears ? "\nunworn: " + line.Measurand.Witness.Split(',')[0] : string.Empty);
        return [number, size, "\n" + Blank, wears ? "\n" + Blank : "–", string.Empty, "yes / no"];
    }

    private static SheetTable Seen(PartKind kind) => new(string.Empty, [new("SEEN"), new("RING ONE")],
        [.. FormLines.Seen(kind.Name).Select(m => ImmutableArray.Create(m.Name, m.Kind == ReadingKind.Taper ? "tapered / parallel" : m.Words.IsEmpty ? Blank : string.Join(" / ", m.Words)))]);

    private static readonly ImmutableArray<string> WritingNotes =
    [
        "WRITE THE UNIT BESIDE EACH READING; TWO READINGS SIDE BY SIDE ARE BETTER THAN ONE.",
        "READING: WHERE IT WORE, IF IT WORE. UNWORN PLACE: ONE OF THE SAME SIZE THAT NOTHING RUBBED ON; READ THERE FIRST.",
        "ALTERED: FILED, DRILLED OUT, SQUEEZED OR SOLDERED.",
    ];

    private static string Row(string name) => NumberOf(name, FormLines.Sizes(PartKinds.Lever.Name))!;

    private static ImmutableArray<string> Notes(PartKind kind) => kind == PartKinds.Pin
        ?
        [
            "SHAPE SHOWN IS A STAND-IN: MEASURE THE PIN, NOT THE SHEET. NUMBERS ARE ROWS OF THE TABLE, NOT SIZES.",
            .. WritingNotes,
            "SAFETY: DRIVE NO PIN OUT ONLY TO MEASURE IT. SMALL END FIRST, LUG SUPPORTED: BRITTLE IRON. EYE PROTECTION.",
        ]
        :
        [
            "SHAPE SHOWN IS A STAND-IN: MEASURE THE LEVER, NOT THE SHEET. NUMBERS ARE ROWS OF SHEET 2, NOT SIZES.",
            "HOLE: PIN GAUGES. PARALLEL: " + Row("hole.diameter") + " ONLY. TAPERED: " + Row("hole.larger_side") + " AND " + Row("hole.smaller_side") + ", FROM BOTH SIDES.",
            "SAFETY: DO NOT SQUEEZE OR BEND A CAST LEVER. DRIVE NO PIN OUT ONLY TO MEASURE. EYE PROTECTION.",
        ];

    private static TitleBlock TitleOf(PartKind kind, string sheet, string what) => new(
        Owner: string.Empty, Title: kind == PartKinds.Pin ? "READINGS OF A PIN" : "READINGS OF A LEVER", SupplementaryTitle: what, DrawingNumber: string.Empty, Revision: string.Empty, Date: string.Empty,
        Creator: string.Empty, Approver: string.Empty, DocumentType: "MEASURING FORM", Material: string.Empty, Process: string.Empty, GeneralTolerance: string.Empty, Units: "as written", Sheet: sheet, Reproduction: false);
}
