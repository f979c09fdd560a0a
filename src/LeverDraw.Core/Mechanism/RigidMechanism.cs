using LeverDraw.Geometry;

namespace LeverDraw.Mechanism;

/// <summary>Which way the nut drives.</summary>
public enum Drive
{
    /// <summary>The nut goes away from the toe, the iron toward its cut.</summary>
    Advance,

    /// <summary>Back.</summary>
    Withdraw,
}

/// <summary>A rigid lever driven one way, in equilibrium without friction: all gaps open on the one side, its hole pressed on the pin.</summary>
/// <param name="Nut">Place of the nut's thread along the stud; <paramref name="Iron"/> that of the slot's middle along the bed. Millimetres from the pin's axis.</param>
/// <param name="Ratio">Force on the nut's flange over that with which the iron moves along the bed: so far the iron goes as the nut does, at this instant.</param>
internal readonly record struct DrivenState(LeverPose Pose, double Nut, double Iron, double Ratio, double PinForce);

/// <summary>Solves the rigid mechanism contact by contact: large angles, a round hole with play on a round pin, the lever's own outlines. No gap need be small.</summary>
/// <param name="groove">Width, mm; <paramref name="slot"/> and <paramref name="thread"/> and <paramref name="pivot"/> are gaps or widths, mm.</param>
internal sealed class RigidMechanism(LeverContacts contacts, double groove, double slot, double thread, double pivot)
{
    /// <summary>Largest turn looked at either way, radians: 40°.</summary>
    private const double Most = 0.7;

    private const double Sharp = 1e-12;

    /// <summary>What a pose leaves between the pads and the groove's faces, mm: tilted, pads of a wide crown grow wider. Below zero they jam. Null when no pad stands between the flanges.</summary>
    public double? GrooveLeft(LeverPose pose) =>
        contacts.PadFront(pose) is { } front && contacts.PadBack(pose) is { } back ? groove - front.Reach - back.Reach : null;

    /// <summary>The state in which the nut, driving so, stands at a place; null when the lever meets no flange or no slot there.</summary>
    public DrivenState? WithNutAt(double nut, Drive drive) => Find(drive, s => s.Nut - nut);

    /// <summary>The state in which the iron, driven so, stands at a place.</summary>
    public DrivenState? WithIronAt(double iron, Drive drive) => Find(drive, s => iron - s.Iron);

    /// <summary>The nut's idle way when it is turned back at a place of its travel: the iron stands, every contact changes over.</summary>
    /// <param name="nut">Where the middle of the idle way is to be.</param>
    /// <returns>Null when contact is lost there; negative when the lever binds.</returns>
    public double? IdleAt(double nut)
    {
        double at = nut;
        double? idle = null;
        // The iron is set so that the idle way lies evenly about the place asked for; two rounds settle that to far below a micrometre.
        for (int i = 0; i < 3; i++)
        {
            if (WithNutAt(at, Drive.Advance) is not { } pushed || WithIronAt(pushed.Iron, Drive.Withdraw) is not { } pulled)
                return null;
            idle = pulled.Nut - pushed.Nut;
            at += nut - ((pulled.Nut + pushed.Nut) / 2);
        }

        return idle;
    }

    /// <summary>The driven state at one turn of the lever.</summary>
    public DrivenState? At(double turn, Drive drive)
    {
        Vector2D bed = contacts.Frame.Bed;
        var offset = default(Vector2D);
        DrivenState? state = null;
        // Where the hole bears depends on the contacts and they on it; each round brings it nearer by the gap over the arms.
        for (int round = 0; round < 60; round++)
        {
            var pose = new LeverPose(turn, offset);
            bool advance = drive == Drive.Advance;
            BandExtent? pad = advance ? contacts.PadFront(pose) : contacts.PadBack(pose);
            BandExtent? tongue = advance ? contacts.TongueFront(pose) : contacts.TongueBack(pose);
            if (pad is not { } p || tongue is not { } t)
                return null;
            DrivenForces forces = DrivenForces.Of(p, t, Point2D.Origin + offset, bed);
            Vector2D next = forces.Net.Unit() * (pivot / 2);
            state = new DrivenState(
                pose,
                advance ? p.Reach - ((groove + thread) / 2) : ((groove + thread) / 2) - p.Reach,
                advance ? t.Reach - (slot / 2) : (slot / 2) - t.Reach,
                forces.Ratio,
                forces.PinForce);
            if ((next - offset).Length < Sharp)
                break;
            offset = next;
        }

        return state;
    }

    /// <summary>The measured quantity rises with the turn: bisection, sped up by secants that stay inside.</summary>
    private DrivenState? Find(Drive drive, Func<DrivenState, double> excess)
    {
        double low = -Most, high = Most;
        if (!Bracket(drive, excess, ref low, ref high, out double lowValue, out double highValue))
            return null;
        DrivenState? best = null;
        for (int i = 0; i < 100; i++)
        {
            double turn = i % 3 == 2 ? (low + high) / 2 : low + ((high - low) * (-lowValue / (highValue - lowValue)));
            if (At(turn, drive) is not { } state)
                return null;
            best = state;
            double value = excess(state);
            if (Math.Abs(value) < 1e-11 || high - low < 1e-14)
                return state;
            if (value < 0)
                (low, lowValue) = (turn, value);
            else
                (high, highValue) = (turn, value);
        }

        return best;
    }

    // Outwards from the middle: far turns may have left the slot.
    private bool Bracket(Drive drive, Func<DrivenState, double> excess, ref double low, ref double high, out double lowValue, out double highValue)
    {
        const double Step = 0.05;
        lowValue = highValue = 0;
        if (At(0, drive) is not { } middle)
            return false;
        double at = excess(middle), turn = 0, way = at > 0 ? -Step : Step;
        double before = at;
        while (Math.Abs(turn + way) <= Most)
        {
            if (At(turn + way, drive) is not { } next)
                return false;
            double value = excess(next);
            if (value > 0 != at > 0)
            {
                (low, lowValue, high, highValue) = way > 0 ? (turn, before, turn + way, value) : (turn + way, value, turn, before);
                return true;
            }

            turn += way;
            before = value;
        }

        return false;
    }
}
