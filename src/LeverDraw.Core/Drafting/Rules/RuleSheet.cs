using System.Collections.Immutable;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Geometry;
using LeverDraw.Standards;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Rules;

/// <summary>One rule of a sheet of rules.</summary>
/// <param name="Factor">Length on the rule by length it stands for.</param>
public sealed record RuleScale(double Factor, string Words);

/// <summary>A sheet with contraction rules as long as the paper allows, true to length in print.</summary>
public static class RuleSheet
{
    private const double Lettering = 2.5, SmallLettering = 1.8, Between = 8, Edge = 10;

    /// <returns>Null when the paper has no room for all rules and notes.</returns>
    public static PlotSheet? Of(ImmutableArray<RuleScale> rules, ImmutableArray<string> notes, TitleBlock title, SheetFormat paper, SheetOptions options)
    {
        Box2D field = SheetFrame.Field(paper);
        double titleWidth = Math.Min(field.Width, TitleBlockInk.FullWidth);
        var titleBox = new Box2D(field.MaxX - titleWidth, field.MinY, field.MaxX, field.MinY + (TitleBlockInk.RowsOf(title) * TitleBlockInk.RowHeight));
        List<PlacedBlock> placed = [];
        double top = field.MaxY - Edge;
        foreach ((RuleScale rule, int i) in rules.Select((r, i) => (r, i)))
        {
            double room = (field.Width - (2 * Edge)) / rule.Factor;
            PaperBlock block = ContractionRuleInk.Build(
                string.Create(System.Globalization.CultureInfo.InvariantCulture, $"rule-{i + 1}"), rule.Factor, 10 * (int)(room / 10), (int)(room / Length.MillimetresPerInch), rule.Words);
            placed.Add(new PlacedBlock(block, new Vector2D(field.MinX + Edge, top - block.Bounds.MaxY)));
            top -= block.Bounds.Height + Between;
        }

        foreach (double lettering in (double[])[Lettering, SmallLettering])
        {
            PaperBlock block = NotesBlock.Build(notes, field.Width - (2 * Edge), lettering, options.FirstUnit);
            double low = titleBox.MaxY + Between;
            if (top - block.Bounds.Height < low)
                continue;
            placed.Add(new PlacedBlock(block, new Vector2D(field.MinX + Edge, top - block.Bounds.MaxY)));
            return Sheet(placed, title, titleBox, paper, options);
        }

        return null;
    }

    private static PlotSheet Sheet(List<PlacedBlock> placed, TitleBlock title, Box2D titleBox, SheetFormat paper, SheetOptions options) => new(
        paper.Width.Millimetres,
        paper.Height.Millimetres,
        (title.DrawingNumber + " " + title.Title).Trim(),
        PartState.Pattern,
        options.FirstUnit,
        1,
        Lettering,
        Lettering,
        [
            .. SheetFrame.Draw(paper, [titleBox, .. placed.Select(p => p.Block.Bounds.Moved(p.Shift))]),
            .. TitleBlockInk.Draw(title, "1:1", paper.Name, options.Projection, titleBox),
            .. placed.SelectMany(p => p.Block.Items.Select(item => item.Moved(p.Shift))),
        ],
        [],
        []);
}
