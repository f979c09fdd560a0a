using System.Collections.Immutable;

namespace LeverDraw.Standards;

/// <summary>Every table held here, in the order they are listed to the user. A new table is one file and one line here.</summary>
public static class StandardTables
{
    public static ImmutableArray<StandardSource> All { get; } =
    [
        Iso286Grades.Source,
        Iso286Shafts.Source,
        Iso286Holes.Source,
        Iso2768Linear.Source,
        Iso2768Radii.Source,
        Iso2768Angles.Source,
        InchTaperPins.Source,
        TaperPinReamers.Source,
        TaperPinDrills.Source,
        TaperPinStepDrills.Source,
        MetricTaperPins.Source,
        MetricPinLengths.Source,
        ParallelPins.Source,
        TaperPinFitting.Source,
        TwistDrills.Source,
        MetricTwistDrills.Source,
        Materials.Source,
        IsoSheets.Source,
        InchSheets.Source,
        SheetLayout.Source,
        TitleBlockFields.Source,
        DrawingScales.Source,
        LineWidths.Source,
        LinePatterns.Source,
        DimensioningPractice.Source,
        SymbolProportions.Source,
        PatternColours.Source,
        CastingTolerances.Source,
        CastingGradesByProcess.Source,
        RequiredMachiningAllowances.Source,
        MachiningAllowanceGrades.Source,
        Contractions.Source,
        ContractionReadings.Source,
        ContractionBySize.Source,
        DraftRanges.Source,
        DraftByHeight.Source,
        DraftByPatternMaterial.Source,
        LeastSections.Source,
        CastingDesignRules.Source,
        FinishAllowances.Source,
        OtherFinishAllowances.Source,
        CaliperErrors.Source,
    ];
}
