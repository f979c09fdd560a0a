using System.Collections.Immutable;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>One field of a part kind's profile: the single place that drives reading, <c>fields</c>, the docs, the JSON Schema and the suggestions.</summary>
/// <param name="Name">Full name, table and key, such as <c>arms.thickness</c>; lower case with underscores.</param>
/// <param name="Symbol">The trade notes' short sign, such as <c>ta</c>, or null.</param>
/// <param name="Help">One line: what it is and how it is measured.</param>
public abstract record FieldSpec(string Name, string? Symbol, string Help)
{
    /// <summary>The field exists only when this choice has one of these values; null when it always exists.</summary>
    public FieldCondition? OnlyWhen { get; init; }

    /// <summary>True when a profile need not give it; the default (or absence) then stands.</summary>
    public abstract bool IsOptional { get; }
}

/// <summary>A field applies only when <paramref name="Choice"/> is one of <paramref name="Values"/>.</summary>
public sealed record FieldCondition(ChoiceField Choice, ImmutableArray<string> Values);

/// <summary>A size with, if the profile says so, limits or a fit. Range ends are allowed values.</summary>
/// <param name="Default">In millimetres; null with <see cref="MayBeAbsent"/> false means the field is required.</param>
public sealed record SizeField(string Name, string? Symbol, string Help, double MinMillimetres, double MaxMillimetres, double? Default = null)
    : FieldSpec(Name, Symbol, Help)
{
    /// <summary>True when absence has a meaning of its own (the part decides).</summary>
    public bool MayBeAbsent { get; init; }

    public override bool IsOptional => Default is not null || MayBeAbsent;
}

/// <summary>An angle, degrees in the file.</summary>
public sealed record AngleField(string Name, string? Symbol, string Help, double MinDegrees, double MaxDegrees, double? Default = null)
    : FieldSpec(Name, Symbol, Help)
{
    public override bool IsOptional => Default is not null;
}

/// <summary>A surface roughness Ra, a plain number of micrometres in the file whatever its unit of length. Zero leaves it unsaid.</summary>
public sealed record RoughnessField(string Name, string? Symbol, string Help, double MaxMicrometres, double Default)
    : FieldSpec(Name, Symbol, Help)
{
    public override bool IsOptional => true;
}

/// <summary>A plain number without a unit, such as a price; absent unless given. Range ends are allowed values.</summary>
public sealed record NumberField(string Name, string? Symbol, string Help, double Min, double Max)
    : FieldSpec(Name, Symbol, Help)
{
    public override bool IsOptional => true;
}

/// <summary>A taper on diameter: <c>"1:48"</c> or <c>"parallel"</c>.</summary>
public sealed record TaperField(string Name, string? Symbol, string Help, Taper? Default = null)
    : FieldSpec(Name, Symbol, Help)
{
    public override bool IsOptional => Default is not null;
}

/// <summary>One of a few words.</summary>
public sealed record ChoiceField(string Name, string? Symbol, string Help, ImmutableArray<string> Choices, string? Default = null)
    : FieldSpec(Name, Symbol, Help)
{
    public override bool IsOptional => Default is not null;
}

/// <summary>Free text of at most <paramref name="MaxLength"/> characters, one line.</summary>
public sealed record TextField(string Name, string? Symbol, string Help, int MaxLength, string? Default = null)
    : FieldSpec(Name, Symbol, Help)
{
    /// <summary>True when the text is a date, year-month-day.</summary>
    public bool IsDate { get; init; }

    public override bool IsOptional => Default is not null;
}

/// <summary><c>true</c> or <c>false</c>.</summary>
public sealed record FlagField(string Name, string? Symbol, string Help, bool Default)
    : FieldSpec(Name, Symbol, Help)
{
    public override bool IsOptional => true;
}
