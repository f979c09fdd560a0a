using System.Globalization;

namespace LeverDraw.Tests.Samples;

/// <summary>The same profile gives the same bytes, whatever the machine's language.</summary>
public sealed class DeterminismTests
{
    private static readonly string[] Drawn = ["profiles/levers/late.toml", "profiles/pins/middle.toml"];

    [Theory]
    [InlineData("de-DE")]
    [InlineData("fr-FR")]
    [InlineData("ar-SA")]
    [InlineData("tr-TR")]
    public void Draw_UnderAnotherCulture_GivesTheSameBytes(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture, shownBefore = CultureInfo.CurrentUICulture;
        foreach (string profile in Drawn)
        {
            IReadOnlyDictionary<string, byte[]> usual, other;
            try
            {
                CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
                usual = SampleSet.Draw(profile, "--units", "mm-in");
                CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
                other = SampleSet.Draw(profile, "--units", "mm-in");
            }
            finally
            {
                (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, shownBefore);
            }

            Assert.Equal(usual.Keys.Order(StringComparer.Ordinal), other.Keys.Order(StringComparer.Ordinal));
            Assert.All(usual, file => Assert.True(file.Value.AsSpan().SequenceEqual(other[file.Key]), file.Key));
        }
    }
}
