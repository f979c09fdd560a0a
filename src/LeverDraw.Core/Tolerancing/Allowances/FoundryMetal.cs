using System.Collections.Immutable;
using LeverDraw.Standards;

namespace LeverDraw.Tolerancing.Allowances;

/// <summary>A casting metal by the profile's word, and where each table keeps it.</summary>
/// <param name="Contraction">In <see cref="Contractions"/>.</param>
/// <param name="GradeGroup">In <see cref="CastingGradesByProcess"/>.</param>
/// <param name="AllowanceGroup">In <see cref="MachiningAllowanceGrades"/>.</param>
/// <param name="SectionName">In <see cref="LeastSections"/>.</param>
/// <param name="IsBrittle">Thin arms of it snap when bent or squeezed.</param>
public sealed record FoundryMetal(string Word, string Name, string Contraction, string GradeGroup, string AllowanceGroup, string SectionName, bool IsBrittle)
{
    public static FoundryMetal GreyIron { get; } = new("grey-iron", "grey iron", "grey iron", "grey iron", "grey iron", "grey iron", true);

    public static FoundryMetal Brass { get; } = new("brass", "brass", "brass", "copper alloys", "copper alloys", "brass and bronze", false);

    public static FoundryMetal Aluminium { get; } = new("aluminium", "aluminium", "aluminium", "light alloys", "light alloys", "aluminium", false);

    /// <remarks>The tables of machining allowances hold no row for malleable iron; grey iron's stands in.</remarks>
    public static ImmutableArray<FoundryMetal> All { get; } =
    [
        GreyIron,
        new("ductile-iron", "ductile iron", "ductile iron", "ductile (SG) iron", "ductile (SG) iron", "ductile iron", false),
        new("malleable-iron", "malleable iron", "malleable iron", "malleable iron", "grey iron", "malleable iron", false),
        Brass,
        new("gunmetal", "gunmetal", "tin bronze / gunmetal", "copper alloys", "copper alloys", "brass and bronze", false),
        new("aluminium-bronze", "aluminium bronze", "aluminium bronze", "copper alloys", "copper alloys", "brass and bronze", false),
        Aluminium,
    ];

    public static FoundryMetal? Find(string word) => All.FirstOrDefault(m => m.Word == word);

    /// <summary>The usual rate of the tables, with the published range as its uncertainty.</summary>
    public ContractionRate BookRate
    {
        get
        {
            Contraction row = Contractions.Of(Contraction).Value;
            return ContractionRate.Book(row.Lowest, row.Usual, row.Highest);
        }
    }
}
