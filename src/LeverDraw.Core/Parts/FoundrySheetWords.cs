using System.Globalization;
using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Parts;

/// <summary>How sheets say where a contraction comes from and how sure it is.</summary>
internal static class FoundrySheetWords
{
    /// <param name="metal">Of the casting.</param>
    /// <param name="counted">What the rate's range is counted in, such as <c>IN STOCK</c>.</param>
    public static string Contraction(AxisRates rates, FoundryMetal metal, string counted = "")
    {
        if (rates.AreAlike && rates.X.Origin == rates.Z.Origin && rates.X.Origin == rates.N.Origin)
            return "CONTRACTION OF " + Upper(metal.Name) + " " + ContractionText.OneIn(rates.X) + " (" + ContractionText.Percent(rates.X) + "), " + Origin(rates.X, counted);
        return "CONTRACTION OF " + Upper(metal.Name) + ": ALONG PIN " + One(rates.X, counted) + "; SQUARE TO ARMS " + One(rates.N, counted) + "; ALONG ARMS " + One(rates.Z, counted);
    }

    private static string One(ContractionRate rate, string counted) => ContractionText.Percent(rate) + " " + Origin(rate, counted);

    private static string Origin(ContractionRate rate, string counted) => rate.Origin switch
    {
        RateOrigin.Trial => "MEASURED ON A TRIAL, " + Range(rate) + Counted(counted),
        RateOrigin.Stated => "AS THE FOUNDRY STATES",
        _ => "BOOK FIGURE (" + Range(rate) + Counted(counted) + "): ASK " + (counted.Length > 0 ? "" : "THE ") + "FOUNDRY",
    };

    private static string Counted(string counted) => counted.Length > 0 ? ", " + counted : "";

    private static string Range(ContractionRate rate) => Figure(rate.Value - rate.Below) + " TO " + Figure(rate.Value + rate.Above) + " %";

    private static string Figure(double rate) => (rate * 100).ToString("0.##", CultureInfo.InvariantCulture);

    private static string Upper(string name) => name.ToUpper(CultureInfo.InvariantCulture);
}
