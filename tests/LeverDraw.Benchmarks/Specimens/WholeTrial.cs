using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Parts;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Forms;
using LeverDraw.Specimens.Identification;
using LeverDraw.Specimens.Measuring;
using LeverDraw.Specimens.Readings;
using LeverDraw.Specimens.Reconstruction;
using LeverDraw.Units;

namespace LeverDraw.Benchmarks.Specimens;

/// <summary>Whole survivors, every size of each read, reconstructed as <c>reconstruct</c> does it: all sizes of a profile count alike, each error in units of its size's own spread as made.</summary>
internal static class WholeTrial
{
    /// <summary>What is read of each survivor.</summary>
    public enum Read
    {
        /// <summary>Every size a profile has, by itself.</summary>
        Fields,

        /// <summary>What the form for the bench asks for: some sizes follow from others, and are tied to them.</summary>
        Form,
    }

    /// <param name="All">Every size of the profile that could be reconstructed.</param>
    /// <param name="Worn">Of these, the ones that wear.</param>
    public sealed record Outcome(EstimateTrial.Outcome All, EstimateTrial.Outcome Worn);

    public static Outcome Run(ImmutableArray<Variant> variants, int specimens, int sets, Read read, TrialConditions conditions, RandomSequence random)
    {
        Tally all = new(), worn = new();
        for (int set = 0; set < sets; set++)
        {
            Variant truth = variants[random.Below(variants.Length)];
            ImmutableArray<Reading> readings = Readings(truth, Sizes(truth, read), specimens, conditions, random);
            Reconstruction found = Reconstruct.Run(new ReadingSet("simulated", readings), PartKinds.All.First(k => k.Name == truth.Part), [], []).Value!;
            foreach (SizeEstimate estimate in found.Sizes.Select(s => s.Estimate).Where(e => e.Measurand.Field is not null))
            {
                Measurand m = estimate.Measurand;
                double design = truth.Sizes[m.Name];
                double[] own = [.. readings.Where(r => r.Measurand == m).Select(r => r.Value)];
                all.Add(estimate, design, own);
                if (m.Wear != WearSide.None)
                    worn.Add(estimate, design, own);
            }
        }

        return new Outcome(all.Outcome, worn.Outcome);
    }

    private static ImmutableArray<Measurand> Sizes(Variant truth, Read read) =>
    [
        .. (read == Read.Fields ? Measurands.All.Where(m => m.Field is not null) : FormLines.Sizes(truth.Part).Select(l => l.Measurand))
            .Where(m => m.Part == truth.Part && m.Habit is not null && truth.Sizes.ContainsKey(m.Name))
            // Nothing reaches the middle of a tapered hole.
            .Where(m => read == Read.Fields || m.Name != "hole.diameter" || truth.Words["hole.taper"] == "parallel"),
    ];

    /// <summary>A survivor's sizes are made and worn first; what follows from others does so on that survivor. One instrument of each kind reads them all.</summary>
    private static ImmutableArray<Reading> Readings(Variant truth, ImmutableArray<Measurand> sizes, int specimens, TrialConditions conditions, RandomSequence random)
    {
        Dictionary<Instrument, double> errors = Instruments.All.ToDictionary(i => i, _ => SimulatedSurvivor.Error(random));
        Measurand[] fields = [.. Measurands.All.Where(m => m.Part == truth.Part && m.Field is not null && m.Habit is not null && truth.Sizes.ContainsKey(m.Name))];
        var readings = ImmutableArray.CreateBuilder<Reading>();
        for (int i = 0; i < specimens; i++)
        {
            string name = i.ToString(CultureInfo.InvariantCulture);
            Dictionary<string, double> own = fields.ToDictionary(m => m.Name, m => SimulatedSurvivor.Size(m, truth.Sizes[m.Name], ReadAt.Worn, conditions, random), StringComparer.Ordinal);
            foreach (Measurand m in sizes)
                readings.Add(SimulatedSurvivor.Shown(name, m, m.Derived is { } derived ? Follows(derived, own, truth) : own[m.Name], ReadAt.Worn, errors[SimulatedSurvivor.With(m)], conditions));
            foreach (Measurand m in FormLines.Seen(truth.Part).Where(m => m.Kind == ReadingKind.Taper))
                readings.Add(new Reading(name, m, truth.Words[m.Name] == "parallel" ? 0 : Taper.InchPins.Rate, truth.Words[m.Name], Instruments.Eye, ReadAt.Unsaid, false, string.Empty, SimulatedSurvivor.Nowhere));
        }

        return readings.ToImmutable();
    }

    /// <summary>A derived size of one survivor. The variant's taper is the one that gives its own derived size: the formulas go with the taper in a straight line.</summary>
    private static double Follows(DerivedSize derived, Dictionary<string, double> own, Variant truth)
    {
        double none = From(0, truth.Sizes), per = From(1, truth.Sizes) - none;
        return From(per == 0 ? 0 : (truth.Sizes[derived.Name] - none) / per, own);

        double From(double taper, IReadOnlyDictionary<string, double> sizes) => derived.From([.. derived.Fields.Select(f => f is TaperField ? taper : sizes.GetValueOrDefault(f.Name))]);
    }

    /// <summary>Sums over many sizes, in units of each one's spread as made.</summary>
    private sealed class Tally
    {
        private int _sizes, _held;
        private double _width, _rule, _likeliest, _mean, _least;

        /// <summary>Of mean and least worn no number, where some size was not read itself.</summary>
        public EstimateTrial.Outcome Outcome => new((double)_held / _sizes, _width / _sizes, Root(_rule), Root(_likeliest), Root(_mean), Root(_least));

        public void Add(SizeEstimate estimate, double design, double[] read)
        {
            Measurand m = estimate.Measurand;
            _sizes++;
            _held += estimate.From <= design && design <= estimate.To ? 1 : 0;
            _width += (estimate.To - estimate.From) / m.Spread(design);
            _rule += Square(estimate.Value);
            _likeliest += Square(estimate.Likeliest ?? estimate.Value);
            _mean += read.Length == 0 ? double.NaN : Square(read.Average());
            _least += read.Length == 0 ? double.NaN : Square(m.Wear == WearSide.Larger ? read.Min() : read.Max());

            double Square(double value) => (value - design) * (value - design) / (m.Spread(design) * m.Spread(design));
        }

        private double Root(double squares) => Math.Sqrt(squares / _sizes);
    }
}
