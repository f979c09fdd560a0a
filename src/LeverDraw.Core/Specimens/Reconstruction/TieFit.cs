using System.Collections.Immutable;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Statistics;

namespace LeverDraw.Specimens.Reconstruction;

/// <summary>The least-squares fit of one specimen's tied sizes.</summary>
/// <param name="Told">The specimen's values of fields, as the ties tell them.</param>
internal sealed record TieFit(TieGroup Group, ImmutableArray<(string Name, SpecimenValue Value)> Told)
{
    /// <summary>Share of the spread from part to part by which one part's own surface differs from place to place, left arm from right (own).</summary>
    private const double Within = 0.5;

    /// <summary>A size that only ties tell of is used up to this many times its spread; with readings of its own on another specimen, up to once (own).</summary>
    private const double MostUncertain = 4;

    private const double Probability = 0.95;

    /// <summary>So many times all that a profile allows pulls nothing any more, and still parts the unknowns.</summary>
    private const double Loose = 1000;

    /// <summary>One row of the fit.</summary>
    /// <param name="Value">Null for what was not read on this specimen.</param>
    private sealed record Row(Measurand Of, double Target, double Deviation, SpecimenValue? Value);

    /// <param name="ties">Derived sizes read on the specimen that share fields.</param>
    /// <param name="read">All specimens' values by size.</param>
    /// <returns>Null when nothing settles.</returns>
    public static TieFit? Of(string specimen, ImmutableArray<Measurand> ties, IReadOnlyDictionary<string, ImmutableArray<SpecimenValue>> read, ImmutableArray<Measurand> all, double taper)
    {
        Measurand[] unknowns = [.. ties.SelectMany(t => Unknowns(t.Derived!)).Distinct().Select(n => all.First(m => m.Name == n)).Where(m => read.ContainsKey(m.Name) || !DerivedSizes.MayLack(m.Field!))];
        Row[] rows = WitnessFirst([.. unknowns.Concat(ties).Select(m => RowOf(m, specimen, read))]);
        double[] targets = [.. rows.Select(r => r.Target)];
        if (Fitted(targets, null) is not { } fit)
            return null;
        double[] adjusted = [.. rows.Select(r => Model(r.Of, fit.Values))];
        int loose = rows.Count(r => r.Value is null && !read.ContainsKey(r.Of.Name)), freedom = Math.Max(0, rows.Length - unknowns.Length - loose);
        TieResidual[] residuals = [.. rows.Select((r, i) => (r, i)).Where(p => p.r.Value is not null).Select(p => new TieResidual(
            p.r.Of.Name, p.r.Target, adjusted[p.i], p.r.Target - adjusted[p.i], (p.r.Target - adjusted[p.i]) / p.r.Deviation))];
        TieGroup group = new(specimen, [.. residuals], fit.SquareSum, freedom, freedom > 0 ? Quantiles.ChiSquare(freedom, Probability) : double.PositiveInfinity);
        // Readings that disagree are uncertain by more than they say, at least by so much that they would agree (Birge's ratio).
        double stretch = freedom > 0 ? Math.Max(1, Math.Sqrt(fit.SquareSum / freedom)) : 1;
        return new TieFit(group, [.. unknowns.Select(m => (m.Name, Value: Told(m))).Where(t => t.Value is not null).Select(t => (t.Name, t.Value!))]);

        LeastSquaresFit? Fitted(double[] to, Measurand? loosened) => LeastSquares.Fit(
            [.. unknowns.Select(m => rows.First(r => r.Of == m || r.Of.Habit == m.Habit).Target)],
            x => [.. rows.Select((r, k) => (Model(r.Of, x) - to[k]) / (r.Of == loosened ? Loose * (r.Of.Most - r.Of.Least) : r.Deviation))]);

        double Model(Measurand size, double[] x) => size.Derived is not { } tie
            ? x[Array.IndexOf(unknowns, size)]
            : tie.From([.. tie.Fields.Select(f => f is TaperField ? taper : Array.FindIndex(unknowns, u => u.Field == f) is >= 0 and var at ? x[at] : 0)]);

        SpecimenValue? Told(Measurand field)
        {
            bool direct = rows.Any(r => r.Of == field && r.Value is not null);
            if (direct && freedom == 0)
                return null;
            // What was not read here is told by this specimen alone: what the others have would count twice.
            Measurand? loosened = direct ? null : field;
            if (Fitted(targets, loosened) is not { } told)
                return null;
            int at = Array.IndexOf(unknowns, field);
            double value = told.Values[at], spread = field.Spread(value);
            // By GUM 5.1 and 5.2: what every reading has for itself moves the result alone, what they have from one instrument moves it together, and instruments err apart from each other.
            double own = Math.Sqrt(rows.Select((r, k) => Square(Effect(i => i == k && r.Of != loosened ? r.Value?.Own ?? r.Deviation : 0))).Sum() + ((Square(stretch) - 1) * Square(told.Deviations[at])));
            double common = Math.Sqrt(rows.Select(r => r.Value?.Instrument).OfType<string>().Distinct().Sum(with => Square(Effect(i => rows[i].Value is { } v && v.Instrument == with ? v.Common : 0))));
            // By how much the widest single jump from mark to mark moves the result; what the other steps add stays scatter.
            double step = rows.Select((r, k) => r.Value is { Step: > 0 } v ? Math.Abs(Effect(i => i == k ? v.Step : 0)) : 0).Max();
            if (!direct && !(Math.Sqrt(Square(own) + Square(common)) <= (read.ContainsKey(field.Name) ? 1 : MostUncertain) * spread))
                return null;
            SpecimenValue[] like = [.. rows.Where(r => r.Of.Habit == field.Habit).Select(r => r.Value).OfType<SpecimenValue>()];
            bool worn = field.Wear != WearSide.None && (like.Length == 0 || like.Any(v => v.IsWorn));
            return new SpecimenValue(specimen, value, worn, own, common, rows.Sum(r => r.Value?.Readings ?? 0)) { Step = step, Ties = direct ? TieEffect.Adjusted : TieEffect.Told };

            double Effect(Func<int, double> moves) => Fitted([.. targets.Select((t, i) => t + moves(i))], loosened) is { } moved ? moved.Values[at] - value : double.PositiveInfinity;
        }
    }

    public static IEnumerable<string> Unknowns(DerivedSize tie) => tie.Fields.OfType<SizeField>().Select(f => f.Name);

    /// <summary>What was not read on the specimen is as on the others, give or take how they differ; else anything the profile allows.</summary>
    private static Row RowOf(Measurand size, string specimen, IReadOnlyDictionary<string, ImmutableArray<SpecimenValue>> read)
    {
        ImmutableArray<SpecimenValue> values = read.GetValueOrDefault(size.Name, []);
        if (values.FirstOrDefault(v => v.Specimen == specimen) is { } own)
            return new Row(size, own.Value, Math.Sqrt(Square(own.Own) + Square(own.Common) + Square(Within * size.Spread(own.Value))), own);
        if (values.IsEmpty)
            return new Row(size, (size.Least + size.Most) / 2, Loose * (size.Most - size.Least), null);
        double[] sorted = [.. values.Select(v => v.Value).Order()];
        double middle = sorted[sorted.Length / 2];
        return new Row(size, middle, Math.Sqrt((2 * Square(size.Spread(middle))) + Square(size.UsualWear)), null);
    }

    /// <summary>Where a hole or pin has a reading at an unworn place, its worn ones say nothing more; they would pull it.</summary>
    private static Row[] WitnessFirst(Row[] rows) => [.. rows.Where(r => r.Value is not { IsWorn: true } || !rows.Any(o => o.Of.Habit == r.Of.Habit && o.Value is { IsWorn: false }))];

    private static double Square(double x) => x * x;
}
