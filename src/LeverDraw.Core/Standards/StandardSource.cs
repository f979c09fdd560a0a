namespace LeverDraw.Standards;

/// <summary>Where a table's values come from.</summary>
/// <param name="Subject">What the table gives, a few words.</param>
/// <param name="Document">Body and number, such as <c>ISO 286-1</c>, or the kind of book.</param>
/// <param name="Edition">Year of the edition the values belong to; empty when unknown.</param>
/// <param name="Table">The table or clause inside the document; empty when unknown.</param>
/// <param name="Note">What was compared with what, and what is doubtful.</param>
public sealed record StandardSource(string Subject, string Document, string Edition, string Table, Certainty Certainty, string Note)
{
    /// <summary>Document and edition as one name: <c>ISO 286-1:2010</c>.</summary>
    public string Name => Edition.Length == 0 ? Document : Document + ":" + Edition;
}
