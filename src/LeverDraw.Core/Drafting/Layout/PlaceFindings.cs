namespace LeverDraw.Drafting.Layout;

/// <summary>What has been found out about one place while places were weighed, so that it is not asked twice.</summary>
internal struct PlaceFindings
{
    /// <summary>The least that the place is known to cost in its view at the present price of room.</summary>
    public double Floor;

    /// <summary>The least that it is known to cost in its view at any price of room.</summary>
    public double Least;

    /// <summary>What its lettering costs among the view's own ink; NaN until it is asked for.</summary>
    public double Lettering;

    /// <summary>What it costs in its view, room apart; NaN until it is asked for.</summary>
    public double InView;

    /// <summary>What blemishes it has in its view, while the view settles; NaN until it is asked for.</summary>
    public double Blemish;

    /// <summary>A place of another annotation whose ink its lettering meets; null where none is known.</summary>
    public Candidate? InTheWay;

    public static PlaceFindings None => new() { Lettering = double.NaN, InView = double.NaN, Blemish = double.NaN };
}
