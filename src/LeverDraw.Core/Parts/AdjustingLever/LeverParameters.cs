using System.Collections.Immutable;
using LeverDraw.Drafting.Completeness;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Parts.Outlines;
using LeverDraw.Profiles;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>The numbers that shape a lever, and the lever rebuilt with others.</summary>
/// <remarks>A size of zero is a form as drawn (a sharp corner, a level in line with the axis), not a number; so is a round that takes up its whole face, which then follows from the face.</remarks>
internal sealed class LeverParameters
{
    /// <summary>Names of places that share a field: the note on fillets and rounds states them one by one.</summary>
    public const string StepFillet = "blends.fillet.step", ShoulderFillet = "blends.fillet.shoulder", NeckFillet = "blends.fillet.neck", FootFillet = "blends.fillet.foot";

    private const string MarkLevel = "mark.level";

    private readonly IFieldValues _values;
    private readonly LeverMeasures _measures;
    private readonly double? _markLevel;

    private LeverParameters(Lever lever, IFieldValues values)
    {
        _values = values;
        _measures = new LeverMeasures(values);
        _markLevel = lever.Mark is { } mark ? SeatOf(lever, mark).Middle.Y : null;
    }

    /// <param name="content">The lever's sheet.</param>
    /// <param name="sizes">The sizes on the sheet of another lever, without drawing it; for the lever itself they must be the sheet's.</param>
    public static ParametricSheet Of(Lever lever, Profile profile, SheetContent content, Func<Lever, ImmutableArray<SheetSize>> sizes)
    {
        LeverParameters own = new(lever, profile.Values);
        ImmutableArray<ShapeParameter> all = [.. own.Fields(), .. own.Places()];
        return new ParametricSheet(all, Shape(lever).With(SheetSizes.Of(content)), numbers =>
        {
            Dictionary<string, double> moved = new(StringComparer.Ordinal);
            for (int i = 0; i < all.Length; i++)
                moved[all[i].Name] = numbers[i];
            LeverPlaces places = own.Follow(moved);
            MovedValues values = new(profile.Values, moved);
            return LeverPart.Build(values, places).Value is { } other
                ? Shape(other).With(sizes(other))
                : null;
        });
    }

    /// <summary>The sheet of a casting or of its pattern likewise, with stock and contraction as given.</summary>
    /// <remarks>A pattern is its casting enlarged by fixed numbers, so it is as free as the casting is; the casting's outlines stand for both, for they keep their form where unlike rates cut an arc into pieces.</remarks>
    /// <param name="sizes">On the sheet that belongs to a casting.</param>
    public static ParametricSheet OfCast(CastingLever casting, IFieldValues values, Func<CastingLever, ImmutableArray<SheetSize>> sizes)
    {
        LeverParameters own = new(casting.Finished, values);
        // The hole is cast solid.
        ImmutableArray<ShapeParameter> all = [.. own.Fields().Where(f => !f.Name.StartsWith("hole.", StringComparison.Ordinal)), .. own.Places(), .. ShoulderLevel(casting, values)];
        return new ParametricSheet(all, Shape(casting.Shape).With(sizes(casting)), numbers =>
        {
            Dictionary<string, double> moved = new(StringComparer.Ordinal);
            for (int i = 0; i < all.Length; i++)
                moved[all[i].Name] = numbers[i];
            LeverPlaces places = own.Follow(moved);
            MovedValues other = new(values, moved);
            return LeverPart.Build(other, places).Value is { } finished && CastingLever.Of(finished, other, casting.Plan, places).Value is { } built
                ? Shape(built.Shape).With(sizes(built))
                : null;
        });
    }

    /// <summary>Shoulders that begin level with the axis on the finished lever begin lower where stock moves the head's side out: there the level is a number.</summary>
    private static IEnumerable<ShapeParameter> ShoulderLevel(CastingLever casting, IFieldValues values)
    {
        if (values.Find(LeverFields.ShoulderStart) is { Millimetres: 0 } && Math.Abs(casting.Shape.Fork.ShoulderStart.Y) > Coincidence.Distance)
            yield return new ShapeParameter(LeverFields.ShoulderStart.Name, 0);
    }

    private IEnumerable<ShapeParameter> Fields()
    {
        foreach (FieldSpec field in LeverFields.All)
        {
            switch (field)
            {
                case SizeField size when size != LeverFields.Fillet && !CastingFields.All.Contains(size) && _values.Find(size) is { Millimetres: not 0 } value:
                    yield return new ShapeParameter(size.Name, value.Millimetres);
                    break;
                case AngleField angle when angle.OnlyWhen is not { } when || when.Values.Contains(_values.Get(when.Choice)):
                    yield return new ShapeParameter(angle.Name, _values.Get(angle).Radians, 0.1);
                    break;
                case TaperField taper when !_values.Get(taper).IsParallel:
                    yield return new ShapeParameter(taper.Name, _values.Get(taper).Rate, 0.1);
                    break;
            }
        }
    }

    private IEnumerable<ShapeParameter> Places()
    {
        if (_measures.Fillet > 0)
        {
            yield return new ShapeParameter(StepFillet, _measures.Fillet);
            yield return new ShapeParameter(ShoulderFillet, _measures.Fillet);
            yield return new ShapeParameter(NeckFillet, _measures.Fillet);
        }

        // Those below are parameters of their own when the profile leaves them to a rule.
        if (_values.Find(LeverFields.FootFillet) is null && _measures.FootFillet > 0)
            yield return new ShapeParameter(FootFillet, _measures.FootFillet);
        if (_values.Find(LeverFields.ArmEndCorner) is null && _measures.ArmEndCorner > 0)
            yield return new ShapeParameter(LeverFields.ArmEndCorner.Name, _measures.ArmEndCorner);
        if (_values.Find(LeverFields.NoseRadius) is null && _measures.NoseCorner > 0)
            yield return new ShapeParameter(LeverFields.NoseRadius.Name, _measures.NoseCorner);
        if (_values.Find(LeverFields.ShoulderEnd) is null)
            yield return new ShapeParameter(LeverFields.ShoulderEnd.Name, _measures.CrotchRadius - _measures.GapTop);
        if (_markLevel is { } level)
            yield return new ShapeParameter(MarkLevel, level);
    }

    /// <summary>Makes rounds that take up their whole face follow it, and hands out the places.</summary>
    private LeverPlaces Follow(Dictionary<string, double> moved)
    {
        if (Same(_measures.CrotchRadius, _measures.Gap / 2))
            moved[LeverFields.CrotchRadius.Name] = moved[LeverFields.ForkGap.Name] / 2;
        if (Same(_measures.ArmEndCorner, _measures.ArmWidth / 2))
            moved[LeverFields.ArmEndCorner.Name] = moved[LeverFields.ArmWidth.Name] / 2;
        if (Same(_measures.NoseCorner, _measures.TongueThickness / 2))
            moved[LeverFields.NoseRadius.Name] = moved[LeverFields.TongueThickness.Name] / 2;
        return new LeverPlaces
        {
            StepFillet = Get(StepFillet),
            ShoulderFillet = Get(ShoulderFillet),
            NeckFillet = Get(NeckFillet),
            FootFillet = Get(FootFillet),
            ArmEndCorner = Get(LeverFields.ArmEndCorner.Name),
            NoseCorner = Get(LeverFields.NoseRadius.Name),
            ShoulderEnd = Get(LeverFields.ShoulderEnd.Name),
            MarkLevel = Get(MarkLevel),
        };
        double? Get(string name) => moved.TryGetValue(name, out double value) ? value : null;
    }

    private static ShapeNumbers Shape(Lever lever)
    {
        ShapeNumbers shape = new();
        foreach (NamedEdge piece in lever.Side.Edges)
            shape.Add(piece.Name, piece.Edge);
        // The left half is the right one's mirror image.
        foreach (NamedEdge piece in lever.Fork.Edges.Where(e => !e.Name.EndsWith("-left", StringComparison.Ordinal)))
            shape.Add(piece.Name, piece.Edge);
        shape.Add("hole", lever.Hole.AtLeft.Millimetres, lever.Hole.AtRight.Millimetres, lever.Hole.HalfLength.Millimetres);
        if (lever.Boss is { } boss)
            shape.Add("boss", boss.Diameter.Millimetres, boss.Height.Millimetres);
        if (lever.Mark is { } mark)
            shape.Add("mark", mark.Height.Millimetres, mark.LetterHeight.Millimetres, SeatOf(lever, mark).Middle.Y);
        return shape;
    }

    private static MarkSeat SeatOf(Lever lever, RaisedMark mark) => MarkSeat.On(mark, lever.Fork, lever.Side, lever.Hole);

    private static bool Same(double a, double b) => Math.Abs(a - b) <= Coincidence.Distance;
}
