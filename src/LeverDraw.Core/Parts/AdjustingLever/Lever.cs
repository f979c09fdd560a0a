using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever;

/// <summary>A lever as finished: two outlines whose extrusions meet, less the hole, with bosses and mark.</summary>
/// <remarks>Frame: origin on the pivot's axis in the middle of the head; x along the pin to the user's right, z from the pads to the head, n square to both and right-handed (x × n = z), so that the tongue leans to +n.</remarks>
/// <param name="SideProfile">In (n, z), counter-clockwise; extruded along x.</param>
/// <param name="ForkProfile">In (x, z), counter-clockwise; extruded along n.</param>
public sealed record Lever(
    LeverSizes Sizes,
    LeverForms Forms,
    Contour SideProfile,
    Contour ForkProfile,
    SideFeatures Side,
    ForkFeatures Fork,
    PivotHole Hole,
    Boss? Boss,
    RaisedMark? Mark)
{
    /// <summary>Its greatest size, height or width: it picks the rows of allowances and tolerances.</summary>
    internal Length Largest => Length.FromMillimetres(Math.Max(SideProfile.Box.Height, ForkProfile.Box.Width));
}

/// <summary>The words the profile chose, as <see cref="LeverFields"/> spells them.</summary>
public sealed record LeverForms(string Head, string Arms, string ArmEnds, string Shoulders, string PadEnds, string Tongue);

/// <summary>The pivot hole: a cone or a cylinder about the x axis.</summary>
/// <param name="AtLeft">Diameter at the left side face (the boss's, if there is one).</param>
/// <param name="AtMid">Diameter in the middle of the head: the stated size.</param>
/// <param name="AtRight">Diameter at the right side face.</param>
/// <param name="HalfLength">From the middle to either face.</param>
/// <param name="Supply">As the profile's <c>hole.supply</c>: with <c>solid</c> nothing is cut, with <c>pilot</c> the hole is smaller than drawn.</param>
public sealed record PivotHole(Length AtLeft, Length AtMid, Length AtRight, Length HalfLength, Taper Taper, bool LargeEndRight, string Supply)
{
    /// <summary>Drawing number of the pin; empty when left unsaid.</summary>
    public string Pin { get; init; } = string.Empty;

    /// <summary>Of the pin; says nothing where its diameter is left unsaid.</summary>
    public Taper PinTaper { get; init; }

    /// <summary>Diameter at x, millimetres.</summary>
    internal double DiameterAt(double x) => AtMid.Millimetres + (Taper.Rate * (LargeEndRight ? x : -x));
}

/// <summary>A disc on each of the head's side faces, round the hole.</summary>
public sealed record Boss(Length Diameter, Length Height);

/// <summary>Raised letters.</summary>
/// <param name="Place"><c>arm-back</c>: on the web and arms' −n face; <c>head-face</c>: on the head's right side face.</param>
public sealed record RaisedMark(string Text, string Place, Length Height, Length LetterHeight)
{
    /// <summary>z of the lettering's middle, millimetres; null: the middle of the plain face.</summary>
    internal double? Level { get; init; }
}
