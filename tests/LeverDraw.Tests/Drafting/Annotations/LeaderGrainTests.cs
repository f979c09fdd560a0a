using LeverDraw.Drafting;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Drafting.Annotations;

/// <summary>A leader along the edges of the face it ends in would be taken for one of them: the leaders square to those come first.</summary>
public class LeaderGrainTests
{
    private static readonly PlacingContext Context = new("v", Transform2D.Identity, new Box2D(-20, -20, 20, 20), DraftingStyle.Large);

    [Theory]
    [InlineData(45)]
    [InlineData(135)]
    [InlineData(60)]
    public void Note_OnAFaceWithStraightEdges_HasItsCheapestLeaderAcrossThem(double degrees)
    {
        Vector2D grain = Vector2D.FromAngle(degrees * Math.PI / 180);
        var note = new LeaderNote("n", 0, Label.Of("IRON"), [Point2D.Origin]) { OnFace = true };
        Candidate[] places = Places(note with { Grain = grain });
        Assert.False(IsAlong(places.MinBy(c => c.Cost)!, grain));
        Assert.True(places.Where(c => IsAlong(c, grain)).Min(c => c.Cost) > places.Min(c => c.Cost) + 20);
    }

    private static Candidate[] Places(LeaderNote note) => [.. RadialCandidates.For(note, "d", Context).All()];

    private static bool IsAlong(Candidate place, Vector2D grain) =>
        Math.Abs((place.Strokes[0].B - place.Strokes[0].A).Unit().Cross(grain)) < 0.2;
}
