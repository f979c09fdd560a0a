namespace LeverDraw.Drafting.TitleBlocks;

/// <summary>Which way views are laid out round the front view.</summary>
public enum ProjectionMethod
{
    /// <summary>A view from the right stands at the right.</summary>
    ThirdAngle,

    /// <summary>A view from the right stands at the left.</summary>
    FirstAngle,
}

/// <summary>What the title block says (fields after ISO 7200, reference 10c). All from the profile but scale, projection, sheet and paper.</summary>
/// <param name="DocumentType">What kind of document and which state of the part: <c>PART DRAWING, FINISHED</c>.</param>
/// <param name="Units">Such as <c>mm [in]</c>.</param>
public sealed record TitleBlock(
    string Owner,
    string Title,
    string SupplementaryTitle,
    string DrawingNumber,
    string Revision,
    string Date,
    string Creator,
    string Approver,
    string DocumentType,
    string Material,
    string Process,
    string GeneralTolerance,
    string Units,
    string Sheet,
    bool Reproduction)
{
    /// <summary>A statement nobody may miss, in a row of its own over the others; empty for none.</summary>
    public string Flag { get; init; } = string.Empty;

    /// <summary>How many are wanted, beside the flag.</summary>
    public string Quantity { get; init; } = string.Empty;
}
