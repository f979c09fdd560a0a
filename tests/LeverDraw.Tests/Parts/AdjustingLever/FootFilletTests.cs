using System.Text;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Geometry;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using static LeverDraw.Parts.AdjustingLever.LeverFields;

namespace LeverDraw.Tests.Parts.AdjustingLever;

/// <summary>The fillet between the head's top and the tongue's side, and the flat it leaves.</summary>
public class FootFilletTests
{
    public static TheoryData<string> Names => [.. ShippedProfiles.Names];

    [Fact]
    public void Build_Stated_StandsOnTheContourWhereWorkedByHand()
    {
        Lever lever = LeverPart.Build(DemoLevers.Early()).Value!;
        // Half tongue 3.2, half head 4.75, head's top at 5: centre (3.2 + 0.8, 5 + 0.8); flat from 4.75 − 0.6 to 4.
        ArcEdge fillet = lever.Fork.TongueFillet!;
        Assert.Equal(0.8, fillet.Radius, 1e-12);
        Assert.Equal(4, fillet.Centre.X, 1e-12);
        Assert.Equal(5.8, fillet.Centre.Y, 1e-12);
        Assert.Equal((4.15, 4.0), (Math.Round(lever.Fork.HeadTop!.Start.X, 9), Math.Round(lever.Fork.HeadTop.End.X, 9)));
        // Half-way up, at 5.4: half width 4 − √(0.8² − 0.4²) = 4 − √0.48 = 3.3071797.
        Assert.Equal(2 * 3.3071797, ContourChords.HorizontalAt(lever.ForkProfile, 5.4)[0].Length, 1e-6);
    }

    [Fact]
    public void Build_NotStated_TakesTheOtherFillets()
    {
        Lever lever = LeverPart.Build(DemoLevers.Early().Without(FootFillet)).Value!;
        Assert.Equal(1.5, lever.Fork.TongueFillet!.Radius, 1e-12);
        // 0.6 + 1.5 is more than the ledge of 1.55.
        Assert.Null(lever.Fork.HeadTop);
    }

    [Fact]
    public void Build_Stated_LeavesTheOtherFilletsAlone()
    {
        Lever with = LeverPart.Build(DemoLevers.Early()).Value!, without = LeverPart.Build(DemoLevers.Early().Without(FootFillet)).Value!;
        Assert.Equal(1.5, with.Fork.ShoulderFillet!.Radius, 1e-12);
        Assert.Equal(without.SideProfile.Edges.AsEnumerable(), with.SideProfile.Edges);
    }

    [Theory]
    [InlineData("0", true)]
    [InlineData("4", true)]
    [InlineData("-0.01", false)]
    [InlineData("4.01", false)]
    public void Read_AtTheEndsOfItsRange(string written, bool good)
    {
        Checked<Profile> profile = ProfileReader.Read("early.toml", new EarlyWith(written), PartKinds.Fields);
        Assert.Equal(good, profile.Ok);
        if (good)
            Assert.Empty(LeverPart.Build(profile.Value!.Values).Diagnostics);
        else
            Assert.Contains("tongue.foot_fillet", Assert.Single(profile.Diagnostics).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 2, "no edge round to run into")]
    [InlineData(1.6, 0, "no fillet to run into")]
    public void Build_NoCounterpartOnTheLedge_NamesTheFootFillet(double edgeRound, double foot, string words)
    {
        Checked<Lever> lever = LeverPart.Build(DemoLevers.Early().With(EdgeRound, edgeRound).With(FootFillet, foot));
        Diagnostic finding = Assert.Single(lever.Diagnostics);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.Contains("'tongue.foot_fillet'", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("'blends.fillet'", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, "'tongue.foot_fillet'")]
    [InlineData(false, "'blends.fillet'")]
    public void Build_TongueTooLowForIt_NamesTheFieldItComesFrom(bool stated, string field)
    {
        // Swept by 55° the tongue reaches about 8.5 above the pivot; a fillet of 3 on a head 13 high needs more.
        ValueBag values = DemoLevers.Early().With(HeadHeight, 13).With(Sweep, 55).With(TongueLength, 10);
        Checked<Lever> lever = LeverPart.Build(stated ? values.With(FootFillet, 3) : values.Without(FootFillet).With(Fillet, 3));
        Assert.Contains(lever.Diagnostics, d => d.Message.Contains("stands too little", StringComparison.Ordinal) && d.Message.Contains(field, StringComparison.Ordinal));
    }

    [Fact]
    public void Build_ZeroOnATongueAsWideAsTheHead_IsNoFault() =>
        Assert.Empty(LeverPart.Build(DemoLevers.Early().With(TongueWidth, 9.5).With(FootFillet, 0)).Diagnostics);

    [Theory]
    [MemberData(nameof(Names))]
    public void Shipped_KeepARealFlatOnTheHeadsTop(string name)
    {
        Lever lever = SheetMaker.Lever("levers/" + name);
        // Ledge less round and fillet, by hand: 1.55 − 0.6 − 0.8; 1.5 − 0.5 − 0.8; 1.4 − 0.5 − 0.7.
        double expected = name is "late" or "smallest" ? 0.2 : 0.15;
        LineEdge flat = Assert.IsType<LineEdge>(lever.Fork.HeadTop);
        Assert.Equal(expected, flat.Length, 1e-9);
        Assert.Equal(lever.Sizes[HeadHeight].Millimetres / 2, flat.Start.Y, 1e-12);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Sheet_StatesItOnBothArcs(string name)
    {
        (string text, double radius) = name == "smallest" ? ("2× R0.7", 0.7) : ("2× R0.8", 0.8);
        RadiusDimension dimension = Assert.IsType<RadiusDimension>(Assert.Single(OnFork(SheetMaker.Profile("levers/" + name))));
        Assert.Equal(radius, dimension.Value, 1e-12);
        Assert.Equal(text, Assert.Single(dimension.Label.Lines));
        Assert.Equal(2, dimension.Arcs.Length);
        Assert.All(dimension.Arcs, arc => Assert.Equal(radius, arc.Radius, 1e-12));
        Assert.Equal(dimension.Arcs[0].Centre.X, -dimension.Arcs[1].Centre.X, 1e-12);
    }

    [Fact]
    public void Sheet_NotStated_HasNoDimension() =>
        Assert.Empty(OnFork(EarlyWith.Read(null)));

    [Fact]
    public void Sheet_StatedAsZero_SaysSharp() =>
        Assert.Equal("2× SHARP", Assert.Single(Assert.IsType<LeaderNote>(Assert.Single(OnFork(EarlyWith.Read("0")))).Label.Lines));

    [Fact]
    public void Sheet_WithLimits_CarriesThem() =>
        Assert.Contains("0.1", string.Join("\n", Assert.Single(OnFork(EarlyWith.Read("{ size = 0.8, plus = 0.1, minus = 0.1 }"))).Label.Lines), StringComparison.Ordinal);

    private static Annotation[] OnFork(Profile profile) =>
        [.. SheetMaker.Content(profile, SheetMaker.Options("A3")).Front.Annotations.Where(a => a.Name == "tongue.foot_fillet")];

    /// <summary>The shipped early lever with another foot fillet, or none.</summary>
    private sealed class EarlyWith(string? written) : IProfileSource
    {
        private const string Shipped = "foot_fillet = 0.8";

        public static Profile Read(string? written) => ProfileReader.Read("early.toml", new EarlyWith(written), PartKinds.Fields).Value!;

        public ProfileFile Open(string path)
        {
            string text = RepositoryFile.Read("profiles/levers/early.toml");
            Assert.Contains(Shipped, text, StringComparison.Ordinal);
            text = text.Replace(Shipped, written is null ? "" : "foot_fillet = " + written, StringComparison.Ordinal);
            return new ProfileFile.Found(Encoding.UTF8.GetBytes(text), path);
        }
    }
}
