using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace LeverDraw.Tests.Samples;

/// <summary>Compares pictures by what is seen, since another machine may pack the same dots differently.</summary>
internal static class Picture
{
    /// <summary>Steps of 255; smoothing may round otherwise on another processor.</summary>
    private const int SameShade = 16;

    /// <summary>Share of all dots that may differ by more.</summary>
    private const double MostDifferent = 1e-4;

    public static void MustLookTheSame(string name, byte[] shipped, byte[] made)
    {
        using Image<Rgb24> old = Image.Load<Rgb24>(shipped);
        using Image<Rgb24> now = Image.Load<Rgb24>(made);
        Assert.Equal((old.Width, old.Height), (now.Width, now.Height));
        Assert.Equal(old.Metadata.HorizontalResolution, now.Metadata.HorizontalResolution);
        long different = 0;
        for (int y = 0; y < old.Height; y++)
        {
            for (int x = 0; x < old.Width; x++)
            {
                Rgb24 a = old[x, y], b = now[x, y];
                if (Math.Max(Math.Abs(a.R - b.R), Math.Max(Math.Abs(a.G - b.G), Math.Abs(a.B - b.B))) > SameShade)
                    different++;
            }
        }

        Assert.True(
            different <= MostDifferent * old.Width * old.Height,
            FormattableString.Invariant($"{name}: {different} dots differ from the sample. If that is meant, run the tests with LEVERDRAW_ACCEPT=1."));
    }
}
