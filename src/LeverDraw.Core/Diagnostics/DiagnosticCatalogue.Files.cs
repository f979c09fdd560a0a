using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <content>LD1xx: files, text and TOML syntax.</content>
public static partial class DiagnosticCatalogue
{
    public static DiagnosticKind FileMissing { get; } = new("LD101", Severity.Error, "file missing",
        "There is no file '{0}'.",
        "Check the spelling and the folder; a path in 'extends' counts from the file it stands in.",
        "extends = \"midle.toml\"", ["midle.toml"]);

    public static DiagnosticKind FileIsDirectory { get; } = new("LD102", Severity.Error, "folder instead of a file",
        "'{0}' is a folder, not a profile.",
        "Name one of the .toml files in it.",
        "a folder's name given where a profile's belongs", ["profiles/levers"]);

    public static DiagnosticKind FileNotReadable { get; } = new("LD103", Severity.Error, "file cannot be read",
        "'{0}' may not be read.",
        "Check the file's permissions and that no other program holds it.",
        "a file without read permission", ["middle.toml"]);

    public static DiagnosticKind FileTooLarge { get; } = new("LD104", Severity.Error, "file too large",
        "'{0}' has {1} bytes; a profile has at most {2}.",
        "Check that this is a profile; a real one has a few thousand bytes.",
        "a picture given by mistake", ["scan.png", "10485760", "1048576"]);

    public static DiagnosticKind NotUtf8 { get; } = new("LD105", Severity.Error, "not UTF-8",
        "The file is not UTF-8 text: byte {0} (value {1}) belongs to no character.",
        "Save the file as UTF-8.",
        "a file saved in an old code page", ["120", "0xE9"]);

    public static DiagnosticKind NotText { get; } = new("LD106", Severity.Error, "control character in the file",
        "The file holds the control character {0}, so it is no plain text.",
        "Remove the character, or save the file as UTF-8 if it is in another encoding.",
        "a file with a NUL byte, or one saved as UTF-16", ["U+0000"]);

    public static DiagnosticKind NestedTooDeep { get; } = new("LD107", Severity.Error, "nested too deep",
        "Values are nested deeper than {0} levels here.",
        "A profile is made of tables one level deep; remove the extra brackets.",
        "thickness = [[[[[[[[[3.6]]]]]]]]]", ["8"]);

    public static DiagnosticKind BadSyntax { get; } = new("LD108", Severity.Error, "not TOML",
        "This line cannot be read: {0}.",
        "A line is 'key = value', '[table]' or a '# comment'; text stands in double quotes.",
        "thickness 3.6", ["'=' is missing after the key"]);

    public static DiagnosticKind NeedsQuotes { get; } = new("LD109", Severity.Error, "quotes missing",
        "The value {0} must stand in quotes.",
        "Write {1}; only plain numbers, dates, true and false stand without quotes.",
        "thickness = 3.6 mm", ["3.6 mm", "\"3.6 mm\""]);

    public static DiagnosticKind CommaDecimal { get; } = new("LD110", Severity.Error, "decimal comma",
        "{0} has a decimal comma.",
        "Write a point: {1}.",
        "thickness = 3,6", ["3,6", "3.6"]);

    public static DiagnosticKind ExtendsCycle { get; } = new("LD111", Severity.Error, "profiles extend each other",
        "'extends' goes round in a circle: {0}.",
        "Let one of these profiles stand on its own.",
        "extends = \"middle.toml\"   # inside middle.toml", ["middle.toml → middle.toml"]);

    public static DiagnosticKind ExtendsTooLong { get; } = new("LD112", Severity.Error, "too many profiles in a chain",
        "The chain of 'extends' is longer than {0} profiles: {1}.",
        "Copy the fields that matter into a profile nearer to the last one.",
        "a chain of 'extends' without end", ["16", "a.toml → b.toml → …"]);

    public static DiagnosticKind ExtendsOtherKind { get; } = new("LD113", Severity.Error, "extends a profile of another kind",
        "This profile is of kind '{0}', but '{1}', which it extends, is of kind '{2}'.",
        "Extend a profile of the same kind.",
        "kind = \"pin\"\nextends = \"../levers/middle.toml\"", ["pin", "../levers/middle.toml", "lever"]);

    public static DiagnosticKind ExtendsNotRelative { get; } = new("LD114", Severity.Error, "extends is not a relative path",
        "'{0}' is not a path relative to this file.",
        "Write it from this file's folder, with '/', such as \"../levers/middle.toml\".",
        "extends = \"/home/profiles/middle.toml\"", ["/home/profiles/middle.toml"]);

    public static DiagnosticKind MoreFaults { get; } = new("LD115", Severity.Note, "more faults",
        "There are {0} more faults in this file.",
        "Mend the ones shown first.",
        "a file that is no profile at all", ["312"]);

    public static DiagnosticKind PathNotRelative { get; } = new("LD116", Severity.Error, "path is not relative",
        "'{0}' is \"{1}\", which is not a path relative to this file.",
        "Write it from this file's folder, with '/', such as \"../levers/middle.toml\".",
        "lever = \"/home/profiles/middle.toml\"", ["parts.lever", "/home/profiles/middle.toml"]);

    public static DiagnosticKind OtherKindNamed { get; } = new("LD117", Severity.Error, "file of another kind named",
        "'{0}' names '{1}', which is of kind {2}, not {3}.",
        "Name a profile of kind {3}.",
        "lever = \"../pins/middle.toml\"", ["parts.lever", "../pins/middle.toml", "pin", "lever"]);

    public static DiagnosticKind OtherKindGiven { get; } = new("LD118", Severity.Error, "profile of another kind given",
        "This profile is of kind {0}; one of kind {1} is wanted here.",
        "Give a profile of kind {1}.",
        "backlash profiles/levers/middle.toml", ["lever", "setup"]);

    private static ImmutableArray<DiagnosticKind> Files() =>
    [
        FileMissing, FileIsDirectory, FileNotReadable, FileTooLarge, NotUtf8, NotText, NestedTooDeep, BadSyntax,
        NeedsQuotes, CommaDecimal, ExtendsCycle, ExtendsTooLong, ExtendsOtherKind, ExtendsNotRelative, MoreFaults, PathNotRelative, OtherKindNamed, OtherKindGiven,
    ];
}
