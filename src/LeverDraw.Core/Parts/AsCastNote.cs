using System.Globalization;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Standards;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts;

/// <summary>What tolerance the surfaces left as cast have: the finest grade that the process is listed for, as plus or minus by size; thicknesses of walls have one grade more (ISO 8062-3, by a published drawing example).</summary>
internal static class AsCastNote
{
    /// <summary>Upper borders of the size steps, millimetres, within which grade and width stay the same.</summary>
    private static readonly double[] _steps = [10, 16, 25, 40, 63, 100];

    private const string Unknown = "TO THE FOUNDRY'S AGREED TOLERANCE";

    /// <param name="greatest">The casting's greatest size: larger steps say nothing.</param>
    public static string Of(string material, string process, Length greatest, DimensionText text)
    {
        return Band(material, process) is { } band ? Of(new CastingToleranceRule(band.FinestGrade, band.Series == CastingSeries.Short), greatest, text, "OR AS AGREED WITH THE FOUNDRY") : Unknown;
    }

    /// <param name="whose">Says how far the grade is settled.</param>
    public static string Of(CastingToleranceRule rule, Length greatest, DimensionText text, string whose)
    {
        if (Steps(rule, greatest, text) is not { } steps)
            return Unknown;
        SortedSet<int> grades = [.. Borders(greatest).Select(border => rule.GradeOf(border))];
        static string Text(int grade) => grade.ToString(CultureInfo.InvariantCulture);
        string all = " (DCTG " + Text(grades.Min) + (grades.Count > 1 ? " TO " + Text(grades.Max) : "") + ")";
        return "TO ISO 8062-3:2007, " + steps + all + ", WALLS ONE GRADE COARSER, " + whose;
    }

    /// <summary>Plus or minus by size, such as <c>±0.37 UP TO 10, ±0.39 UP TO 16</c>; null where the standard gives none.</summary>
    /// <param name="greatest">The casting's greatest size: larger steps say nothing.</param>
    public static string? Steps(CastingToleranceRule rule, Length greatest, DimensionText text)
    {
        List<string> steps = [];
        foreach (Length border in Borders(greatest))
        {
            Answer<Length> half = CastingTolerances.PlusMinus(rule.GradeOf(border), border);
            if (!half.IsGiven)
                return null;
            steps.Add(text.PlusMinus(half.Value) + " UP TO " + text.Number(border));
        }

        return string.Join(", ", steps);
    }

    private static IEnumerable<Length> Borders(Length greatest)
    {
        foreach (double upTo in _steps)
        {
            Length border = Length.FromMillimetres(upTo);
            yield return border;
            if (border >= greatest)
                yield break;
        }
    }

    private static CastingGradeBand? Band(string material, string process)
    {
        if (MaterialOfText.CastingGroup(material) is not { } group)
            return null;
        bool Says(string word) => process.Contains(word, StringComparison.OrdinalIgnoreCase);
        CastingGradeBand? Row(string metal, string kind) => CastingGradesByProcess.For(metal).FirstOrDefault(b => b.Process == kind);
        if (Says("investment") || Says("lost wax"))
            return Row("all metals", "investment casting");
        if (Says("shell") || Says("machine mould"))
            return Row(group, "sand, machine moulded and shell");
        if (Says("resin") || Says("chemically"))
            return Row(group, "sand, hand moulded, chemically bonded");
        return Says("sand") ? Row(group, "sand, hand moulded, clay bonded") : null;
    }
}
