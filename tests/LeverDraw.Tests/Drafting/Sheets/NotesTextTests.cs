using LeverDraw.Drafting.Sheets;

namespace LeverDraw.Tests.Drafting.Sheets;

public class NotesTextTests
{
    /// <summary>At no width do two limits part, a unit start a line, or the second unit's brackets break.</summary>
    [Fact]
    public void Wrapped_ToAnyWidth_KeepsNumbersWhole()
    {
        NotesText notes = new(["CHECK ⌀2.977 / 3.001 [.1172 / .1181], STANDS 0.5 TO 1.6 mm [.020 TO .063 in] SHORT.", "MASS ABOUT 1.32 g AT 7.85 g/cm³."]);
        int broken = 0;
        for (double width = 2; width < 80; width += 0.5)
        {
            string[] lines = [.. notes.Wrapped(width).Lines.Select(notes.TextOf)];
            broken += lines.Length;
            Assert.Equal("CHECK ⌀2.977 / 3.001 [.1172 / .1181], STANDS 0.5 TO 1.6 mm [.020 TO .063 in] SHORT. MASS ABOUT 1.32 g AT 7.85 g/cm³.", string.Join(' ', lines));
            Assert.All(lines, l => Assert.True(!l.StartsWith('/') && !l.EndsWith('/') && !char.IsAsciiLetterLower(l[0]), l));
            Assert.All(lines, l => Assert.Equal(l.Count(c => c == '['), l.Count(c => c == ']')));
        }

        Assert.True(broken > 300);
    }

    /// <summary>A per cent sign stays with its number, a drill's diameter with its name.</summary>
    [Fact]
    public void Wrapped_ToAnyWidth_KeepsSignsWithWhatTheyBelongTo()
    {
        NotesText notes = new(["BEARING AT LEAST 75 %, DRILL #30 ⌀3.264 AT MOST."]);
        int broken = 0;
        for (double width = 2; width < 40; width += 0.5)
        {
            string[] lines = [.. notes.Wrapped(width).Lines.Select(notes.TextOf)];
            broken += lines.Length;
            Assert.All(lines, l => Assert.False(l[0] is '%' or '⌀', l));
        }

        Assert.True(broken > 100);
    }
}
