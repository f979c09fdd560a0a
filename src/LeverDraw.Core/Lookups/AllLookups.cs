using System.Collections.Immutable;

namespace LeverDraw.Lookups;

/// <summary>All look-ups there are, in the order they are listed. A new one is a file in this folder, and a line here.</summary>
public static class AllLookups
{
    public static ImmutableArray<Lookup> InOrder { get; } =
    [
        FitLookup.Entry,
        ZoneLookup.Entry,
        GeneralLookup.Entry,
        TaperPinLookup.Entry,
        ParallelPinLookup.Entry,
        DrillLookup.Entry,
        ContractionLookup.Entry,
        CastingToleranceLookup.Entry,
        CastingGradesLookup.Entry,
        MachiningAllowanceLookup.Entry,
        MachiningGradesLookup.Entry,
        StockLookup.Entry,
        DraftLookup.Entry,
        LeastSectionLookup.Entry,
        DesignRulesLookup.Entry,
        ModulusLookup.Entry,
        MaterialLookup.Entry,
    ];
}
