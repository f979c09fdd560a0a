using System.Globalization;
using LeverDraw.Diagnostics;
using LeverDraw.Geometry;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Parts.PivotPin;

/// <summary>From a profile's values to a pin.</summary>
public static class PinPart
{
    /// <summary>Least flat or crown base left of an end, and least small end, millimetres (own rule).</summary>
    private const double LeastEnd = 0.2;

    /// <summary>The pin, or everything that is wrong with its sizes together. Each single value is taken as already in its own range.</summary>
    public static Checked<Pin> Build(IFieldValues values) => Build(values, null);

    internal static Checked<Pin> Build(IFieldValues values, PinMoves? moves)
    {
        PinFindings findings = new(values);
        SizeValue length = WithSeriesTolerance(values.Get(PinFields.Length), values.Get(PinFields.Series));
        if (Named(values, length.Nominal, findings) is not { } named)
            return Checked<Pin>.Bad(findings.All);
        if (moves is not null)
            named = Moved(named, moves, length.Nominal, values.Get(PinFields.Series) != PinFields.Metric);
        (SizeValue size, string designation, Length large, Taper taper) = named;
        Length small = large - (length.Nominal * taper.Rate);
        if (small.Millimetres < LeastEnd)
        {
            findings.RunsOut(small, PinFields.LargeEnd, PinFields.Length, PinFields.Taper);
            return Checked<Pin>.Bad(findings.All);
        }

        string ends = values.Get(PinFields.Ends);
        Length? crown = ends == PinFields.Crowned ? Crown(moves) ?? values.Find(PinFields.CrownRadius)?.Nominal ?? large : null;
        Length? chamfer = ends == PinFields.Chamfered ? values.Get(PinFields.Chamfer).Nominal : null;
        Length plane = GaugePlane(moves) ?? values.Find(PinFields.GaugePlane)?.Nominal ?? length.Nominal / 2;
        Length least = values.Get(PinFields.StandOutLeast).Nominal, most = values.Get(PinFields.StandOutMost).Nominal;
        if (plane > length.Nominal)
            findings.Odds($"the gauge plane lies {PinFindings.Mm(plane)} from the large end of a pin {PinFindings.Mm(length.Nominal)} long", "Put the gauge plane within the length.", PinFields.GaugePlane, PinFields.Length);
        if (least > most)
            findings.Odds($"the least stand-out ({PinFindings.Mm(least)}) is more than the most ({PinFindings.Mm(most)})", "Exchange the two.", PinFields.StandOutLeast, PinFields.StandOutMost);

        PinEnd? largeEnd = PinEnd.Of(large, -taper.Rate, crown, chamfer), smallEnd = PinEnd.Of(small, taper.Rate, crown, chamfer);
        if (largeEnd is null)
        {
            if (crown is { } radius)
                findings.Odds($"a crown of radius {PinFindings.Mm(radius)} does not reach across an end of {PinFindings.Mm(large)}", "Make the crown radius at least half the large end's diameter.", PinFields.CrownRadius, SizeField(values));
            else
                findings.Odds($"two chamfers of {PinFindings.Mm(chamfer ?? Units.Length.Zero)} leave nothing of an end of {PinFindings.Mm(large)}", "Make the chamfer smaller.", PinFields.Chamfer, SizeField(values));
        }
        else if (smallEnd is null)
        {
            findings.Odds($"two chamfers of {PinFindings.Mm(chamfer ?? Units.Length.Zero)} leave nothing of the small end ({PinFindings.Mm(small)})", "Make the chamfer smaller.", PinFields.Chamfer, SizeField(values));
        }
        else if (largeEnd.Value.Depth + smallEnd.Value.Depth >= length.Millimetres)
        {
            findings.TooShort(Units.Length.FromMillimetres(largeEnd.Value.Depth + smallEnd.Value.Depth), length.Nominal, PinFields.Length, PinFields.Ends);
        }
        else if (!taper.IsParallel && ends != PinFields.Flat && plane <= length.Nominal && (plane.Millimetres < largeEnd.Value.Depth || plane.Millimetres > length.Millimetres - smallEnd.Value.Depth))
        {
            findings.Odds($"the gauge plane lies {PinFindings.Mm(plane)} from the large end, where the form of the pin's end leaves nothing to gauge", "Put the gauge plane on the tapered side.", PinFields.GaugePlane, PinFields.Ends);
        }

        return Checked<Pin>.From(findings.All, () =>
        {
            PinOutline outline = PinOutline.Of(length.Millimetres, largeEnd!.Value, smallEnd!.Value, crown, ends);
            return new Pin(
                values.Get(PinFields.Series), designation, size, values.Get(PinFields.Series) != PinFields.Metric, taper, length, large, small,
                large - (plane * taper.Rate), plane, ends, crown, chamfer, outline.LargeBase, outline.SmallBase,
                values.Get(PinFields.LargeEndSide) == PinFields.Right, least, most, outline.Contour)
            {
                LugEdgeDistance = values.Find(PinFields.LugEdgeDistance)?.Nominal,
                SideRoughness = values.Get(PinFields.SideTexture),
                EndRoughness = values.Get(PinFields.EndTexture),
            };
        });
    }

    private static Length? Crown(PinMoves? moves) => moves?.CrownRadius is { } radius ? Units.Length.FromMillimetres(radius) : null;

    private static Length? GaugePlane(PinMoves? moves) => moves is null ? null : Units.Length.FromMillimetres(moves.GaugePlane);

    private static (SizeValue Size, string Designation, Length Large, Taper Taper) Moved(
        (SizeValue Size, string Designation, Length Large, Taper Taper) named, PinMoves moves, Length length, bool byLargeEnd)
    {
        SizeValue size = named.Size with { Nominal = Units.Length.FromMillimetres(moves.NamedEnd) };
        Taper taper = moves.TaperRate is { } rate ? Taper.OneIn(1 / rate) : named.Taper;
        return (size, named.Designation, byLargeEnd ? size.Nominal : size.Nominal + (length * taper.Rate), taper);
    }

    private static (SizeValue Size, string Designation, Length Large, Taper Taper)? Named(IFieldValues values, Length length, PinFindings findings)
    {
        switch (values.Get(PinFields.Series))
        {
            case PinFields.Inch:
                string number = values.Get(PinFields.Number);
                Answer<InchTaperPin> pin = InchTaperPins.Numbered(number);
                if (pin.IsGiven)
                {
                    InchTaperPin inch = pin.Value;
                    return (new SizeValue(inch.LargeEnd, new DeviationTolerance(InchTaperPins.PrecisionOver, Units.Length.Zero)), number, inch.LargeEnd, Taper.InchPins);
                }

                findings.Odds($"there is no inch pin \"{number}\"", "The numbers run from 7/0 to 2/0 and from 0 to 14.", PinFields.Number, PinFields.Series);
                return null;
            case PinFields.Metric:
                SizeValue small = values.Get(PinFields.SmallEnd);
                Answer<MetricTaperPin> metric = MetricTaperPins.WithSmallEnd(small.Nominal);
                if (metric.IsGiven)
                    return (small.Tolerance is null ? small with { Tolerance = new ZoneTolerance("h10") } : small, string.Create(CultureInfo.InvariantCulture, $"{small.Millimetres:0.###} × {length.Millimetres:0.###}"), metric.Value.LargeEnd(length), Taper.MetricPins);
                findings.Odds($"there is no metric pin with a small end of {PinFindings.Mm(small.Nominal)}", "Take a size of the series, or series = \"free\".", PinFields.SmallEnd, PinFields.Series);
                return null;
            default:
                SizeValue large = values.Get(PinFields.LargeEnd);
                return (large, string.Create(CultureInfo.InvariantCulture, $"{large.Millimetres:0.###} × {length.Millimetres:0.###}"), large.Nominal, values.Get(PinFields.Taper));
        }
    }

    /// <summary>The inch series gives its length a tolerance of its own (from memory, see the table).</summary>
    private static SizeValue WithSeriesTolerance(SizeValue length, string series) =>
        series == PinFields.Inch && length.Tolerance is null
            ? length with { Tolerance = new DeviationTolerance(InchTaperPins.LengthPlusMinus, -InchTaperPins.LengthPlusMinus) }
            : length;

    private static FieldSpec SizeField(IFieldValues values) => values.Get(PinFields.Series) switch
    {
        PinFields.Inch => PinFields.Number,
        PinFields.Metric => PinFields.SmallEnd,
        _ => PinFields.LargeEnd,
    };
}
