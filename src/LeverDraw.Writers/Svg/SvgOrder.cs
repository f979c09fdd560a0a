using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Svg;

/// <summary>Which items stand in which group, each group in the sheet's own order: one stable counting sort.</summary>
internal sealed class SvgOrder
{
    private readonly int[] sorted;
    private readonly int[] starts;
    private readonly int roles;
    private readonly int dimensions;

    private SvgOrder(int[] sorted, int[] starts, int roles, int dimensions) =>
        (this.sorted, this.starts, this.roles, this.dimensions) = (sorted, starts, roles, dimensions);

    /// <summary>Lettering that no dimension owns.</summary>
    public ReadOnlySpan<int> Texts => Group(roles + dimensions);

    public ReadOnlySpan<int> OfRole(int role) => Group(role);

    public ReadOnlySpan<int> OfDimension(int dimension) => Group(roles + dimension);

    /// <exception cref="ArgumentException">An item's owner is not among the sheet's dimensions, or two dimensions share an id.</exception>
    public static SvgOrder Of(PlotSheet sheet)
    {
        int roles = Enum.GetValues<LineRole>().Length;
        int dimensions = sheet.Dimensions.Length;
        var byId = new Dictionary<string, int>(dimensions, StringComparer.Ordinal);
        for (int i = 0; i < dimensions; i++)
            byId.Add(sheet.Dimensions[i].Id, i);

        int[] groupOf = new int[sheet.Items.Length];
        int[] starts = new int[roles + dimensions + 2];
        for (int i = 0; i < groupOf.Length; i++)
        {
            PlotItem item = sheet.Items[i];
            if (item.Owner is { } owner)
                groupOf[i] = byId.TryGetValue(owner, out int d) ? roles + d : throw new ArgumentException($"No dimension has the id '{owner}'.", nameof(sheet));
            else
                groupOf[i] = item is PlotText ? roles + dimensions : (int)item.Role;
            starts[groupOf[i] + 1]++;
        }

        for (int i = 1; i < starts.Length; i++)
            starts[i] += starts[i - 1];
        int[] next = [.. starts];
        int[] sorted = new int[groupOf.Length];
        for (int i = 0; i < groupOf.Length; i++)
            sorted[next[groupOf[i]]++] = i;
        return new SvgOrder(sorted, starts, roles, dimensions);
    }

    private ReadOnlySpan<int> Group(int group) => sorted.AsSpan(starts[group]..starts[group + 1]);
}
