using System.Globalization;
using System.Xml.Linq;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>Reads an SVG sheet back: polylines of its line ink, and of each piece of lettering. Understands the path commands M, L, A (circular, less than half a turn) and Z, L and A also by steps (in small letters); anything else is an error.</summary>
internal sealed class SvgInk
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private SvgInk(List<(string Label, double Pen, Point2D[] Points)> lettering, List<Point2D[]> lines) => (Lettering, Lines) = (lettering, lines);

    /// <summary>Each with the points of its strokes' centre lines.</summary>
    public IReadOnlyList<(string Label, double Pen, Point2D[] Points)> Lettering { get; }

    public IReadOnlyList<Point2D[]> Lines { get; }

    public static SvgInk Read(Stream stream)
    {
        var lettering = new List<(string, double, Point2D[])>();
        var lines = new List<Point2D[]>();
        foreach (XElement element in XDocument.Load(stream).Root!.Descendants())
        {
            XElement? letters = element.AncestorsAndSelf(Svg + "g").FirstOrDefault(g => (string?)g.Attribute("class") == "lettering");
            if (element.Name == Svg + "path" && letters is not null)
                lettering.Add(((string)letters.Attribute("aria-label")!, Number(letters, "stroke-width"), [.. Path((string)element.Attribute("d")!).SelectMany(p => p)]));
            else if (element.Name == Svg + "path")
                lines.AddRange(Path((string)element.Attribute("d")!));
            else if (element.Name == Svg + "circle")
                lines.Add(Circle(Number(element, "cx"), Number(element, "cy"), Number(element, "r")));
        }

        return new SvgInk(lettering, lines);
    }

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);

    private static Point2D[] Circle(double x, double y, double r) =>
        [.. Enumerable.Range(0, 73).Select(i => new Point2D(x, y) + (Vector2D.FromAngle(i * Math.PI / 36) * r))];

    private static List<Point2D[]> Path(string data)
    {
        var all = new List<Point2D[]>();
        var run = new List<Point2D>();
        int at = 0;
        while (at < data.Length)
        {
            char command = data[at++];
            int end = at;
            while (end < data.Length && !char.IsAsciiLetter(data[end]))
                end++;
            double[] n = [.. data[at..end].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
            at = end;
            // Steps count from where the pen is.
            if (command is 'l' or 'a')
            {
                (n[^2], n[^1]) = (n[^2] + run[^1].X, n[^1] + run[^1].Y);
                command = char.ToUpperInvariant(command);
            }

            switch (command, n.Length)
            {
                case ('M', 2):
                    if (run.Count > 0)
                        all.Add([.. run]);
                    run = [new Point2D(n[0], n[1])];
                    break;
                case ('L', 2):
                    run.Add(new Point2D(n[0], n[1]));
                    break;
                case ('A', 7) when n[0] == n[1] && n[3] == 0:
                    run.AddRange(Arc(run[^1], n[0], n[4] == 1, new Point2D(n[5], n[6])));
                    break;
                case ('Z', 0):
                    run.Add(run[0]);
                    break;
                default:
                    throw new InvalidOperationException("Unknown path data: " + command + " with " + n.Length.ToString(CultureInfo.InvariantCulture) + " numbers.");
            }
        }

        if (run.Count > 0)
            all.Add([.. run]);
        return all;
    }

    /// <summary>Points after the first; <paramref name="growing"/> angles are clockwise on the page, since y points down.</summary>
    private static IEnumerable<Point2D> Arc(Point2D from, double radius, bool growing, Point2D to)
    {
        Vector2D chord = to - from;
        double half = chord.Length / 2;
        if (half < 1e-9)
            yield break;
        double rise = Math.Sqrt(Math.Max(0, (radius * radius) - (half * half)));
        Vector2D left = new Vector2D(-chord.Y, chord.X) * (1 / chord.Length);
        Point2D centre = from + (chord * 0.5) + (left * (growing ? rise : -rise));
        double sweep = 2 * Math.Asin(Math.Min(1, half / radius)) * (growing ? 1 : -1);
        double start = (from - centre).Angle;
        for (int i = 1; i < 12; i++)
            yield return centre + (Vector2D.FromAngle(start + (sweep * i / 12)) * radius);
        yield return to;
    }
}
