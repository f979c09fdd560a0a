using System.Text;
using LeverDraw.Parts;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Forms;

/// <summary>The empty form as a file: one row for each size and form, to be filled in; rows left empty are passed over when it is read.</summary>
public static class FormText
{
    /// <summary>Comma-separated, for a spreadsheet.</summary>
    public static string Csv(PartKind kind)
    {
        StringBuilder text = new();
        text.Append("# Readings of worn survivors. One row a reading; copy the rows for each specimen. Rows without a value are passed over.\n");
        text.Append("# where: worn, or witness (an unworn place). altered: yes when filed, drilled out, squeezed or soldered.\n");
        text.Append("# instrument: ").Append(string.Join(", ", Instruments.All.Select(i => i.Name))).Append(".\n");
        text.Append("specimen,field,value,unit,instrument,where,altered,note\n");
        foreach (FormLine line in FormLines.Sizes(kind.Name))
        {
            string unit = line.Measurand.Kind == ReadingKind.Angle ? "deg" : "mm";
            text.Append("A,").Append(line.Measurand.Name).Append(",,").Append(unit).Append(',').Append(line.Measurand.Kind == ReadingKind.Angle ? "protractor" : "caliper").Append(",,,\n");
            if (line.Measurand.Wear != WearSide.None)
                text.Append("A,").Append(line.Measurand.Name).Append(",,").Append(unit).Append(",caliper,witness,,\n");
        }

        foreach (Measurand seen in FormLines.Seen(kind.Name))
            text.Append("A,").Append(seen.Name).Append(",,,eye,,,\n");
        return text.ToString();
    }

    /// <summary>TOML, a table per specimen.</summary>
    public static string Toml(PartKind kind)
    {
        StringBuilder text = new();
        text.Append("# Readings of worn survivors: a table per specimen. Empty values are passed over; repeated readings stand in one text, parted by ';'.\n");
        text.Append("# worn: where it wore. witness: an unworn place. altered = true when filed, drilled out, squeezed or soldered.\n");
        text.Append("# instrument: ").Append(string.Join(", ", Instruments.All.Select(i => i.Name))).Append(".\n[A]\n");
        foreach (FormLine line in FormLines.Sizes(kind.Name))
        {
            string values = line.Measurand.Wear == WearSide.None ? "value = \"\"" : "worn = \"\", witness = \"\"";
            text.Append('"').Append(line.Measurand.Name).Append("\" = { ").Append(values).Append(", instrument = \"").Append(line.Measurand.Kind == ReadingKind.Angle ? "protractor" : "caliper").Append("\" }  # ").Append(line.Measurand.Help).Append('\n');
        }

        foreach (Measurand seen in FormLines.Seen(kind.Name))
            text.Append('"').Append(seen.Name).Append("\" = { value = \"\" }  # ").Append(seen.Help).Append('\n');
        return text.ToString();
    }
}
