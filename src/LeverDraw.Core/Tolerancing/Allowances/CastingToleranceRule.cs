using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Tolerancing.Allowances;

/// <summary>Which casting tolerance grade a size has, and its plus or minus.</summary>
/// <param name="Grade">DCTG for sizes above 25 mm, or for all when <paramref name="FinerWhenSmall"/> is false.</param>
/// <param name="FinerWhenSmall">As the tables say for hand moulding in short series.</param>
public readonly record struct CastingToleranceRule(int Grade, bool FinerWhenSmall)
{
    /// <summary>The finest grade the process is listed for, as on the finished sheet.</summary>
    public static CastingToleranceRule? Usual(FoundryMetal metal, MouldingProcess process) =>
        process.Grades(metal) is { } band ? new(band.FinestGrade, band.Series == CastingSeries.Short) : null;

    /// <param name="wall">A wall left as cast: one grade coarser.</param>
    public int GradeOf(Length size, bool wall = false)
    {
        int grade = Grade - (FinerWhenSmall ? CastingGradesByProcess.GradesFinerWhenSmall(size) : 0);
        return wall ? CastingTolerances.WallGrade(grade) : grade;
    }

    public Answer<Length> PlusMinus(Length size, bool wall = false) => CastingTolerances.PlusMinus(GradeOf(size, wall), size);
}
