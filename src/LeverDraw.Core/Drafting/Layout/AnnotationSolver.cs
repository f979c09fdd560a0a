using LeverDraw.Geometry;

namespace LeverDraw.Drafting.Layout;

/// <summary>Chooses one candidate for each annotation of a view so that no lettering meets other lettering or any line, and crossings, lengths and tiers cost least.</summary>
/// <remarks>
/// Greedy in the given order, then rounds of improvement in which each annotation in turn may move to the cheapest place that the others leave
/// (coordinate descent; the total cost never rises, so it ends); where that ends with a broken rule, two move together, and then a few in every combination; where one stands very badly, room is made for it.
/// Where room is dear, what counts at the end is the room of all together; a view that is drawn settles once more within the room it takes.
/// Ties fall to the earlier candidate: same input, same sheet.
/// </remarks>
public sealed class AnnotationSolver
{
    /// <summary>Rounds of improvement at the most; more than four has not been seen to change anything.</summary>
    private const int MaxRounds = 6;

    /// <summary>Of a millimetre outside the room where a view settles: not even a hair is worth the dearest blemish.</summary>
    private const double LeavingRoom = PlacingCosts.Broken * 1e6;

    private readonly ViewField _field;
    private readonly PlaceSet[] _places;
    private readonly Candidate?[] _chosen;
    private readonly PlaceWeigher _weigher;

    /// <summary>What each cost when it was last found to stand cheapest, how many moves had been made then, and who kept it from standing cheaper (a bit each).</summary>
    private readonly (double Cost, int Moves, ulong Hindered)[] _settled;

    /// <summary>The move at which each last moved.</summary>
    private readonly int[] _movedAt;

    private int _moves;

    private RoomMaking? _making;

    /// <summary>For whom making room has failed while settling, a bit each.</summary>
    private ulong _hopeless;

    /// <summary>Some place that was taken, for good or for a while, may have paid for room.</summary>
    private bool _hasPaidForRoom;

    private AnnotationSolver(ViewField field, PlaceSet[] places, Sprawl sprawl, PlaceShape scratch, PlaceShape lines, bool settling = false)
    {
        _field = field;
        _places = places;
        _chosen = new Candidate?[places.Length];
        _settled = new (double, int, ulong)[places.Length];
        _movedAt = new int[places.Length];
        _weigher = new PlaceWeigher(field, sprawl, _chosen, scratch, lines, settling);
    }

    /// <summary>The chosen candidate for each annotation, and which of them still break a hard rule.</summary>
    public static (Candidate[] Chosen, int[] Unplaced) Solve(ViewField field, IReadOnlyList<IReadOnlyList<Candidate>> annotations, Sprawl sprawl = default)
    {
        Placing placing = Solve(field, [.. annotations.Select(places => new ReadyPlaces(places))], sprawl, new PlaceShape(), new PlaceShape());
        return (placing.Chosen, placing.Unplaced);
    }

    /// <param name="first">Those that take their places before the others.</param>
    internal static Placing Solve(ViewField field, PlaceSet[] annotations, Sprawl sprawl, PlaceShape scratch, PlaceShape lines, ReadOnlySpan<int> first = default)
    {
        foreach (PlaceSet places in annotations)
            places.ForgetFloors();
        return new AnnotationSolver(field, annotations, sprawl, scratch, lines).Run(first);
    }

    /// <summary>Makes the best of the room that a placing takes: every annotation may move within it, at the cost of no other room.</summary>
    /// <param name="chosen">Changed.</param>
    /// <param name="room">The box that nothing may leave.</param>
    internal static void Settle(ViewField field, PlaceSet[] annotations, Candidate[] chosen, Box2D room, PlaceShape scratch, PlaceShape lines)
    {
        foreach (PlaceSet places in annotations)
            places.ForgetFloors();
        var solver = new AnnotationSolver(field, annotations, new Sprawl(room.Inflated(1e-9), LeavingRoom), scratch, lines, settling: true);
        chosen.CopyTo(solver._chosen, 0);
        Array.Fill(solver._settled, (double.NegativeInfinity, 0, 0UL));
        solver.Improve(2 * MaxRounds, () => solver.TryMakingRoom(RoomMaking.Bad));
        solver._chosen.CopyTo(chosen!, 0);
    }

    private Placing Run(ReadOnlySpan<int> first)
    {
        foreach (int i in first)
            TakePlace(i);
        for (int i = 0; i < _places.Length; i++)
        {
            if (_chosen[i] is null)
                TakePlace(i);
        }

        Improve(MaxRounds, () => TryPairs() || TryTogether() || TryMakingRoom(RoomMaking.VeryBad));
        if (_hasPaidForRoom && _weigher.Sprawl.PerMillimetre >= Sprawl.Thrifty)
            Tighten();
        var unplaced = new List<int>();
        for (int i = 0; i < _chosen.Length; i++)
        {
            if (CostAmong(i) >= PlacingCosts.Broken)
                unplaced.Add(i);
        }

        return new Placing([.. _chosen.Select(c => c!)], [.. unplaced], _hasPaidForRoom);
    }

    /// <summary>Rounds in which each may move; where that ends, another way out of the corner.</summary>
    /// <param name="getOut">True where some have moved, together.</param>
    private void Improve(int rounds, Func<bool> getOut)
    {
        var before = new Candidate?[_chosen.Length];
        for (int round = 0; round < rounds; round++)
        {
            if (MoveEach())
                continue;
            _chosen.CopyTo(before, 0);
            if (!getOut())
                return;
            NoteMoved(before);
        }
    }

    /// <summary>Takes note of who does not stand where it did.</summary>
    private void NoteMoved(ReadOnlySpan<Candidate?> before)
    {
        _moves++;
        for (int i = 0; i < before.Length; i++)
        {
            if (ReferenceEquals(before[i], _chosen[i]))
                continue;
            _movedAt[i] = _moves;
            _settled[i] = (double.NegativeInfinity, 0, 0);
        }
    }

    private void TakePlace(int self)
    {
        (_chosen[self], double cost) = Cheapest(self, null);
        _settled[self] = (cost, 0, _weigher.Hindering);
    }

    /// <summary>Until now each paid for its own room. What counts is the room of all: one that alone makes the block wider moves to where others make it wide anyway.</summary>
    private void Tighten()
    {
        Sprawl usual = _weigher.Sprawl;
        bool moved = true;
        for (int round = 0; round < MaxRounds && moved; round++)
        {
            moved = false;
            for (int i = 0; i < _places.Length; i++)
            {
                Box2D others = Box2D.Empty;
                for (int j = 0; j < _chosen.Length; j++)
                {
                    if (j != i)
                        others = others.Union(_chosen[j]!.Bounds);
                }

                Sprawl beside = usual.Beside(others);
                // Only at the dearest price those too may move that take no room of their own, into that of others.
                if (usual.PerMillimetre < Sprawl.Stingy && beside.Of(_chosen[i]!.Bounds) == 0)
                    continue;
                _places[i].ForgetFloors();
                _weigher.Sprawl = beside;
                double now = CostAmong(i);
                (Candidate best, double cost) = Cheapest(i, _chosen[i]);
                _places[i].ForgetFloors();
                if (ReferenceEquals(best, _chosen[i]) || cost >= now - 1e-9)
                    continue;
                _chosen[i] = best;
                moved = true;
            }
        }

        _weigher.Sprawl = usual;
    }

    private bool MoveEach()
    {
        bool moved = false;
        for (int i = 0; i < _places.Length; i++)
        {
            // Where none of those in its way has moved, and nothing that came is in its way, it still stands cheapest.
            double now = CostAmong(i);
            if (now <= _settled[i].Cost && !HasRoomChanged(i))
                continue;
            (Candidate best, double cost) = Cheapest(i, _chosen[i]);
            if (!ReferenceEquals(best, _chosen[i]) && cost < now - 1e-9)
            {
                _chosen[i] = best;
                _movedAt[i] = ++_moves;
                moved = true;
            }

            _settled[i] = (cost, _moves, _weigher.Hindering);
        }

        return moved;
    }

    /// <summary>One of those that kept an annotation from a cheaper place has moved since.</summary>
    private bool HasRoomChanged(int self)
    {
        (double _, int moves, ulong hindered) = _settled[self];
        for (int i = 0; i < _movedAt.Length; i++)
        {
            if (_movedAt[i] > moves && (hindered & (1UL << i)) != 0)
                return true;
        }

        return false;
    }

    /// <summary>Where a hard rule is still broken, moves the other party first and then the sufferer.</summary>
    private bool TryPairs()
    {
        for (int i = 0; i < _places.Length; i++)
        {
            if (CostAmong(i) < PlacingCosts.Broken)
                continue;
            for (int j = 0; j < _places.Length; j++)
            {
                if (j == i || PairCost.Between(_chosen[i]!, _chosen[j]!) < PlacingCosts.Broken)
                    continue;
                (Candidate? was, Candidate? wasOther) = (_chosen[i], _chosen[j]);
                double before = PairAmong(i, j);
                _chosen[j] = null;
                _chosen[i] = Cheapest(i, was).Best;
                _chosen[j] = Cheapest(j, wasOther).Best;
                if (PairAmong(i, j) < before - 1e-9)
                    return true;
                (_chosen[i], _chosen[j]) = (was, wasOther);
            }
        }

        return false;
    }

    private bool TryTogether()
    {
        for (int i = 0; i < _places.Length; i++)
        {
            if (CostAmong(i) < PlacingCosts.Broken)
                continue;
            _hasPaidForRoom = true;
            if (new JointMove(_field, _weigher, _places, _chosen).Try(i))
                return true;
        }

        return false;
    }

    /// <summary>Where one stands badly because others came first, gives it a good place and lets those give way.</summary>
    private bool TryMakingRoom(double bad)
    {
        for (int i = 0; i < _places.Length; i++)
        {
            // What no room could be made for will hardly be helped by a little more about it.
            if ((_hopeless & (1UL << i)) != 0 || CostAmong(i) < bad)
                continue;
            _hasPaidForRoom = true;
            _making ??= new RoomMaking(_weigher, _places, _chosen);
            if (_making.Try(i))
                return true;
            if (_weigher.Settles)
                _hopeless |= 1UL << i;
        }

        return false;
    }

    /// <summary>What two cost together: their own cost to each other stands in both sums and must count once, or a dearer pair could win.</summary>
    private double PairAmong(int i, int j) =>
        CostAmong(i) + CostAmong(j) - PairCost.Between(_chosen[i]!, _chosen[j]!);

    private (Candidate Best, double Cost) Cheapest(int self, Candidate? current)
    {
        (Candidate? best, double cost) = _weigher.Cheapest(_places[self], self, current, current is null ? double.PositiveInfinity : _weigher.CostOf(current, self));
        if (best is null)
            throw new InvalidOperationException("An annotation has no possible place.");
        _hasPaidForRoom |= _weigher.PaysForRoom(best);
        return (best, cost);
    }

    private double CostAmong(int self) => _weigher.CostOf(_chosen[self]!, self);
}
