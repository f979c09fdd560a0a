using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>The fields every profile has, whatever its kind. The title block's data fields follow ISO 7200 (data fields in title blocks).</summary>
public static class CommonFields
{
    public static TextField Kind { get; } = new("kind", null, "What part it is.", 40);

    public static TextField Name { get; } = new("name", null, "The variant's own name.", 60);

    public static ChoiceField Units { get; } = new("units", null, "What plain numbers of this file are in; a profile that extends another may leave it out.", ["mm", "in"]);

    public static TextField Extends { get; } = new("extends", null, "The profile this one is a variant of, as a path from this file's folder.", 200, "");

    public static TextField Title { get; } = new("sheet.title", null, "Title of the drawing; the name when absent.", 60, "");

    public static TextField Number { get; } = new("sheet.number", null, "Drawing number.", 30, "");

    public static TextField Revision { get; } = new("sheet.revision", null, "Revision index.", 8, "");

    public static TextField Date { get; } = new("sheet.date", null, "Date of issue.", 10, "") { IsDate = true };

    public static TextField Author { get; } = new("sheet.author", null, "Who made the drawing.", 40, "");

    public static TextField Approved { get; } = new("sheet.approved", null, "Who approved it.", 40, "");

    public static TextField Owner { get; } = new("sheet.owner", null, "Legal owner of the drawing.", 60, "");

    public static FlagField Reproduction { get; } = new("sheet.reproduction", null, "Whether the sheet says that the part is a reproduction.", true);

    public static TextField Material { get; } = new("material.name", null, "Material, with its lead content where it has any.", 60);

    public static TextField Process { get; } = new("material.process", null, "How the part is made.", 60, "");

    public static TextField Finish { get; } = new("material.finish", null, "Finish of the surfaces.", 60, "");

    /// <summary>Of every file, be it of a part or not.</summary>
    public static ImmutableArray<FieldSpec> OfFile { get; } = [Kind, Name, Units, Extends, Title, Number, Revision, Date, Author, Approved, Owner];

    /// <summary>Of every part that is to be made.</summary>
    public static ImmutableArray<FieldSpec> OfPart { get; } = [Reproduction, Material, Process, Finish];

    public static ImmutableArray<FieldSpec> All { get; } = [.. OfFile, .. OfPart];

    /// <summary>Fields that belong to one file and are not taken from the profile it extends: two drawings must not share a number or an approval by accident.</summary>
    public static ImmutableArray<FieldSpec> NeverInherited { get; } = [Name, Extends, Title, Number, Revision, Date, Approved];

    internal static LengthUnit UnitOf(string word) => word == "in" ? LengthUnit.Inch : LengthUnit.Millimetre;
}
