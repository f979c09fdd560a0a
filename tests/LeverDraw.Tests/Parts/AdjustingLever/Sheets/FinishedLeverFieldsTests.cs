using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts.AdjustingLever;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;

namespace LeverDraw.Tests.Parts.AdjustingLever.Sheets;

/// <summary>Nothing a profile says about the finished lever's shape is lost on the sheet, and nothing is said twice.</summary>
public class FinishedLeverFieldsTests
{
    /// <summary>Sizes that do not stand as dimensions of their own name: by which dimensions they are fixed, and why.</summary>
    private static readonly Dictionary<string, (string[] Instead, string Why)> ByOtherDimensions = new()
    {
        ["head.height"] = (["head.top_from_axis"], "centred on the pivot: half of it is the level of the head's top"),
        ["arms.sagitta"] = (["arms.pad_shift"], "with the length of the arms gives the mid-line's radius, which stands in brackets"),
        ["fork.web"] = (["fork.gap_top_from_axis", "head.top_from_axis"], "the level of the gap's top less half the head's height"),
    };

    /// <summary>Sizes that stand in the notes: the words, with the size in millimetres for {0}.</summary>
    private static readonly Dictionary<string, (string Words, string Why)> ByNotes = new()
    {
        ["blends.fillet"] = ("FILLETS WITHOUT A SIZE R{0},", "holds for many corners; shown once more where a step has it"),
        ["blends.edge_round"] = ("OUTER CORNERS R{0} ", "holds for all outer corners"),
        ["mark.height"] = ("{0} PROUD", "the mark is described in words"),
        ["mark.letter_height"] = ("LETTERS {0} HIGH", "the mark is described in words"),
        ["hole.clearance"] = ("CLEARANCE", "said with how it is reached"),
        ["pads.offset"] = ("BOTH PADS' MID-PLANES IN ONE ZONE {0} WIDE.", "a tolerance between the pads, not a size of one"),
        ["hole.pin_diameter"] = ("ON PIN ⌀", "of the pin, whose limits are said with what they leave"),
    };

    /// <summary>Zones that stand in a control frame: its text, with the size in millimetres for {0}.</summary>
    private static readonly Dictionary<string, string> ByFrames = new()
    {
        ["geometry.hole_squareness"] = "⟂ ⌀{0} B",
        ["geometry.pad_symmetry"] = "⌯ {0} B",
        ["geometry.pad_position"] = "⌖ {0} A C",
        ["geometry.tongue_position"] = "⌯ {0} A",
    };

    public static TheoryData<string> Levers => [.. SheetMaker.Levers];

    [Theory]
    [MemberData(nameof(Levers))]
    public void SizeField_ThatApplies_IsOnTheSheet(string profile)
    {
        Lever lever = SheetMaker.Lever(profile);
        PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3"));
        string notes = Notes(profile);
        string[] frames = [.. SheetMaker.Content(profile, SheetMaker.Options("A3")).Views.SelectMany(v => v.Annotations).SelectMany(a => a.Label.Frames).Select(f => f.ToString())];
        var faults = new List<string>();
        // The foundry's fields belong to the casting's and pattern's sheets.
        foreach (SizeField field in LeverFields.All.Except(LeverDraw.Parts.AdjustingLever.Foundry.CastingFields.All).OfType<SizeField>())
        {
            if (lever.Sizes.Find(field) is not { } size)
                continue;
            int times = sheet.Dimensions.Count(d => d.Name == field.Name);
            if (ByNotes.TryGetValue(field.Name, out (string Words, string Why) note))
            {
                string words = note.Words.Replace("{0}", size.Millimetres.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
                if (!notes.Contains(words, StringComparison.Ordinal))
                    faults.Add(field.Name + ": no note \"" + words + "\"");
                if (times > 1)
                    faults.Add(field.Name + " is dimensioned " + times.ToString(System.Globalization.CultureInfo.InvariantCulture) + " times");
            }
            else if (ByFrames.TryGetValue(field.Name, out string? frame))
            {
                string text = frame.Replace("{0}", size.Millimetres.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
                if (!frames.Contains(text))
                    faults.Add(field.Name + ": no frame \"" + text + "\"");
            }
            else if (ByOtherDimensions.TryGetValue(field.Name, out (string[] Instead, string Why) other))
            {
                faults.AddRange(other.Instead.Where(n => sheet.Dimensions.Count(d => d.Name == n) != 1).Select(n => field.Name + ": no dimension " + n));
            }
            else if (times != 1 && !IsNothing(field, size))
            {
                faults.Add(field.Name + " is dimensioned " + times.ToString(System.Globalization.CultureInfo.InvariantCulture) + " times");
            }
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    /// <summary>The derived levels are worth what they stand for.</summary>
    [Theory]
    [MemberData(nameof(Levers))]
    public void DerivedLevels_FollowFromTheFields(string profile)
    {
        Lever lever = SheetMaker.Lever(profile);
        PlotSheet sheet = SheetMaker.Draw(profile, SheetMaker.Options("A3"));
        double Value(string name) => sheet.Dimensions.Single(d => d.Name == name).Value;
        double height = lever.Sizes[LeverFields.HeadHeight].Millimetres;
        Assert.Equal(height / 2, Value("head.top_from_axis"), 9);
        Assert.Equal(lever.Sizes[LeverFields.Web].Millimetres, Value("fork.gap_top_from_axis") - (height / 2), 9);
        Assert.Equal(lever.Sizes[LeverFields.ForkGap].Millimetres + (2 * lever.Sizes[LeverFields.ArmWidth].Millimetres), Value("fork.outside"), 9);
    }

    /// <summary>Every value on the sheet that has a field's name is that field's value.</summary>
    [Theory]
    [MemberData(nameof(Levers))]
    public void Dimension_NamedAfterAField_HasItsValue(string profile)
    {
        Lever lever = SheetMaker.Lever(profile);
        int seen = 0;
        foreach (PlotDimension dimension in SheetMaker.Draw(profile, SheetMaker.Options("A3")).Dimensions)
        {
            if (LeverFields.All.OfType<SizeField>().FirstOrDefault(f => f.Name == dimension.Name) is not { } field || lever.Sizes.Find(field) is not { } size)
                continue;
            Assert.True(Math.Abs(size.Millimetres - dimension.Value) < 1e-9, field.Name);
            seen++;
        }

        Assert.True(seen >= 15);
        IFieldValues values = SheetMaker.Profile(profile).Values;
        Assert.Equal(values.Get(LeverFields.Sweep).Radians, SheetMaker.Draw(profile, SheetMaker.Options("A3")).Dimensions.Single(d => d.Name == LeverFields.Sweep.Name).Value, 12);
    }

    [Fact]
    public void Notes_TaperedHole_SaysThatItIsHanded()
    {
        Assert.Contains("HANDED", Notes("levers/early"), StringComparison.Ordinal);
        Assert.DoesNotContain("HANDED", Notes("levers/late"), StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_AnyLever_CautionsAndSaysReproduction()
    {
        foreach (string profile in SheetMaker.Levers)
        {
            string notes = Notes(profile);
            Assert.Contains("SAFETY", notes, StringComparison.Ordinal);
            Assert.Contains("LEAD", notes, StringComparison.Ordinal);
            Assert.Contains("REPRODUCTION PART", notes, StringComparison.Ordinal);
        }
    }

    /// <summary>A round nothing has no dimension; nor has a level on the axis itself.</summary>
    private static bool IsNothing(SizeField field, SizeValue size) =>
        size.Millimetres == 0 && field.Name is ("fork.shoulder_start" or "pads.end_corner" or "arms.end_corner" or "tongue.nose_radius");

    private static string Notes(string profile) => string.Join('\n', SheetMaker.Content(profile, SheetMaker.Options("A3")).Notes);
}
