using System.Collections.Immutable;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing.Allowances;

/// <summary>A way of moulding by the profile's word, and where each table keeps it.</summary>
/// <param name="GradeRow">Process in <see cref="CastingGradesByProcess"/>.</param>
/// <param name="AllowanceRow">Process in <see cref="MachiningAllowanceGrades"/>.</param>
/// <param name="SectionRow">Process in <see cref="LeastSections"/>.</param>
/// <param name="LeastHole">Holes below this are cast solid.</param>
/// <param name="LeastHoleKind">How sure <paramref name="LeastHole"/> is, in words.</param>
/// <param name="Sand">Moulded in sand from a pattern that is rapped and drawn.</param>
public sealed record MouldingProcess(string Word, string Name, string GradeRow, string AllowanceRow, string SectionRow, Length LeastHole, string LeastHoleKind, DraftProcess Draft, bool Sand)
{
    public static MouldingProcess GreenSand { get; } = new("green-sand", "hand-moulded green sand", "sand, hand moulded, clay bonded", "sand, hand moulded", "green sand", CastingDesignRules.LeastCastHole, "from memory", DraftProcess.SandHandMoulded, true);

    public static MouldingProcess ResinSand { get; } = new("resin-sand", "resin-bonded sand", "sand, hand moulded, chemically bonded", "sand, hand moulded", "green sand", CastingDesignRules.LeastCastHole, "from memory", DraftProcess.SandHandMoulded, true);

    public static MouldingProcess Investment { get; } = new("investment", "investment casting", "investment casting", "investment casting", "investment", Length.FromMillimetres(2), "from memory", DraftProcess.Investment, false);

    /// <remarks>Its draft is taken from machine-moulded sand, the tables having none of its own.</remarks>
    public static MouldingProcess GravityDie { get; } = new("gravity-die", "gravity die casting", "permanent mould", "permanent mould", "gravity die", Length.FromMillimetres(5), "one guide: 3 to 5 mm", DraftProcess.SandMachineOrShell, false);

    public static ImmutableArray<MouldingProcess> All { get; } = [GreenSand, ResinSand, Investment, GravityDie];

    /// <summary>Greatest length of a through hole an investment core stands, in diameters (one guide).</summary>
    public const double MostInvestmentHoleDepth = 5;

    public static MouldingProcess? Find(string word) => All.FirstOrDefault(p => p.Word == word);

    /// <summary>The tolerance grades the tables expect; null when they hold none for this metal.</summary>
    public CastingGradeBand? Grades(FoundryMetal metal) =>
        CastingGradesByProcess.For(metal.GradeGroup).Concat(CastingGradesByProcess.For("all metals")).FirstOrDefault(b => b.Process == GradeRow);

    public MachiningAllowanceBand? Allowances(FoundryMetal metal) =>
        MachiningAllowanceGrades.All.FirstOrDefault(b => b.Metal == metal.AllowanceGroup && b.Process == AllowanceRow);

    public LeastSection? LeastSection(FoundryMetal metal) =>
        LeastSections.All.FirstOrDefault(s => s.Metal == metal.SectionName && s.Process == SectionRow)
        ?? LeastSections.All.FirstOrDefault(s => s.Metal == metal.SectionName && SectionRow == "green sand")
        ?? LeastSections.All.FirstOrDefault(s => s.Metal == "all metals" && s.Process == SectionRow);
}
