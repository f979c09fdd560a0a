using LeverDraw.Diagnostics;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Readings;

/// <summary>Where on the feature a reading was taken.</summary>
public enum ReadAt
{
    /// <summary>Not said: taken as worn where wear is possible.</summary>
    Unsaid,
    Worn,
    Witness,
}

/// <summary>One reading of one specimen.</summary>
/// <param name="Value">Millimetres, degrees, or the rate of a taper; as read, not corrected.</param>
/// <param name="Word">What was seen; null for a number.</param>
/// <param name="Altered">The feature was changed since it was made (filed, drilled out, squeezed, soldered): told, and left out of every estimate.</param>
public sealed record Reading(string Specimen, Measurand Measurand, double Value, string? Word, Instrument Instrument, ReadAt At, bool Altered, string Note, SourcePosition Position)
{
    /// <summary>A likely slip of the unit or the decimal point: told, and left out of every estimate.</summary>
    public bool IsSlip { get; init; }

    /// <summary>It may be used to estimate.</summary>
    public bool Counts => !Altered && !IsSlip;

    /// <summary>With the known error of small-bore jaws put right; millimetres or degrees.</summary>
    internal double Corrected => ReadsBore ? Value + BoreError : Value;

    /// <summary>Standard uncertainty of that correction: the flat is not known, so the correction is uncertain by half of itself (own).</summary>
    internal double OfCorrection => ReadsBore ? BoreError / 2 : 0;

    private bool ReadsBore => Measurand.Feature == "hole" && Measurand.Kind == ReadingKind.Size && (Instrument == Instruments.Caliper || Instrument == Instruments.Vernier);

    private double BoreError => Instruments.SmallBoreError(Units.Length.FromMillimetres(Value)).Millimetres;
}
