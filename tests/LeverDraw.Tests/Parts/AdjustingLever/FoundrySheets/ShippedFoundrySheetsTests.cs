using LeverDraw.Diagnostics;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Parts;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Tolerancing.Allowances;

namespace LeverDraw.Tests.Parts.AdjustingLever.FoundrySheets;

/// <summary>Every shipped lever in brass by investment and in grey iron by green sand, both sheets, on the papers people have: they draw, and one can read them.</summary>
public class ShippedFoundrySheetsTests
{
    private static readonly (string Paper, ShownUnits Units, ProjectionMethod Projection)[] Ways =
    [
        ("A4", ShownUnits.Millimetres, ProjectionMethod.ThirdAngle), ("A4", ShownUnits.MillimetresAndInches, ProjectionMethod.ThirdAngle),
        ("A3", ShownUnits.Millimetres, ProjectionMethod.FirstAngle), ("A3", ShownUnits.InchesAndMillimetres, ProjectionMethod.ThirdAngle),
        ("letter", ShownUnits.Inches, ProjectionMethod.ThirdAngle), ("tabloid", ShownUnits.Inches, ProjectionMethod.ThirdAngle), ("A2", ShownUnits.Millimetres, ProjectionMethod.ThirdAngle),
    ];

    public static TheoryData<string, string, string, string> Sheets
    {
        get
        {
            TheoryData<string, string, string, string> all = [];
            foreach (string name in ShippedProfiles.Names)
            {
                foreach (string sheet in (string[])["casting", "pattern"])
                {
                    all.Add(name, sheet, "brass", "investment");
                    all.Add(name, sheet, "grey-iron", "green-sand");
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Compose_EveryPaper_DrawsALegibleSheet(string name, string sheet, string metal, string process)
    {
        Profile profile = Chosen(name, metal, process);
        var faults = new List<string>();
        foreach ((string paper, ShownUnits units, ProjectionMethod projection) in Ways)
        {
            SheetOptions options = SheetMaker.Options(paper, units, projection);
            Checked<PlotSheet> drawn = SheetComposer.Compose(SheetMaker.Content(profile, options, sheet), options);
            string which = $"{name} {sheet} {metal} {paper} {units}: ";
            if (drawn.Value is not { } plot)
                faults.AddRange(drawn.Diagnostics.Select(d => which + d.Message));
            else
            {
                faults.AddRange(Legibility.Faults(plot, SheetMaker.Frame(paper)).Concat(PartsApart.Faults(plot, SheetMaker.Frame(paper))).Select(f => which + f));
                // Below full size a casting of 20 mm shows little; both units on A4 leave room for no more.
                if (plot.MainScale < 1 && (paper, units) is not ("A4", ShownUnits.MillimetresAndInches))
                    faults.Add(which + "drawn reduced");
            }
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    /// <summary>A detail no larger than in its view says nothing; on small paper the sheets may be a little fuller for it.</summary>
    [Theory]
    [InlineData("A4", ShownUnits.Millimetres)]
    [InlineData("A4", ShownUnits.MillimetresAndInches)]
    [InlineData("letter", ShownUnits.Inches)]
    public void Compose_OnSmallPaper_HasDetailsLargerOrAtTwiceFullSize(string paper, ShownUnits units)
    {
        foreach (string name in ShippedProfiles.Names.SelectMany(n => new[] { "levers/" + n + ":casting", "levers/" + n + ":pattern" }))
        {
            PlotSheet sheet = SheetMaker.Draw(name, SheetMaker.Options(paper, units));
            Assert.All(sheet.Views.Where(v => v.Id is "nose" or "pad"), v => Assert.True(v.ToPaper.Scale >= 2, name + " " + v.Id));
        }
    }

    [Fact]
    public void Master_OnA3_DrawsALegibleSheet()
    {
        Profile profile = SheetMaker.Profile("levers/middle");
        profile = profile with { Values = new WithWord(profile.Values, CastingFields.PatternMetal, "aluminium") };
        SheetOptions options = SheetMaker.Options("A3");
        PlotSheet plot = SheetComposer.Compose(SheetMaker.Content(profile, options, "master"), options).Value!;
        Assert.Empty(Legibility.Faults(plot, SheetMaker.Frame("A3")));
        Assert.Contains(plot.Items.OfType<PlotText>(), t => t.Text == "TWO CONTRACTIONS INCLUDED 1 in 64 AND 1 in 76.8 - USE PLAIN RULE");
    }

    [Fact]
    public void Master_WithoutAMetalForTheWorkingPattern_SaysSo()
    {
        Checked<BuiltPart> part = PartKinds.Lever.Build(SheetMaker.Profile("levers/middle"));
        Diagnostic told = Assert.Single(part.Value!.Find("master")!.Content(new SheetOptions()).Diagnostics, d => d.Severity == Severity.Error);
        Assert.Equal("LD430", told.Code);
        Assert.False(part.Value.Find("master")!.IsUsual);
    }

    /// <summary>Up to 10 mm grade 7 is ±0.37 (ISO 8062-3:2007, table 2): 0.1 mm on each of two faces is 0.085 short, and brass may contract by more than reckoned.</summary>
    [Theory]
    [InlineData("casting")]
    [InlineData("pattern")]
    public void Sheet_OfAFaceThatMayNotCleanUp_IsRefusedAndNamesFaceAndMillimetres(string sheet)
    {
        Profile profile = SheetMaker.Profile("levers/middle");
        profile = (FoundryChoice.None with { Trial = FoundryChoice.None.Trial.Add(CastingFields.PadAllowance, LeverDraw.Units.Length.FromMillimetres(0.1)) }).On(profile);
        BuiltPart part = PartKinds.Lever.Build(profile).Value!;
        Checked<SheetContent> content = part.Find(sheet)!.Content(new SheetOptions());
        Diagnostic told = Assert.Single(content.Diagnostics, d => d.Severity == Severity.Error);
        Assert.Null(content.Value);
        Assert.Equal(("LD417", "casting.allowance_pads"), (told.Code, told.Field));
        // Cast 3.25; least 3.25 − 0.37 − 3.25·(1.8229 − 1.5625) %/1.015625 = 2.87167; 3.05 less that, halved: 0.08917.
        Assert.Contains("pad thickness: in the worst case 0.089 mm of stock is missing on each face", told.Message, StringComparison.Ordinal);
        Assert.Contains(Castability.Of(SheetMaker.Lever("levers/middle"), profile), d => d.Code == "LD417" && d.Severity == Severity.Error);
    }

    internal static Profile Chosen(string name, string metal, string process) =>
        new FoundryChoice(FoundryMetal.Find(metal), MouldingProcess.Find(process), null, FoundryChoice.None.Trial).On(SheetMaker.Profile("levers/" + name));
}
