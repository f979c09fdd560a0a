using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Drafting.Sheets;

/// <summary>Letters on the drawing, values in a table.</summary>
public class TableStyleTests
{
    private static readonly SheetOptions A3 = SheetMaker.Options("A3");

    public static TheoryData<string> Profiles => [.. SheetMaker.Profiles];

    [Theory]
    [MemberData(nameof(Profiles))]
    public void OneVariant_OnA3_IsLegibleAndEachLetterHasItsRow(string profile)
    {
        Checked<PlotSheet> drawn = Tabled(A3, profile).Then(c => SheetComposer.Compose(c, A3));
        Assert.True(drawn.Ok, string.Join("; ", drawn.Diagnostics.Select(d => d.Message)));
        Assert.Empty(Legibility.Faults(drawn.Value!, SheetMaker.Frame("A3")));

        SheetContent content = Tabled(A3, profile).Value!;
        var rows = content.Tables.Where(t => t.Columns[0].Head.Length == 0).SelectMany(t => t.Rows).ToDictionary(r => r[0], r => r[2]);
        PlotDimension[] plain = [.. SheetMaker.Draw(profile, A3).Dimensions];
        PlotDimension[] lettered = [.. drawn.Value!.Dimensions.Where(d => rows.ContainsKey(d.Text.Trim('(', ')')))];
        Assert.Equal(rows.Count, lettered.Length);
        foreach (PlotDimension dimension in lettered)
        {
            // The row says what the plain sheet says at that place, whether or not the plain one had to stack its units.
            string value = rows[dimension.Text.Trim('(', ')')];
            Assert.Contains(plain, p => p.Name == dimension.Name && p.View == dimension.View && p.Text.Replace('\n', ' ') == value.Replace('\n', ' ') && p.Value.Equals(dimension.Value));
            Assert.Equal(value[0] == '(', dimension.Text[0] == '(');
        }
    }

    [Fact]
    public void Notes_OfTwoVariants_EndWithSafetyAndSayNothingTwice()
    {
        ImmutableArray<string> notes = Tabled(A3, "levers/smallest", "levers/late").Value!.Notes;
        Assert.StartsWith("SAFETY", notes[^1], StringComparison.Ordinal);
        Assert.Equal(notes.Length, notes.Distinct().Count());
        Assert.Contains(notes, n => n.Contains(": ", StringComparison.Ordinal) && n.Contains("CLEARANCE", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("pins/middle")]
    [InlineData("pins/rare")]
    public void OnePin_OnA4_IsLegible(string profile)
    {
        SheetOptions a4 = SheetMaker.Options("A4");
        Checked<PlotSheet> drawn = Tabled(a4, profile).Then(c => SheetComposer.Compose(c, a4));
        Assert.True(drawn.Ok, string.Join("; ", drawn.Diagnostics.Select(d => d.Message)));
        Assert.Empty(Legibility.Faults(drawn.Value!, SheetMaker.Frame("A4")));
    }

    /// <summary>The tools for two pins differ: one table, its rows under the pins' drawing numbers.</summary>
    [Fact]
    public void TwoPins_OnOneSheet_KeepTheirOwnTools()
    {
        SheetContent content = Tabled(A3, "pins/early", "pins/middle").Value!;
        SheetTable tools = Assert.Single(content.Tables, t => t.Title.StartsWith("TOOLS", StringComparison.Ordinal));
        Assert.Equal("FOR", tools.Columns[0].Head);
        Assert.Equal(["TC-P-01", "", "TC-P-02", ""], tools.Rows.Select(r => r[0]));
        Assert.Equal("LETTERED SIZES ARE IN THE TABLE; TC-P-01 IS DRAWN TO SCALE.", content.Notes[0]);
        Assert.Equal(SheetMaker.Content("pins/early", A3).Tables.Concat(SheetMaker.Content("pins/middle", A3).Tables).SelectMany(t => t.Rows).Select(r => string.Join('|', r)), tools.Rows.Select(r => string.Join('|', r.Skip(1))));
    }

    /// <summary>A note that some share and others have not stands once, under the names of those.</summary>
    [Fact]
    public void Notes_OfSomeVariants_StandOnceUnderTheirNames()
    {
        ImmutableArray<string> notes = Tabled(A3, "pins/early", "pins/middle", "pins/late", "pins/smallest").Value!.Notes;
        Assert.Single(notes, n => n.StartsWith("TC-P-02, TC-P-03: NEXT OVERSIZE", StringComparison.Ordinal));
        Assert.Single(notes, n => n.StartsWith("TC-P-01, TC-P-04: NEXT OVERSIZE", StringComparison.Ordinal));
        Assert.Equal(2, notes.Count(n => n.Contains("NEXT OVERSIZE", StringComparison.Ordinal)));
    }

    /// <summary>A letter says nothing of a frame: zones that differ cannot share one drawing.</summary>
    [Fact]
    public void Signs_ThatDiffer_AreRefused()
    {
        SheetContent content = SheetMaker.Content("levers/middle", A3);
        SheetContent other = content with
        {
            Front = content.Front with { Annotations = [.. content.Front.Annotations.Select(a => a.Label.Frames.IsEmpty ? a : a with { Label = a.Label with { Frames = [a.Label.Frames[0] with { Zone = "0.3" }] } })] },
        };
        Checked<SheetContent> tabled = TableStyle.Of([new TableVariant("one", content), new TableVariant("other", other)], "mm");
        Assert.Equal("LD504", Assert.Single(tabled.Diagnostics).Code);
    }

    /// <summary>Values typed from the two profiles: arms 4.2 and 5 wide, both crowns R5, a mark on the smallest one only.</summary>
    [Fact]
    public void TwoLevers_OnOneSheet_ShareWhatIsEqualAndTabulateTheRest()
    {
        SheetContent content = Tabled(A3, "levers/smallest", "levers/late").Value!;
        ImmutableArray<string>[] rows = [.. content.Tables.SelectMany(t => t.Rows)];
        Assert.All(content.Tables, t => Assert.Equal(["", "SIZE, mm", "TC-L-04", "TC-L-03"], t.Columns.Select(c => c.Head)));
        Assert.Contains(rows, r => r is [_, "ARMS, WIDTH", "2× 4.2", "2× 5"]);
        Assert.Contains(rows, r => r is [_, "MARK, MIDDLE FROM AXIS", "11.3", "–"]);
        Assert.Equal("LETTERED SIZES ARE IN THE TABLE, – WHERE THERE IS NOTHING TO SIZE; TC-L-04 IS DRAWN TO SCALE.", content.Notes[0]);
        Assert.DoesNotContain(rows, r => r[1] is "PADS, CROWN RADIUS" or "TONGUE, SWEEP");
        Assert.Contains(content.Views.SelectMany(v => v.Annotations), a => a.Name == "pads.crown_radius" && a.Label.ToString() == "4× R5");
        string[] letters = [.. rows.Select(r => r[0]).Where(l => l.Length > 0)];
        Assert.Equal(letters.Distinct(StringComparer.Ordinal), letters);
        Assert.Equal("TC-L-04-T", content.Title.DrawingNumber);
        Assert.Equal("A", content.Title.Revision);

        Checked<PlotSheet> drawn = SheetComposer.Compose(content, A3);
        Assert.True(drawn.Ok);
        Assert.Empty(Legibility.Faults(drawn.Value!, SheetMaker.Frame("A3")));
    }

    [Fact]
    public void Revisions_ThatDiffer_AreTabledAndNotInTheTitle()
    {
        SheetContent content = SheetMaker.Content("levers/middle", A3);
        SheetContent other = content with { Title = content.Title with { Revision = "C" } };
        SheetContent tabled = TableStyle.Of([new TableVariant("one", content), new TableVariant("other", other)], "mm").Value!;
        Assert.Equal("–", tabled.Title.Revision);
        Assert.Contains(tabled.Tables.SelectMany(t => t.Rows), r => r is ["", "REVISION", "B", "C"]);
    }

    /// <summary>Bosses take the head's tolerance and datum over: the early lever's drawing has them elsewhere than the middle one needs.</summary>
    [Fact]
    public void Levers_WithAndWithoutBosses_AreRefused() =>
        Assert.Contains("head.width", Assert.Single(Tabled(A3, "levers/early", "levers/middle").Diagnostics).Message, StringComparison.Ordinal);

    /// <summary>The rare lever has a neck and a concave shoulder that no arrow of the early one's drawing could point at.</summary>
    [Fact]
    public void OtherShape_IsRefusedByNameOfItsSizes()
    {
        Checked<SheetContent> content = Tabled(A3, "levers/early", "levers/rare");
        Diagnostic fault = Assert.Single(content.Diagnostics);
        Assert.Equal("LD504", fault.Code);
        Assert.Contains("fork.shoulder_radius", fault.Message, StringComparison.Ordinal);
        Assert.Contains("tongue.neck_thickness", fault.Message, StringComparison.Ordinal);
    }

    private static Checked<SheetContent> Tabled(SheetOptions options, params string[] profiles)
    {
        ImmutableArray<BuiltPart> parts = [.. profiles.Select(SheetMaker.Profile).Select(p => PartKinds.All.Single(k => k.Name == p.Kind).Build(p).Value!)];
        return TabledSheet.Of(parts, parts[0].Sheets[0].Name).Content(options);
    }
}
