namespace LeverDraw.Drafting.Layout;

/// <summary>The solver's prices. A unit is about 6 mm of extension line; what a draughtsman dislikes more costs more (our own choice, tuned by looking at sheets).</summary>
internal static class PlacingCosts
{
    /// <summary>Breaking a hard rule: far above any sum of the others, so that a broken rule is only ever left when nothing else is possible.</summary>
    public const double Broken = 10_000;

    /// <summary>A line drawn along a line of the view.</summary>
    public const double AlongFeature = 60;

    /// <summary>A leader beside a centre line or section lining at its slant reads as one of them, millimetres.</summary>
    public const double BesideLight = 1.5;

    /// <summary>The same beside an outline or an extension line, millimetres.</summary>
    public const double BesideFeature = 1;

    /// <summary>A leader or its shoulder beside an extension line.</summary>
    public const double BesideExtension = 30;

    /// <summary>A leader nearer than 15 degrees to level or upright looks like an extension line.</summary>
    public const double AwkwardLeader = 5;

    /// <summary>A leader that comes to a short line along it instead of square to it.</summary>
    public const double LeaderAskew = 8;

    /// <summary>A leader to a target that is only for want of better, where the view settles.</summary>
    public const double SecondBest = 40;

    /// <summary>A leader that comes to an arc through the part's material.</summary>
    public const double ThroughPart = 18;

    /// <summary>The same besides, where the view is drawn and settles: there is no scale to lose then.</summary>
    public const double SeenThroughPart = 25;

    /// <summary>A leader that crosses an outline, besides, where the view settles.</summary>
    public const double SeenOverFeature = 30;

    /// <summary>Arrowheads of two annotations that meet or nearly do, where the view settles.</summary>
    public const double HeadsMeet = 36;

    /// <summary>A leader or dimension line that goes through another's arrowhead, where the view settles.</summary>
    public const double ThroughHead = 36;

    /// <summary>An angle's arrowhead on a detail's circle, where the view settles.</summary>
    public const double HeadOnCircle = 30;

    /// <summary>A detail's letter on the part itself.</summary>
    public const double LetterOnPart = 25;

    /// <summary>A view's or detail's letter close to another's line, where the view settles.</summary>
    public const double LetterAtLine = 14;

    /// <summary>An extension line through a leader's arrowhead, where the view settles.</summary>
    public const double HeadOnExtension = 16;

    /// <summary>A leader whose tip lies where another line of the view begins or passes, where the view settles: it might mean that one. A third of it at a centre line.</summary>
    /// <param name="distance">From the tip to that line, millimetres.</param>
    public static double TipAtLine(double distance, StrokeKind line) => (line == StrokeKind.Feature ? 24 : 8) * Math.Max(0, 1 - (distance / TipClear));

    /// <summary>So far from a leader's tip nothing else may begin or pass, millimetres.</summary>
    public const double TipClear = 1.4;

    /// <summary>A leader that crosses an outline where it ends, besides, where the view settles: it seems to point at the corner.</summary>
    public const double ThroughCorner = 14;

    /// <summary>Nearer than this to an outline's end, millimetres.</summary>
    public const double Corner = 1.2;

    /// <summary>A leader or its shoulder that only just touches another's dimension line, where the view settles.</summary>
    public const double Touches = 24;

    /// <summary>The same with an extension line.</summary>
    public const double Grazes = 12;

    /// <summary>A leader across another's dimension line, besides, where the view settles.</summary>
    public const double SeenAcross = 36;

    /// <summary>A leader's shoulder in one line with another's dimension line, where the view settles.</summary>
    public const double CarriedOn = 30;

    /// <summary>A leader's shoulder close along another's lettering, sign or frame, where the view settles.</summary>
    public const double Underlined = 24;

    /// <summary>Lettering close beside another's dimension line, where the view settles.</summary>
    public const double BesideDimension = 4;

    /// <summary>An extension line that ends close before another's lettering or sign, where the view settles.</summary>
    public const double RunsInto = 8;

    /// <summary>Nearer than this a leader touches another's line, millimetres: some three widths of the line.</summary>
    public const double Touching = 0.9;

    /// <summary>A dimension line in one line with another's extension line, where the view settles: one reads as more of the other.</summary>
    public const double OnExtension = 36;

    /// <summary>A cutting plane's end on another's extension line, where rows are minded: the thick stroke looks like a part of it.</summary>
    public const double MarkOnExtension = 30;

    /// <summary>Nearer than this, in lengths of an arrowhead, two arrowheads read as one.</summary>
    public const double HeadsApart = 0.4;

    /// <summary>Lettering of two annotations that follows in one row, at its nearest, where the view settles: one reads on from the other.</summary>
    public const double ReadOn = 44;

    /// <summary>How many times as much rows count where the view settles, beside all the blemishes that count only there.</summary>
    public const double SeenRows = 1.8;

    /// <summary>A number beside its own extension lines and within another dimension's span, where rows are minded: it reads as that one's, and a wrong size scraps castings. Half of that where a leader says whose it is.</summary>
    public static double Claimed(bool onLeader) => onLeader ? 30 : 60;

    /// <summary>A number beside its own extension lines and beyond those of a neighbour, its line drawn on past that one's span, where rows are minded.</summary>
    public const double Passed = 12;

    /// <summary>A dimension outside a longer one of which it is a part, where rows are minded.</summary>
    public const double OutsideLonger = 30;

    /// <summary>A leader to an arc that is shorter on paper than two arrowheads, where the view settles: it might mean its neighbour.</summary>
    private static double OnShortArc(double length, double arrow) => 6 * Math.Max(0, 1 - (length / (2 * arrow)));

    /// <summary>A leader nearer to an arc's end than half an arrowhead's length, where the view settles: it might mean the line that begins there.</summary>
    /// <param name="length">Along the arc, from the leader's tip to the nearer end.</param>
    public static double AtArcEnd(double length, double arrow) => 12 * Math.Max(0, 1 - (2 * length / arrow));

    /// <summary>Both of a leader that ends on an arc.</summary>
    /// <param name="length">Of the arc on paper, infinite for a whole circle.</param>
    /// <param name="place">Share of the arc at which the tip lies.</param>
    public static double OnArc(double length, double place, double arrow) => OnShortArc(length, arrow) + AtArcEnd(Math.Min(place, 1 - place) * length, arrow);

    /// <summary>Two dimension lines or leaders along each other.</summary>
    public const double AlongOther = 80;

    /// <summary>Lettering nearer to an outline than <see cref="ComfortableDistance"/>: legible, but it looks squeezed in.</summary>
    public const double CloseToFeature = 2.5;

    /// <summary>Beyond the clearance that is a hard rule, millimetres.</summary>
    public const double ComfortableDistance = 1;

    /// <summary>Lettering nearer to a centre line or another narrow line than <see cref="ComfortableFromLight"/>, where the view settles.</summary>
    public const double CloseToLight = 8;

    /// <summary>Beyond the clearance that is a hard rule, millimetres.</summary>
    public const double ComfortableFromLight = 0.4;

    /// <summary>A leader that crosses an outline.</summary>
    public const double LeaderOverFeature = 32;

    public static double CrossingFeature(StrokeKind kind) => kind switch
    {
        StrokeKind.ExtensionLine => 4,
        StrokeKind.Leader => LeaderOverFeature,
        _ => 9,
    };

    /// <summary>Of one section line (own, tuned by looking): some twenty lines, a large section, cost as much as an outline; the few to a hole near the edge little.</summary>
    public static double CrossingLining(StrokeKind kind) => kind is StrokeKind.Leader or StrokeKind.DimensionLine ? 1.5 : 0;

    /// <summary>Of one section line that a leader crosses, besides, where the view settles: nearer to their slant than 30 degrees the leader is lost among them, and it crosses few only because it runs along.</summary>
    public static double SeenAmongLining(in Stroke leader, in Stroke lining)
    {
        const double Steep = 0.5;
        double sine = Math.Abs((leader.B - leader.A).Unit().Cross((lining.B - lining.A).Unit()));
        return sine < Steep ? 6 : 0;
    }

    /// <summary>A leader that goes along section lining, within <see cref="AlongLiningSine"/> of its slant, where the view settles: however few lines it crosses, it is lost among them.</summary>
    public const double AlongLining = 45;

    /// <summary>Sine of 12 degrees.</summary>
    public const double AlongLiningSine = 0.208;

    public static double CrossingOther(StrokeKind a, StrokeKind b) => (a, b) switch
    {
        (StrokeKind.Mark, _) or (_, StrokeKind.Mark) => 70,
        (StrokeKind.ExtensionLine, StrokeKind.ExtensionLine) => 4,
        (StrokeKind.DimensionLine, StrokeKind.DimensionLine) => 40,
        (StrokeKind.Leader, StrokeKind.Leader) => 60,
        (StrokeKind.Leader, StrokeKind.ExtensionLine) or (StrokeKind.ExtensionLine, StrokeKind.Leader) => 12,
        (StrokeKind.Leader, _) or (_, StrokeKind.Leader) => 22,
        _ => 16,
    };
}
