using System.Text;

namespace LeverDraw.Standards;

/// <summary>The list of tables as a page; <c>docs/standards.md</c> is this text.</summary>
public static class StandardsDocument
{
    public static string Write()
    {
        StringBuilder text = new();
        text.Append("# Tables of standards\n\n");
        text.Append("Generated from `StandardTables`; a test compares it. Figures only: get the standard itself before you rely on a value.\n\n");
        text.Append("How sure:\n\n");
        text.Append("- **solid**: two independent sources agree on every cell, or one source and a formula that gives the cells\n");
        text.Append("- **mixed**: part solid, part one source\n");
        text.Append("- **thin**: one source, or memory with an arithmetic check\n");
        text.Append("- **from memory**: no source seen\n\n");
        text.Append("| Table | Document | Place | How sure | What was compared |\n");
        text.Append("| --- | --- | --- | --- | --- |\n");
        foreach (StandardSource source in StandardTables.All)
        {
            text.Append("| ").Append(source.Subject)
                .Append(" | ").Append(source.Name)
                .Append(" | ").Append(source.Table)
                .Append(" | ").Append(Word(source.Certainty))
                .Append(" | ").Append(source.Note)
                .Append(" |\n");
        }
        return text.ToString();
    }

    /// <summary>The grade of certainty as told to the user.</summary>
    public static string Word(Certainty certainty) => certainty switch
    {
        Certainty.Solid => "solid",
        Certainty.Mixed => "mixed",
        Certainty.Thin => "thin",
        Certainty.FromMemory => "from memory",
        _ => throw new ArgumentOutOfRangeException(nameof(certainty)),
    };
}
