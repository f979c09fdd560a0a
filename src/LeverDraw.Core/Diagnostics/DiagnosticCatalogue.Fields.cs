using System.Collections.Immutable;

namespace LeverDraw.Diagnostics;

/// <content>LD2xx: kinds, tables, fields and their values.</content>
public static partial class DiagnosticCatalogue
{
    public static DiagnosticKind UnknownKind { get; } = new("LD201", Severity.Error, "unknown kind",
        "There is no part kind '{0}'; known: {1}.",
        "Take one of: {1}.",
        "kind = \"leever\"", ["leever", "lever, pin"]);

    public static DiagnosticKind UnknownTable { get; } = new("LD202", Severity.Error, "unknown table",
        "A profile of kind '{1}' has no table [{0}].",
        "The tables are: {2}.",
        "[arm]", ["arm", "lever", "arms, head"]);

    public static DiagnosticKind UnknownField { get; } = new("LD203", Severity.Error, "unknown field",
        "A profile of kind '{1}' has no field '{0}'.",
        "The command 'fields {1}' lists them all.",
        "[arms]\nthikness = 3.6", ["arms.thikness", "lever"]);

    public static DiagnosticKind MissingField { get; } = new("LD204", Severity.Error, "field missing",
        "The field '{0}' is missing: {1}",
        "Add it; {2}.",
        "a lever profile without [arms] thickness", ["arms.thickness", "Thickness of an arm.", "a size from 1 mm to 12 mm"]);

    public static DiagnosticKind DuplicateField { get; } = new("LD205", Severity.Error, "field given twice",
        "'{0}' is given twice; the first is on line {1}.",
        "Keep one of the two.",
        "[arms]\nthickness = 3.6\nthickness = 3.0", ["arms.thickness", "2"]);

    public static DiagnosticKind DuplicateTable { get; } = new("LD206", Severity.Error, "table given twice",
        "The table [{0}] is given twice; the first is on line {1}.",
        "Put its fields under the first one.",
        "[arms]\n[arms]", ["arms", "1"]);

    public static DiagnosticKind WrongType { get; } = new("LD207", Severity.Error, "wrong type of value",
        "'{0}' must be {1}, but this is {2}.",
        "Write it like this: {3}.",
        "[arms]\nthickness = true", ["arms.thickness", "a size", "a flag", "3.6 or \"9/16 in\""]);

    public static DiagnosticKind BadSize { get; } = new("LD208", Severity.Error, "not a size",
        "'{0}' is not a size: {1}.",
        "Write a size like 3.6, \"3.6 mm\", \"0.141 in\" or \"1 3/16 in\".",
        "thickness = \"9/0 in\"", ["9/0 in", "the fraction's lower number is zero"]);

    public static DiagnosticKind BadAngle { get; } = new("LD209", Severity.Error, "not an angle",
        "'{0}' is not an angle: {1}.",
        "Write degrees like 40, \"40 deg\", \"7.5°\" or \"1° 11' 37\\\"\".",
        "sweep = \"forty\"", ["forty", "a number is expected here"]);

    public static DiagnosticKind BadTaper { get; } = new("LD210", Severity.Error, "not a taper",
        "'{0}' is not a taper: {1}.",
        "Write it on diameter like \"1:48\", \"1:50\", \"0.25 in/ft\", or \"parallel\".",
        "taper = \"1/48\"", ["1/48", "a taper is written 1:n"]);

    public static DiagnosticKind WrongUnit { get; } = new("LD211", Severity.Error, "wrong unit",
        "'{0}' is {1}, but '{2}' is {3}.",
        "Give {1}, for example {4}.",
        "sweep = \"40 mm\"", ["tongue.sweep", "an angle", "40 mm", "a size", "40 or \"40 deg\""]);

    public static DiagnosticKind OutOfRange { get; } = new("LD212", Severity.Error, "out of range",
        "'{0}' is {1}; it must be from {2} to {3}.",
        "Check the unit ('units' is \"{4}\" in this file) and the decimal point.",
        "thickness = 36", ["arms.thickness", "36 mm", "1 mm", "12 mm", "mm"]);

    public static DiagnosticKind NotFinite { get; } = new("LD213", Severity.Error, "not a finite number",
        "'{0}' is not a finite number.",
        "Write an ordinary number.",
        "thickness = inf", ["arms.thickness"]);

    public static DiagnosticKind NotAChoice { get; } = new("LD214", Severity.Error, "unknown word",
        "'{1}' is no value for '{0}'; known: {2}.",
        "Take one of: {2}.",
        "form = \"taperd\"", ["arms.form", "taperd", "straight, tapered, curved"]);

    public static DiagnosticKind DoesNotApply { get; } = new("LD215", Severity.Error, "field does not apply",
        "'{0}' applies only when '{1}' is {2}; here it is {3}.",
        "Remove it, or change '{1}'.",
        "[arms]\nform = \"straight\"\nsagitta = 2", ["arms.sagitta", "arms.form", "curved", "straight"]);

    public static DiagnosticKind EmptyText { get; } = new("LD216", Severity.Error, "empty text",
        "'{0}' is empty.",
        "Write at least one visible character.",
        "name = \"\"", ["name"]);

    public static DiagnosticKind TextTooLong { get; } = new("LD217", Severity.Error, "text too long",
        "'{0}' has {1} characters; it may have {2}.",
        "Shorten it, so that it fits its box on the sheet.",
        "title = \"a very long title …\"", ["sheet.title", "130", "60"]);

    public static DiagnosticKind ControlCharacter { get; } = new("LD218", Severity.Error, "control character in text",
        "'{0}' holds the character {1}, which cannot be drawn on one line.",
        "Remove it; text is one line without tabs.",
        "title = \"Lever\\nmiddle\"", ["sheet.title", "U+000A"]);

    public static DiagnosticKind BadDate { get; } = new("LD219", Severity.Error, "not a date",
        "'{0}' is not a date of the calendar.",
        "Write year, month, day like 2024-05-31.",
        "date = \"31.5.2024\"", ["31.5.2024"]);

    public static DiagnosticKind BadZoneCode { get; } = new("LD220", Severity.Error, "not a tolerance zone",
        "'{0}' is not written like a tolerance zone: {1}.",
        "Write one letter code and a grade, such as H8 for a hole or f7 for a shaft.",
        "diameter = { size = 3.057, fit = \"8H\" }", ["8H", "it must begin with a letter"]);

    public static DiagnosticKind BadTolerance { get; } = new("LD221", Severity.Error, "size and limits not understood",
        "The limits of '{0}' cannot be read: {1}.",
        "Write {{ size, fit }}, {{ size, plus, minus }} or {{ min, max }}.",
        "thickness = { size = 3.05, plus = 0.1 }", ["arms.thickness", "'minus' is missing"]);

    public static DiagnosticKind BadShape { get; } = new("LD222", Severity.Error, "nested tables",
        "{0} is nested deeper than a profile's tables are.",
        "A profile has top-level fields and tables one level deep, such as [arms].",
        "[arms.left]", ["[arms.left]"]);

    private static ImmutableArray<DiagnosticKind> Fields() =>
    [
        UnknownKind, UnknownTable, UnknownField, MissingField, DuplicateField, DuplicateTable, WrongType, BadSize,
        BadAngle, BadTaper, WrongUnit, OutOfRange, NotFinite, NotAChoice, DoesNotApply, EmptyText, TextTooLong,
        ControlCharacter, BadDate, BadZoneCode, BadTolerance, BadShape,
    ];
}
