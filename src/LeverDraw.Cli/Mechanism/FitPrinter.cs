using System.Globalization;
using LeverDraw.Cli.Reporting;
using LeverDraw.Mechanism;
using LeverDraw.Mechanism.Fitting;

namespace LeverDraw.Cli.Mechanism;

/// <summary>Fits as text: the table of all, then each pair that is not simply good in words.</summary>
internal sealed class FitPrinter(TextWriter to, LengthWords lengths, bool colour)
{
    /// <param name="details">Every contact's clearance, and good pairs too.</param>
    public void Print(FitMatrix matrix, bool details)
    {
        new TerminalTable(
            ["", .. matrix.Levers],
            [.. matrix.Planes.Select(plane => (IReadOnlyList<string>)[plane, .. matrix.Levers.Select(lever => Cell(matrix.Of(lever, plane)))])]).Write(to, colour);
        to.WriteLine("  Numbers: turns of the nut lost, sizes at the middle of their limits.");
        foreach (LeverFit fit in matrix.Fits.Where(f => details || f.Reasons.Length > 0))
        {
            to.WriteLine();
            to.WriteLine($"{fit.Lever} in {fit.Plane}: {fit.Word}.");
            foreach (string reason in fit.Reasons)
                to.WriteLine("  - " + reason + ".");
            foreach (string line in Advice(matrix, fit))
                to.WriteLine("  " + line);
            if (details)
                PrintContacts(fit);
        }

        if (!matrix.Fits.Any(f => f.Verdict == FitVerdict.DoesNotGo && f.Rework is { IsEmpty: false }))
            return;
        to.WriteLine();
        to.WriteLine(Cautions.Reaming);
        to.WriteLine(Cautions.Pins);
    }

    private static string Cell(LeverFit fit) => fit.Verdict switch
    {
        FitVerdict.GoesIn => "goes in" + Lost(fit),
        FitVerdict.WithPlay => "with play" + Lost(fit),
        _ => fit.Rework is null ? "no" : "no, unless reworked",
    };

    private static string Lost(LeverFit fit) => fit.Turns is { } turns ? ", " + turns.ToString("0.00", CultureInfo.InvariantCulture) : "";

    private static IEnumerable<string> Advice(FitMatrix matrix, LeverFit fit)
    {
        if (fit.Verdict != FitVerdict.DoesNotGo)
            yield break;
        if (fit.Rework is { IsEmpty: false } rework)
        {
            yield return "To make it go: " + string.Join("; ", rework) + ".";
            if (!fit.Play.IsEmpty)
                yield return "Even then it has play: " + string.Join("; ", fit.Play) + ".";
        }
        else
        {
            yield return "No rework makes it go.";
        }

        if (matrix.Alternative(fit) is { } other)
            yield return $"Nearest that goes: {other.Lever} ({other.Word}{Lost(other)} turns lost).";
    }

    private void PrintContacts(LeverFit fit) =>
        new TerminalTable(
            ["contact", ">typical " + lengths.Units, ">least", ">most", "state"],
            [.. fit.Contacts.Select(c => (IReadOnlyList<string>)[c.Name, lengths.Number(c.Typical), lengths.Number(c.Worst.Min), lengths.Number(c.Worst.Max), State(c)])]).Write(to, colour);

    public static string State(FitContact contact) => contact.State switch
    {
        FitState.Good => "good",
        FitState.Loose => "loose",
        FitState.Tight => "tight",
        _ => "fails",
    };
}
