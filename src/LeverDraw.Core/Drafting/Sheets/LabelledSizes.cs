using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Views;

namespace LeverDraw.Drafting.Sheets;

/// <summary>A size that a sheet's content states: which view, which name (and which of several of that name), drawn as what, saying what.</summary>
internal sealed record LabelledSize(string View, string Name, int Occurrence, Type Drawn, Label Label)
{
    public (string View, string Name, int Occurrence) Key => (View, Name, Occurrence);

    /// <summary>In round brackets: it follows from others.</summary>
    public bool IsReference => Label.IsReference;

    /// <summary>A note says more than a number.</summary>
    public bool IsNote => Drawn == typeof(LeaderNote);
}

/// <summary>The sizes of a content in order, and the same content with other labels on them.</summary>
internal static class LabelledSizes
{
    public static IEnumerable<LabelledSize> Of(SheetContent content)
    {
        foreach (ViewSource view in content.Views)
        {
            var seen = new Dictionary<string, int>(StringComparer.Ordinal);
            foreach (Annotation annotation in view.Annotations.Where(IsSize))
            {
                foreach ((string name, Label label) in Members(annotation))
                {
                    int occurrence = seen.GetValueOrDefault(name);
                    seen[name] = occurrence + 1;
                    yield return new LabelledSize(view.Id, name, occurrence, annotation.GetType(), label);
                }
            }
        }
    }

    /// <summary>Section letters and the like say no size.</summary>
    public static bool IsSize(Annotation annotation) =>
        annotation is LinearDimension or DiameterDimension or RadiusDimension or AngleDimension or ArcLengthDimension or DimensionRun or LeaderNote;

    public static SheetContent Relabelled(SheetContent content, IReadOnlyDictionary<(string View, string Name, int Occurrence), Label> labels)
    {
        return content with
        {
            Front = In(content.Front),
            FromRight = [.. content.FromRight.Select(In)],
            FromLeft = [.. content.FromLeft.Select(In)],
            Others = [.. content.Others.Select(In)],
        };

        ViewSource In(ViewSource view)
        {
            var seen = new Dictionary<string, int>(StringComparer.Ordinal);
            Label Next(string name, Label old)
            {
                int occurrence = seen.GetValueOrDefault(name);
                seen[name] = occurrence + 1;
                return labels.GetValueOrDefault((view.Id, name, occurrence), old);
            }

            return view with
            {
                Annotations = [.. view.Annotations.Select(a => !IsSize(a)
                    ? a
                    : a is DimensionRun run
                        ? run with { Members = [.. run.Members.Select(m => m with { Label = Next(m.Name, m.Label) })] }
                        : a with { Label = Next(a.Name, a.Label) })],
            };
        }
    }

    private static IEnumerable<(string Name, Label Label)> Members(Annotation annotation) =>
        annotation is DimensionRun run ? run.Members.Select(m => (m.Name, m.Label)) : [(annotation.Name, annotation.Label)];
}
