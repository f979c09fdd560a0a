using System.Collections.Immutable;

namespace LeverDraw.Profiles;

/// <summary>A part kind's name, as <c>kind</c> gives it, and its own fields; the common ones stand in <see cref="CommonFields"/>.</summary>
public sealed record PartFields(string Kind, ImmutableArray<FieldSpec> Fields)
{
    /// <summary>Those of <see cref="CommonFields"/> that the kind has.</summary>
    public ImmutableArray<FieldSpec> Common { get; init; } = CommonFields.All;

    /// <summary>The common fields, then the kind's own.</summary>
    public ImmutableArray<FieldSpec> WithCommon => [.. Common, .. Fields];
}
