using LeverDraw.Drafting.Plotting;
using LeverDraw.Geometry;
using LeverDraw.Units;

namespace LeverDraw.Writers.Dxf;

/// <summary>From paper to the file's model space, where the main views are at true size in the file's unit.</summary>
internal sealed class DxfSpace
{
    private readonly Dictionary<string, PlotView> views;
    private readonly double mainScale;
    private readonly double unitsPerMillimetre;

    /// <exception cref="ArgumentException">A main view is not at the sheet's main scale.</exception>
    public DxfSpace(PlotSheet sheet)
    {
        mainScale = sheet.MainScale;
        unitsPerMillimetre = sheet.Unit == SheetUnit.Inch ? 1 / Length.MillimetresPerInch : 1;
        FromPaper = unitsPerMillimetre / mainScale;
        views = sheet.Views.ToDictionary(v => v.Id, StringComparer.Ordinal);
        PlotView? wrong = sheet.Views.FirstOrDefault(v => v.IsMain && Math.Abs(v.ToPaper.Scale - mainScale) > Coincidence.Distance);
        if (wrong is not null)
            throw new ArgumentException($"Main view '{wrong.Id}' is not at the sheet's main scale.", nameof(sheet));
    }

    /// <summary>File units per paper millimetre; also the scale of linetypes.</summary>
    public double FromPaper { get; }

    public Transform2D PaperTransform => Transform2D.Enlarge(FromPaper);

    public Point2D Place(Point2D paper) => new(paper.X * FromPaper, paper.Y * FromPaper);

    /// <summary>Puts a main view's true-size outlines at the view's place without going through paper, so that their size is exact.</summary>
    public Transform2D OutlineTransform(PlotView view) =>
        view.ToPaper with { Scale = unitsPerMillimetre, Translation = view.ToPaper.Translation * FromPaper };

    /// <summary>True when the item repeats an outline that is written at true size from its view.</summary>
    public bool IsOutlineTwin(PlotItem item) =>
        item is PlotLoop { Role: LineRole.Outline, View: { } id } && views.TryGetValue(id, out PlotView? view) && view.IsMain && !view.Outlines.IsEmpty;

    /// <summary>What a length measured in the file is multiplied by to give the part's own: below 1 in an enlarged detail.</summary>
    public double MeasuringFactor(PlotDimension dimension) =>
        views.TryGetValue(dimension.View, out PlotView? view) && !view.IsMain ? mainScale / view.ToPaper.Scale : 1;
}
