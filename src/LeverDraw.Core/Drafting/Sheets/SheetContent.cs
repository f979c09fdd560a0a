using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Layout;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Drafting.TitleBlocks;
using LeverDraw.Drafting.Views;

namespace LeverDraw.Drafting.Sheets;

/// <summary>A sheet as meaning, before scale and place: what is seen, what is said, who signs.</summary>
/// <param name="Kind">The sheet's name in commands and file names: <c>finished</c>.</param>
/// <param name="Front">The principal view.</param>
/// <param name="FromRight">The view from the right of the front view: projection decides on which side it stands.</param>
/// <param name="Others">Sections and details, anywhere.</param>
public sealed record SheetContent(
    string Kind,
    PartState State,
    ViewSource Front,
    ImmutableArray<ViewSource> FromRight,
    ImmutableArray<ViewSource> FromLeft,
    ImmutableArray<ViewSource> Others,
    ImmutableArray<string> Notes,
    TitleBlock Title)
{
    /// <summary>Sizes that the notes state: they hold where no size stands.</summary>
    public ImmutableArray<StatedSize> NotedSizes { get; init; } = [];

    public IEnumerable<ViewSource> Views => [Front, .. FromRight, .. FromLeft, .. Others];

    /// <summary>Tables beside the notes, none unless given.</summary>
    public ImmutableArray<SheetTable> Tables { get; init; } = [];

    /// <summary>Ink of its own size whatever the scale, such as a rule that is true in print.</summary>
    public ImmutableArray<PaperBlock> Blocks { get; init; } = [];

    /// <summary>Smaller lettering comes before details that are no larger than in the view they are taken from.</summary>
    public bool EnlargesDetailsFirst { get; init; }

    /// <summary>Signs beside the notes that hold for the whole part.</summary>
    public GeneralSigns? Signs { get; init; }
}
