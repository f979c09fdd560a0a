using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>Straight strokes of a PDF page as its own operators draw them, in points: streams inflated, matrices followed. Knows nothing of the program that wrote it.</summary>
internal static partial class PdfLines
{
    public static IReadOnlyList<(Point2D From, Point2D To)> Read(byte[] pdf)
    {
        var lines = new List<(Point2D, Point2D)>();
        string text = Encoding.Latin1.GetString(pdf);
        foreach (Match stream in Streams().Matches(text))
        {
            string content = Inflated(pdf, stream.Index + stream.Length);
            if (content.Contains(" l\n", StringComparison.Ordinal))
                Follow(content, lines);
        }

        return lines;
    }

    private static string Inflated(byte[] pdf, int from)
    {
        try
        {
            using var packed = new MemoryStream(pdf, from, pdf.Length - from);
            using var plain = new ZLibStream(packed, CompressionMode.Decompress);
            using var reader = new StreamReader(plain, Encoding.Latin1);
            return reader.ReadToEnd();
        }
        catch (InvalidDataException)
        {
            return "";
        }
    }

    private static void Follow(string content, List<(Point2D, Point2D)> lines)
    {
        var saved = new Stack<double[]>();
        double[] m = [1, 0, 0, 1, 0, 0];
        var numbers = new List<double>();
        Point2D at = Point2D.Origin;
        Point2D On(int i) => new((m[0] * numbers[i]) + (m[2] * numbers[i + 1]) + m[4], (m[1] * numbers[i]) + (m[3] * numbers[i + 1]) + m[5]);
        foreach (string word in content.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
            {
                numbers.Add(number);
                continue;
            }

            switch (word)
            {
                case "q":
                    saved.Push([.. m]);
                    break;
                case "Q":
                    m = saved.Pop();
                    break;
                case "cm":
                    double[] n = [.. numbers.TakeLast(6)];
                    m =
                    [
                        (n[0] * m[0]) + (n[1] * m[2]), (n[0] * m[1]) + (n[1] * m[3]), (n[2] * m[0]) + (n[3] * m[2]), (n[2] * m[1]) + (n[3] * m[3]),
                        (n[4] * m[0]) + (n[5] * m[2]) + m[4], (n[4] * m[1]) + (n[5] * m[3]) + m[5],
                    ];
                    break;
                case "m":
                    at = On(numbers.Count - 2);
                    break;
                case "l":
                    lines.Add((at, On(numbers.Count - 2)));
                    at = lines[^1].Item2;
                    break;
            }

            numbers.Clear();
        }
    }

    [GeneratedRegex(@"stream\r?\n")]
    private static partial Regex Streams();
}
