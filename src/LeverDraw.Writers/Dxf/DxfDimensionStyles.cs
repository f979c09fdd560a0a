using System.Collections.Immutable;
using System.Globalization;
using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers.Dxf;

/// <summary>One style for each number of decimals and each scale of view in use, so that a reader that redraws a dimension shows our number again.</summary>
internal sealed class DxfDimensionStyles
{
    /// <summary>Extension lines, paper millimetres, for readers that redraw: gap, overshoot (8 line widths of 0.25, ISO 129-1 from memory) and step between dimension lines.</summary>
    private const double Gap = 1;
    private const double Overshoot = 2;
    private const double Step = 8;

    private readonly PlotSheet sheet;
    private readonly DxfSpace space;
    private readonly List<(int Decimals, double Factor)> styles = [];
    private readonly List<double> factors = [1];

    public DxfDimensionStyles(PlotSheet sheet, DxfSpace space)
    {
        (this.sheet, this.space) = (sheet, space);
        foreach (PlotDimension dimension in sheet.Dimensions.Where(DxfDimensions.IsEntity))
        {
            double factor = space.MeasuringFactor(dimension);
            if (!factors.Contains(factor))
                factors.Add(factor);
            if (!styles.Contains((dimension.Decimals, factor)))
                styles.Add((dimension.Decimals, factor));
        }

        if (styles.Count == 0)
            styles.Add((2, 1));
    }

    /// <summary>The style for new dimensions.</summary>
    public string Default => Name(styles[0].Decimals, styles[0].Factor);

    public ImmutableArray<string> Names => [.. styles.Select(s => Name(s.Decimals, s.Factor))];

    public string NameOf(PlotDimension dimension) => Name(dimension.Decimals, space.MeasuringFactor(dimension));

    public void Write(DxfPage page)
    {
        Style(page, "Standard", 2, 1);
        foreach ((int decimals, double factor) in styles)
            Style(page, Name(decimals, factor), decimals, factor);
    }

    private string Name(int decimals, double factor) => factor == 1
        ? string.Create(CultureInfo.InvariantCulture, $"SHEET_{decimals}")
        : string.Create(CultureInfo.InvariantCulture, $"SHEET_{decimals}_DETAIL{factors.IndexOf(factor)}");

    private void Style(DxfPage page, string name, int decimals, double factor)
    {
        double scale = space.FromPaper;
        page.Record("DIMSTYLE"u8, DxfHandle.DimensionStyleTable, handleCode: 105);
        page.Word(100, "AcDbSymbolTableRecord"u8);
        page.Word(100, "AcDbDimStyleTableRecord"u8);
        page.Name(2, name);
        page.Integer(70, 0);
        page.Real(40, 1);
        page.Real(41, sheet.ArrowLength * scale);
        page.Real(42, Gap * scale);
        page.Real(43, Step * scale);
        page.Real(44, Overshoot * scale);
        page.Integer(73, 0);
        page.Integer(74, 0);
        page.Integer(77, 1);
        // Millimetres drop trailing zeros, inches keep them.
        page.Integer(78, sheet.Unit == SheetUnit.Inch ? 0 : 8);
        page.Real(140, sheet.LetteringHeight * scale);
        page.Real(141, 0);
        page.Real(144, factor);
        page.Real(147, sheet.LetteringHeight / 4 * scale);
        page.Integer(172, 1);
        page.Integer(179, decimals);
        page.Integer(271, decimals);
        page.Integer(275, 0);
        page.Integer(277, 2);
        page.Integer(278, '.');
        page.Handle(340, DxfHandle.LetteringStyle);
        page.Integer(371, -2);
        page.Integer(372, -2);
    }
}
