using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Standards;

namespace LeverDraw.Tolerancing;

/// <summary>Which side of the material the size is: inside a hole or outside a shaft.</summary>
public enum FitFeature
{
    Hole,
    Shaft,
}

/// <summary>A tolerance zone such as H8 (hole) or f7 (shaft): deviation letter and grade. Make it by <see cref="Parse"/>, <see cref="Hole"/> or <see cref="Shaft"/>.</summary>
public readonly record struct ToleranceZone
{
    private const string Allowed = "a tolerance zone is a letter C to H, JS, K, M, N, P, R or S, capital for a hole and small for a shaft, and a grade 1 to 18";

    private static readonly ImmutableArray<string> _capitals = ["C", "D", "E", "F", "G", "H", "JS", "K", "M", "N", "P", "R", "S"];

    private ToleranceZone(FitFeature feature, DeviationLetter letter, int grade)
    {
        Feature = feature;
        Letter = letter;
        Grade = grade;
    }

    public FitFeature Feature { get; }

    public DeviationLetter Letter { get; }

    /// <summary>1 to 18; 0 in the default value, which is no zone.</summary>
    public int Grade { get; }

    /// <summary>As written on a drawing: <c>H8</c>, <c>js6</c>.</summary>
    public string Text
    {
        get
        {
            string capitals = _capitals[(int)Letter];
            string letters = Feature == FitFeature.Hole ? capitals : capitals.ToLowerInvariant();
            return letters + Grade.ToString(CultureInfo.InvariantCulture);
        }
    }

    /// <exception cref="ArgumentOutOfRangeException">The grade is not 1 to 18.</exception>
    public static ToleranceZone Hole(DeviationLetter letter, int grade) => Make(FitFeature.Hole, letter, grade);

    /// <exception cref="ArgumentOutOfRangeException">The grade is not 1 to 18.</exception>
    public static ToleranceZone Shaft(DeviationLetter letter, int grade) => Make(FitFeature.Shaft, letter, grade);

    /// <summary>Reads a zone; nothing may stand before, between or after letter and grade, and the case decides hole or shaft.</summary>
    public static Answer<ToleranceZone> Parse(string text)
    {
        int digits = text.AsSpan().IndexOfAnyInRange('0', '9');
        if (digits is not (1 or 2)
            || text.Length - digits is not (1 or 2)
            || text[digits] == '0'
            || !int.TryParse(text.AsSpan(digits), NumberStyles.None, CultureInfo.InvariantCulture, out int grade)
            || grade > Iso286Grades.Coarsest)
            return Refuse(text);
        string letters = text[..digits];
        int hole = _capitals.IndexOf(letters);
        if (hole >= 0)
            return Answer<ToleranceZone>.Given(new ToleranceZone(FitFeature.Hole, (DeviationLetter)hole, grade));
        // "Js" is neither case: only text that is small throughout is a shaft.
        int shaft = string.Equals(letters, letters.ToLowerInvariant(), StringComparison.Ordinal)
            ? _capitals.IndexOf(letters.ToUpperInvariant())
            : -1;
        return shaft >= 0
            ? Answer<ToleranceZone>.Given(new ToleranceZone(FitFeature.Shaft, (DeviationLetter)shaft, grade))
            : Refuse(text);
    }

    public override string ToString() => Text;

    private static Answer<ToleranceZone> Refuse(string text) => Answer<ToleranceZone>.Refused(Allowed + ", not \"" + text + "\"");

    private static ToleranceZone Make(FitFeature feature, DeviationLetter letter, int grade)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(grade, Iso286Grades.Finest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(grade, Iso286Grades.Coarsest);
        return new ToleranceZone(feature, letter, grade);
    }
}
