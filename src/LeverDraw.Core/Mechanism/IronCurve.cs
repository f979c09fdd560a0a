using LeverDraw.Units;

namespace LeverDraw.Mechanism;

/// <summary>How arms and bearing follow the iron's thickness near its middle: parabolas through three solved mechanisms.</summary>
internal readonly struct IronCurve
{
    private const double Step = 0.1;

    private readonly double _middle;
    private readonly (double A, double B, double C) _slot, _pivot, _thickness;

    public IronCurve(Linkage linkage)
    {
        _middle = linkage.Sizes.Iron.Mid.Millimetres;
        Linkage thin = With(linkage, -Step) ?? linkage, thick = With(linkage, Step) ?? linkage;
        _slot = Through(thin.Motion.Slot, linkage.Motion.Slot, thick.Motion.Slot);
        _pivot = Through(thin.Motion.Pivot, linkage.Motion.Pivot, thick.Motion.Pivot);
        _thickness = Through(thin.Bearing.Thickness.Millimetres, linkage.Bearing.Thickness.Millimetres, thick.Bearing.Thickness.Millimetres);
        _thickness.C -= linkage.Bearing.Thickness.Millimetres;
    }

    /// <summary>Factors of the gaps for an iron of that thickness, and how much thicker the tongue is where it then bears.</summary>
    public (double Slot, double Pivot, double Thicker) At(double iron)
    {
        double x = iron - _middle;
        return (At(_slot, x), At(_pivot, x), At(_thickness, x));
    }

    /// <summary>The same mechanism with another iron; null when it does not work.</summary>
    public static Linkage? With(Linkage linkage, double thicker)
    {
        Assembly assembly = linkage.Assembly;
        var iron = assembly.Plane.Iron with { Thickness = new(linkage.Sizes.Iron.Mid + Length.FromMillimetres(thicker)) };
        return Linkage.Of(assembly with { Plane = assembly.Plane with { Iron = iron } });
    }

    private static (double A, double B, double C) Through(double before, double here, double after) =>
        ((before + after - (2 * here)) / (2 * Step * Step), (after - before) / (2 * Step), here);

    private static double At((double A, double B, double C) p, double x) => (((p.A * x) + p.B) * x) + p.C;
}
