namespace LeverDraw.Specimens.Statistics;

/// <summary>A law given by its density at even steps, in any unit; between them it is taken as straight.</summary>
internal sealed class GridLaw
{
    private readonly double _from, _step;
    private readonly double[] _below;

    public GridLaw(double from, double step, double[] density)
    {
        (_from, _step, _below) = (from, step, new double[density.Length]);
        for (int i = 1; i < density.Length; i++)
            _below[i] = _below[i - 1] + ((density[i - 1] + density[i]) / 2);
    }

    /// <summary>The value that is not passed with this probability.</summary>
    public double Quantile(double probability)
    {
        double wanted = probability * _below[^1];
        int at = Array.BinarySearch(_below, wanted);
        at = Math.Clamp(at >= 0 ? at : ~at, 1, _below.Length - 1);
        double part = _below[at] - _below[at - 1];
        return _from + (_step * (at - 1 + (part > 0 ? (wanted - _below[at - 1]) / part : 0)));
    }
}
