using System.Collections.Immutable;

namespace LeverDraw.Profiles;

/// <summary>A part kind's name, as <c>kind</c> gives it, and its own fields; the common ones stand in <see cref="CommonFields"/>.</summary>
public sealed record PartFields(string Kind, ImmutableArray<FieldSpec> Fields)
{
    /// <summary>The common fields, then the kind's own.</summary>
    public ImmutableArray<FieldSpec> WithCommon => [.. CommonFields.All, .. Fields];
}
