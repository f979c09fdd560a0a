using LeverDraw.Drafting.Views;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>What is seen of a lever from each side, in millimetres of the part.</summary>
public static class LeverViews
{
    /// <summary>Seen along the pin from the right (+x): n to the right, z up.</summary>
    public static ViewGeometry Side(Lever lever) => SideView.Of(lever);

    /// <summary>Seen square to the arms from the side away from the tongue's lean (−n): x to the right, z up.</summary>
    public static ViewGeometry Fork(Lever lever) => ForkView.Of(lever);

    /// <summary>Seen along the arms from above the tongue (+z): x to the right, n up.</summary>
    public static ViewGeometry Top(Lever lever) => TopView.Of(lever);

    /// <summary>Cut through the pin's axis square to the arms, seen from above: x to the right, n up. Only the cut face is shown.</summary>
    public static ViewGeometry SectionThroughPin(Lever lever) => PinSectionView.Of(lever);

    /// <summary>The tongue seen square to its mid-line, from its upper flank: x to the right, s (from the pivot's axis) up; from where it leaves the head.</summary>
    public static ViewGeometry TongueTrue(Lever lever) => TongueView.Of(lever);
}
