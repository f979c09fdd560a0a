using System.Collections.Immutable;

namespace LeverDraw.Specimens.Identification;

/// <summary>What the ranking comes to.</summary>
public enum Verdict
{
    /// <summary>One variant has at least 95 % of the belief.</summary>
    Identified,

    /// <summary>Several variants share it.</summary>
    CannotTell,

    /// <summary>No variant there is fits.</summary>
    Unknown,
}

/// <summary>A feature that does not belong to the variant the rest of the part does.</summary>
/// <param name="Feature">Such as <c>hole</c>.</param>
/// <param name="Fits">The other variant whose feature it fits; null when none.</param>
public sealed record StrangeFeature(string Feature, double AlteredShare, Variant? Fits);

/// <summary>What one specimen's lever or pin is.</summary>
/// <param name="Candidates">All, most likely first.</param>
/// <param name="Further">Readings not yet taken that would tell most, best first; none when nothing would.</param>
public sealed record PartFinding(
    string Specimen, string Part, Verdict Verdict, ImmutableArray<Candidate> Candidates, ImmutableArray<StrangeFeature> Strange, ImmutableArray<FurtherReading> Further, int Readings)
{
    /// <summary>The likeliest variant.</summary>
    public Variant Best => Candidates.First(c => c.Variant is not null).Variant!;

    /// <summary>Odds of the first candidate against the second.</summary>
    public double Odds => Candidates.Length < 2 ? double.PositiveInfinity : Candidates[0].Share / Candidates[1].Share;

    /// <summary>The fewest candidates that share 95 % of the belief.</summary>
    public ImmutableArray<Candidate> Open
    {
        get
        {
            double sum = 0;
            return [.. Candidates.TakeWhile(c =>
            {
                bool more = sum < Identify.Sure;
                sum += c.Share;
                return more;
            })];
        }
    }
}

/// <summary>A specimen's lever and pin, each identified, are of different variants.</summary>
/// <param name="Belongs">Drawing number of the pin that the lever's profile names.</param>
/// <param name="HoleFitsPin">The lever's hole is likelier one made for the other pin than its own, worn.</param>
public sealed record MixedParts(string Specimen, Variant Lever, Variant Pin, string Belongs, bool HoleFitsPin);

/// <summary>All findings of a file of readings.</summary>
public sealed record Identification(ImmutableArray<PartFinding> Parts, ImmutableArray<MixedParts> Mixed);
