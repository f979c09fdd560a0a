using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;

namespace LeverDraw.Tests.Support;

/// <summary>Looks at where the parts of a finished sheet lie: inside the paper, inside the frame, clear of each other.</summary>
internal static class PartsApart
{
    public static List<string> Faults(PlotSheet sheet, Box2D frame)
    {
        var faults = new List<string>();
        var paper = new Box2D(0, 0, sheet.Width, sheet.Height);
        foreach (PlotItem item in sheet.Items)
        {
            Box2D box = Legibility.BoxOf(item);
            if (!paper.Contains(box))
                faults.Add($"{item.Role} ink leaves the paper");
            if (item.Role == LineRole.TitleBlock && !frame.Inflated(1e-9).Contains(box))
                faults.Add("the title block leaves the frame");
            if (item is PlotText text && frame.Overlaps(box) && !frame.Contains(box))
                faults.Add($"\"{text.Text}\" stands on the frame");
        }

        (string Name, Box2D Box)[] parts = [.. Parts(sheet)];
        for (int i = 0; i < parts.Length; i++)
        {
            for (int j = i + 1; j < parts.Length; j++)
            {
                if (parts[i].Box.Overlaps(parts[j].Box))
                    faults.Add($"{parts[i].Name} meets {parts[j].Name}");
            }
        }

        return [.. faults.Distinct()];
    }

    /// <summary>The boxes of each view with all that is said about it, and of the title block.</summary>
    public static IEnumerable<(string Name, Box2D Box)> Parts(PlotSheet sheet)
    {
        foreach (PlotView view in sheet.Views)
            yield return ("view " + view.Id, Around(sheet.Items.Where(i => i.View == view.Id)));
        yield return ("the title block", TitleBlock(sheet));
    }

    public static Box2D TitleBlock(PlotSheet sheet) => Around(sheet.Items.Where(i => i.Role == LineRole.TitleBlock));

    private static Box2D Around(IEnumerable<PlotItem> items) => items.Aggregate(Box2D.Empty, (box, item) => box.Union(Legibility.BoxOf(item)));
}
