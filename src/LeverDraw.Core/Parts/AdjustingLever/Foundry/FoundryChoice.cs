using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Tolerancing.Allowances;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Foundry;

/// <summary>Foundry choices from outside a profile, which come before its own: the same lever in another metal, by another process, after a trial.</summary>
/// <param name="Metal">Null: the profile's.</param>
/// <param name="Process">Null: the profile's.</param>
/// <param name="Contraction">As <c>casting.contraction</c> is written; null: the profile's.</param>
/// <param name="Trial">Sizes of the trial fields.</param>
public sealed record FoundryChoice(FoundryMetal? Metal, MouldingProcess? Process, string? Contraction, ImmutableDictionary<SizeField, Length> Trial)
{
    public static FoundryChoice None { get; } = new(null, null, null, ImmutableDictionary<SizeField, Length>.Empty);

    public bool IsNone => Metal is null && Process is null && Contraction is null && Trial.IsEmpty;

    /// <summary>The profile with these choices; one of another kind than a lever is left alone.</summary>
    public Profile On(Profile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return IsNone || profile.Kind != LeverFields.PartKind ? profile : profile with { Values = new Chosen(profile.Values, this) };
    }

    private sealed class Chosen(IFieldValues inner, FoundryChoice choice) : IFieldValues
    {
        public SizeValue? Find(SizeField field) => choice.Trial.TryGetValue(field, out Length size) ? new SizeValue(size) : inner.Find(field);

        public double? Find(NumberField field) => inner.Find(field);

        public SizeValue Get(SizeField field) => Find(field) ?? inner.Get(field);

        public Angle Get(AngleField field) => inner.Get(field);

        public Length Get(RoughnessField field) => inner.Get(field);

        public Taper Get(TaperField field) => inner.Get(field);

        public string Get(ChoiceField field) =>
            field == CastingFields.Metal && choice.Metal is { } metal ? metal.Word
            : field == CastingFields.Process && choice.Process is { } process ? process.Word
            : inner.Get(field);

        /// <summary>The title block must not name another metal than the one that is poured.</summary>
        public string Get(TextField field)
        {
            string own = inner.Get(field);
            if (field == CastingFields.Contraction)
                return choice.Contraction ?? (choice.Metal is null ? own : "");
            if (field == CommonFields.Material && choice.Metal is { } metal && MaterialOfText.FoundryWord(own) != metal.Word)
                return Capital(metal.Name);
            return field == CommonFields.Process && choice.Process is { } process ? Capital(process.Name) + ", machined" : own;
        }

        public bool Get(FlagField field) => inner.Get(field);

        public bool IsStated(FieldSpec field) =>
            inner.IsStated(field)
            || (field == CastingFields.Metal && choice.Metal is not null)
            || (field == CastingFields.Process && choice.Process is not null)
            || (field == CastingFields.Contraction && choice.Contraction is not null)
            || (field is SizeField size && choice.Trial.ContainsKey(size));

        public SourcePosition PositionOf(FieldSpec field) => inner.PositionOf(field);

        private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
    }
}
