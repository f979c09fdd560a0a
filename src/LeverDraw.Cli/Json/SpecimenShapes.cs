namespace LeverDraw.Cli.Json;

/// <summary>What <c>identify --json</c> prints.</summary>
internal sealed record IdentifyShape(bool Ok, IReadOnlyList<PartFindingShape> Parts, IReadOnlyList<MixedShape> Mixed, IReadOnlyList<DiagnosticShape> Diagnostics);

/// <param name="Verdict"><c>identified</c>, <c>cannot-tell</c> or <c>unknown</c>.</param>
/// <param name="Odds">First candidate against the second; null when there is no second, or it is out of the question.</param>
internal sealed record PartFindingShape(
    string Specimen, string Part, string Verdict, int Readings, double? Odds, IReadOnlyList<CandidateShape> Candidates, IReadOnlyList<StrangeShape> Altered, IReadOnlyList<FurtherShape> Further);

/// <param name="Name">Null for none of the known variants.</param>
internal sealed record CandidateShape(string? Name, string? Profile, double Share);

internal sealed record StrangeShape(string Feature, double Share, string? Fits);

internal sealed record FurtherShape(string Field, double Bits);

internal sealed record MixedShape(string Specimen, string Lever, string Pin, string BelongsPin, bool HoleFitsPin);

/// <summary>What <c>reconstruct --json</c> prints; millimetres, degrees for angles.</summary>
/// <param name="Ok">The profile passes check, and was written.</param>
internal sealed record ReconstructShape(
    bool Ok, string? Written, IReadOnlyList<string> Specimens, IReadOnlyList<SurvivorSizeShape> Sizes, IReadOnlyList<FormShape> Forms, IReadOnlyList<TieShape> Ties, ContractionShape? Contraction,
    IReadOnlyList<DiagnosticShape> Diagnostics);

/// <param name="Likeliest">Null for a size that is not worn, or that was adjusted to tied ones.</param>
internal sealed record SurvivorSizeShape(string Field, double Value, double From, double To, double? Likeliest, string Rule, int Specimens, int Readings, IReadOnlyList<string> Sensible);

internal sealed record FormShape(string Field, string Word, int Agreeing, int Specimens);

internal sealed record TieShape(string Specimen, bool Agrees, double ChiSquare, int Freedom, IReadOnlyList<ResidualShape> Residuals);

internal sealed record ResidualShape(string Field, double Estimated, double Adjusted, double Residual, double InDeviations);

internal sealed record ContractionShape(string Field, double Rate, double From, double To);

/// <summary>What <c>readings fields --json</c> prints, one for each.</summary>
internal sealed record MeasurandShape(string Name, string Part, string Kind, string Wear, string Witness, string Help);
