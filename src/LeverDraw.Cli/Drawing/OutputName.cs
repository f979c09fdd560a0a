using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Cli.Drawing;

/// <summary>How output files are called: <c>middle.finished.svg</c>, <c>middle.finished.mm.dxf</c>.</summary>
/// <remarks>A DXF says its unit in its name, because readers that do not believe the header guess, and a guess is out by 25.4. One of outlines says so too, so that it never takes the full drawing's place.</remarks>
internal static class OutputName
{
    private const string ProfileExtension = ".toml";

    public static string Of(string profilePath, string sheet, string extension, SheetUnit unit, bool outlinesOnly)
    {
        string more = extension == "dxf" ? (outlinesOnly ? "outline." : "") + (unit == SheetUnit.Inch ? "in." : "mm.") : "";
        return Stem(profilePath) + "." + sheet + "." + more + extension;
    }

    /// <summary>A profile's name without folder and ending.</summary>
    public static string Stem(string profilePath)
    {
        string name = Path.GetFileName(profilePath);
        return name.EndsWith(ProfileExtension, StringComparison.OrdinalIgnoreCase) && name.Length > ProfileExtension.Length ? name[..^ProfileExtension.Length] : name;
    }
}
