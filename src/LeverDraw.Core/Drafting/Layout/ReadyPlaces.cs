using LeverDraw.Drafting.Annotations;

namespace LeverDraw.Drafting.Layout;

/// <summary>Places that are few or cheap enough to be worked out beforehand.</summary>
internal sealed class ReadyPlaces(IReadOnlyList<Candidate> places) : PlaceSet(Costs(places))
{
    protected override bool LetterPlace(int place, PlaceShape shape)
    {
        foreach (OrientedBox text in places[place].Texts)
            shape.AddText(text);
        return true;
    }

    protected override bool LinePlace(int place, PlaceShape shape)
    {
        foreach (Stroke stroke in places[place].Strokes)
            shape.AddStroke(stroke);
        foreach (Stroke head in places[place].Heads)
            shape.AddHead(head);
        return true;
    }

    protected override AnnotationInk InkOf(int place) => places[place].Ink();

    protected override Candidate MakePlace(int place, double cost, PlaceShape shape) => places[place];

    private static double[] Costs(IReadOnlyList<Candidate> places)
    {
        double[] costs = new double[places.Count];
        for (int i = 0; i < costs.Length; i++)
            costs[i] = places[i].Cost;
        return costs;
    }
}
