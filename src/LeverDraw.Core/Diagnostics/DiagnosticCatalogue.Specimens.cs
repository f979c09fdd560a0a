using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <content>LD7xx: readings taken from worn survivors, and what is made of them.</content>
public static partial class DiagnosticCatalogue
{
    public static DiagnosticKind ReadingColumnMissing { get; } = new("LD701", Severity.Error, "column missing",
        "The readings have no column '{0}'.",
        "The first row names the columns: {1}.",
        "specimen,field\nA,arms.thickness", ["value", "specimen, field, value, unit, instrument, where, altered, note"]);

    public static DiagnosticKind ReadingColumnUnknown { get; } = new("LD702", Severity.Error, "unknown column",
        "Readings have no column '{0}'.",
        "The columns are: {1}.",
        "specimen,field,vlue", ["vlue", "specimen, field, value, unit, instrument, where, altered, note"]);

    public static DiagnosticKind ReadingCells { get; } = new("LD703", Severity.Error, "row and heads do not match",
        "This row has {0} cells, the heads are {1}.",
        "Put text that holds a comma in double quotes; leave a cell empty rather than out.",
        "specimen,field,value\nA,arms.thickness", ["2", "3"]);

    public static DiagnosticKind ReadingQuote { get; } = new("LD704", Severity.Error, "quote not closed",
        "A double quote opens here and is not closed on this line.",
        "Close it; write a double quote inside quotes twice. Inches may be written 'in'.",
        "A,arms.thickness,\"9/64 in,caliper", []);

    public static DiagnosticKind ReadingFieldUnknown { get; } = new("LD705", Severity.Error, "nothing of that name to measure",
        "There is nothing called '{0}' to measure.",
        "The command 'readings fields' lists what can be measured.",
        "A,arms.thikness,3.6 mm", ["arms.thikness"]);

    public static DiagnosticKind ReadingEmpty { get; } = new("LD706", Severity.Error, "empty cell",
        "The cell '{0}' is empty.",
        "Fill it in, or remove the row.",
        "A,,3.6 mm", ["field"]);

    public static DiagnosticKind ReadingNotUnderstood { get; } = new("LD707", Severity.Error, "reading not understood",
        "'{0}' is no value for '{1}': {2}.",
        "Write {3}.",
        "A,arms.thickness,3.6.1 mm", ["3.6.1 mm", "arms.thickness", "it has two decimal points", "a size with its unit, such as 3.62 mm or 9/64 in"]);

    public static DiagnosticKind ReadingUnitMissing { get; } = new("LD708", Severity.Error, "unit missing",
        "'{0}' says no unit.",
        "Write the unit beside the number, or in the column 'unit': mm, in or deg.",
        "A,arms.thickness,3.6", ["3.6"]);

    public static DiagnosticKind ReadingOutOfRange { get; } = new("LD709", Severity.Error, "reading out of all range",
        "'{0}' is {1}; no such part has it outside {2} to {3}.",
        "Check the unit and the decimal point{4}.",
        "A,arms.thickness,36 mm", ["arms.thickness", "36 mm", "1.5 mm", "6.5 mm", ": a tenth of it, 3.6 mm, would fit"]);

    public static DiagnosticKind ReadingInstrument { get; } = new("LD710", Severity.Error, "unknown instrument",
        "There is no instrument '{0}'; known: {1}.",
        "Take one of: {1}.",
        "A,arms.thickness,3.6 mm,calliper", ["calliper", "caliper, micrometer"]);

    public static DiagnosticKind ReadingWhere { get; } = new("LD711", Severity.Error, "place not understood",
        "'{0}' does not say where the reading was taken; known: worn, witness.",
        "Write worn, witness (an unworn place), or leave it empty.",
        "A,pads.thickness,3.0 mm,caliper,corner", ["corner"]);

    public static DiagnosticKind ReadingAltered { get; } = new("LD712", Severity.Error, "yes or no wanted",
        "'{0}' is neither yes nor no.",
        "Write yes when the feature was changed since it was made, else no or nothing.",
        "A,hole.diameter,3.4 mm,pin-gauge,,maybe", ["maybe"]);

    public static DiagnosticKind ReadingSlip { get; } = new("LD713", Severity.Warning, "likely slip of unit or decimal point",
        "'{0}' is {1}, {2} as the others ({3}); it is left out.",
        "Read it again. {4} would fit.",
        "B,blends.fillet,15 mm   # the others have 1.5 mm", ["blends.fillet", "15 mm", "ten times as large", "1.5 mm", "1.5 mm"]);

    public static DiagnosticKind ReadingsApart { get; } = new("LD714", Severity.Warning, "repeated readings far apart",
        "{0} readings of '{1}' on {2} differ by {3}, more than a {4} explains.",
        "Wear that is uneven shows so, and the least worn place is taken; a mistake shows so too: read again.",
        "A,arms.thickness,3.6 mm\nA,arms.thickness,3.9 mm", ["2", "arms.thickness", "A", "0.3 mm", "caliper"]);

    public static DiagnosticKind NoReadings { get; } = new("LD715", Severity.Error, "no readings",
        "The file holds no readings.",
        "Give one row per reading; 'readings new --kind lever' makes an empty form.",
        "specimen,field,value", []);

    public static DiagnosticKind ReadingTable { get; } = new("LD716", Severity.Error, "entry of a reading not understood",
        "{0} is not part of a reading.",
        "A reading is \"3.6 mm\", or {{ value, worn, witness, instrument, altered, note }} of which value, worn or witness must be given.",
        "[A]\n\"arms.thickness\" = { reading = \"3.6 mm\" }", ["'reading'"]);

    public static DiagnosticKind ReadingAlteredLeftOut { get; } = new("LD717", Severity.Note, "altered feature left out",
        "'{0}' of {1} is marked as altered and left out of every estimate.",
        "Nothing to do.",
        "A,hole.diameter,3.4 mm,pin-gauge,,yes", ["hole.diameter", "A"]);

    public static DiagnosticKind SmallBore { get; } = new("LD718", Severity.Note, "small bore read with jaws",
        "Inside jaws bridge a small bore: {0} is added to {1}.",
        "Use pin gauges for holes; from both ends they show the taper too.",
        "A,hole.diameter,3.20 mm,caliper", ["0.025 mm", "3.2 mm"]);

    public static DiagnosticKind NoVariants { get; } = new("LD719", Severity.Error, "no variants to compare with",
        "There is no profile of kind '{0}' in {1}.",
        "Name the folders or files of your profiles with --profiles.",
        "identify readings.csv --profiles empty", ["lever", "empty"]);

    public static DiagnosticKind NothingToReconstruct { get; } = new("LD720", Severity.Error, "nothing to reconstruct from",
        "No reading of a {0} counts.",
        "Read at least one size that was not altered.",
        "reconstruct readings.csv --kind pin   # only levers were read", ["pin"]);

    public static DiagnosticKind SizesDisagree { get; } = new("LD721", Severity.Warning, "tied sizes disagree",
        "The readings of {0} on specimen {1} do not fit together: chi-square {2} where {3} is the 95 % limit.",
        "Look at the residuals, and read the one that stands out again.",
        "arms 5.2 mm, gap 14 mm and width over all 26 mm", ["'arms.width', 'fork.gap' and 'fork.outside'", "A", "185.6", "3.8"]);

    public static DiagnosticKind FieldNotRead { get; } = new("LD722", Severity.Warning, "size not read",
        "'{0}' was not read on any specimen: {1}",
        "Read it, or start from a profile that has it with --like.",
        "reconstruct readings.csv   # without arms.length", ["arms.length", "From the pivot's axis to the middle of the pads, along the arms."]);

    public static DiagnosticKind ProfileIncomplete { get; } = new("LD723", Severity.Error, "reconstruction would not pass check",
        "'{0}' would not pass check, so it was not written.",
        "Read what is missing, or take it from a profile with --like.",
        "reconstruct readings.csv --out new.toml   # half of the sizes were read", ["new.toml"]);

    private static ImmutableArray<DiagnosticKind> Specimens() =>
    [
        ReadingColumnMissing, ReadingColumnUnknown, ReadingCells, ReadingQuote, ReadingFieldUnknown, ReadingEmpty, ReadingNotUnderstood, ReadingUnitMissing,
        ReadingOutOfRange, ReadingInstrument, ReadingWhere, ReadingAltered, ReadingSlip, ReadingsApart, NoReadings, ReadingTable, ReadingAlteredLeftOut,
        SmallBore, NoVariants, NothingToReconstruct, SizesDisagree, FieldNotRead, ProfileIncomplete,
    ];
}
