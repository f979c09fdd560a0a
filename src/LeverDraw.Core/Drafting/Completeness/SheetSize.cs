namespace LeverDraw.Drafting.Completeness;

/// <summary>What weight a size on a sheet has.</summary>
public enum SizeStanding
{
    /// <summary>To be made and checked.</summary>
    Full,

    /// <summary>By a general note, which holds where nothing else is stated ("fillets without a size").</summary>
    General,

    /// <summary>In round brackets: follows from others.</summary>
    Reference,
}

/// <summary>One size a sheet states.</summary>
/// <param name="Value">Millimetres, radians, or the rate of a taper.</param>
public readonly record struct SheetSize(string Name, double Value, SizeStanding Standing);
