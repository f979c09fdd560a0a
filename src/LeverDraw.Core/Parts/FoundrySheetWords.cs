using System.Globalization;
using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Parts;

/// <summary>How sheets say where a contraction comes from and how sure it is.</summary>
internal static class FoundrySheetWords
{
    /// <param name="metal">Of the casting.</param>
    public static string Contraction(AxisRates rates, FoundryMetal metal)
    {
        if (rates.AreAlike && rates.X.Origin == rates.Z.Origin && rates.X.Origin == rates.N.Origin)
            return "CONTRACTION OF " + Upper(metal.Name) + " " + ContractionText.OneIn(rates.X) + " (" + ContractionText.Percent(rates.X) + "), " + Origin(rates.X);
        return "CONTRACTION OF " + Upper(metal.Name) + ": ALONG PIN " + One(rates.X) + "; SQUARE TO ARMS " + One(rates.N) + "; ALONG ARMS " + One(rates.Z);
    }

    private static string One(ContractionRate rate) => ContractionText.Percent(rate) + " " + Origin(rate);

    private static string Origin(ContractionRate rate) => rate.Origin switch
    {
        RateOrigin.Trial => "MEASURED ON A TRIAL, " + Range(rate),
        RateOrigin.Stated => "AS THE FOUNDRY STATES",
        _ => "BOOK FIGURE (" + Range(rate) + "): ASK THE FOUNDRY",
    };

    private static string Range(ContractionRate rate) => Figure(rate.Value - rate.Below) + " TO " + Figure(rate.Value + rate.Above) + " %";

    private static string Figure(double rate) => (rate * 100).ToString("0.##", CultureInfo.InvariantCulture);

    private static string Upper(string name) => name.ToUpper(CultureInfo.InvariantCulture);
}
