using System.Collections.Immutable;

namespace LeverDraw.Drafting.Completeness;

/// <summary>Whether a sheet fixes its part exactly once. docs/adr/0005-dimensioning-completeness.md says how it is found.</summary>
/// <param name="Freedoms">In how many ways the shape can change without changing its form.</param>
/// <param name="Free">Sets of parameters that no size on the sheet holds.</param>
/// <param name="Repeated">Sets of full sizes of which one follows from the others.</param>
/// <param name="WronglyBracketed">Sizes in brackets that do not follow from others.</param>
/// <param name="Unclear">Why nothing can be said, or null: a parameter on the edge of the part's form, or a singular value in the gap.</param>
public sealed record Dimensioning(
    int Freedoms,
    ImmutableArray<ImmutableArray<string>> Free,
    ImmutableArray<ImmutableArray<string>> Repeated,
    ImmutableArray<string> WronglyBracketed,
    string? Unclear)
{
    public bool IsExact => Unclear is null && Free.IsEmpty && Repeated.IsEmpty && WronglyBracketed.IsEmpty;

    public static Dimensioning Of(ParametricSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (Sensitivity.Of(sheet, out string? atEdge) is not { } slopes)
            return Nothing("'" + atEdge + "' stands at the edge of what this form allows");
        return ActingSpace.Of(slopes.Shape, sheet.Parameters) is { } space
            ? new SizeWeighing(space, sheet.Here.Sizes, slopes.Sizes).Verdict() ?? Nothing("two of its sizes act all but alike")
            : Nothing("two fields shape the part all but alike");
    }

    private static Dimensioning Nothing(string why) => new(0, [], [], [], why);
}
