using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Sheets;

namespace LeverDraw.Drafting.Completeness;

/// <summary>All sizes a sheet states, in views and in notes.</summary>
public static class SheetSizes
{
    public static ImmutableArray<SheetSize> Of(SheetContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        return Of(content.Views.SelectMany(v => v.Annotations), content.NotedSizes);
    }

    /// <param name="noted">Stated by general notes.</param>
    public static ImmutableArray<SheetSize> Of(IEnumerable<Annotation> annotations, IEnumerable<StatedSize> noted)
    {
        var all = ImmutableArray.CreateBuilder<SheetSize>();
        foreach (Annotation said in annotations.Where(LabelledSizes.IsSize).SelectMany(Singly))
        {
            SizeStanding standing = said.Label.IsReference ? SizeStanding.Reference : SizeStanding.Full;
            all.Add(new SheetSize(said.Name, said.Value, standing));
            all.AddRange(said.Further.Select(f => new SheetSize(f.Name, f.Value, standing)));
        }

        all.AddRange(noted.Select(n => new SheetSize(n.Name, n.Value, SizeStanding.General)));
        return all.ToImmutable();
    }

    private static IEnumerable<Annotation> Singly(Annotation said) => said is DimensionRun run ? run.Single() : [said];
}
