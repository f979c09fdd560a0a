using System.Text.Json;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Geometry;
using LeverDraw.Tests.Support;
using LeverDraw.Units;
using LeverDraw.Writers.Dxf;

namespace LeverDraw.Tests.Writers;

/// <summary>The DXF of every shipped profile, in millimetres and in inches, as readers that are not ours see it: strict load and audit without a fault, and outlines whose area and length are the kernel's.</summary>
public class ShippedDxfTests
{
    private const double Tolerance = 1e-6;

    private static readonly (string Name, PlotSheet Sheet)[] Cases =
    [
        .. SheetMaker.Profiles.Select(p => (p + " mm A3", SheetMaker.Draw(p, SheetMaker.Options("A3")))),
        .. SheetMaker.Profiles.Select(p => (p + " in A4", SheetMaker.Draw(p, SheetMaker.Options("A4", ShownUnits.Inches)))),
        .. SheetMaker.Profiles.Select(p => (p + " mm-in letter", SheetMaker.Draw(p, SheetMaker.Options("letter", ShownUnits.MillimetresAndInches)))),
        .. SheetMaker.Foundry.Select(p => (p + " mm A3", SheetMaker.Draw(p, SheetMaker.Options("A3")))),
        .. SheetMaker.Foundry.Select(p => (p + " in A3", SheetMaker.Draw(p, SheetMaker.Options("A3", ShownUnits.Inches)))),
    ];

    [OutsideReaderFact(OutsideReader.Ezdxf)]
    public void Write_EveryShippedProfile_IsReadStrictlyWithoutAFault()
    {
        JsonElement[] read = OutsideReader.ReadByEzdxf(Cases.Select(Written));
        foreach (((string name, PlotSheet sheet), JsonElement found) in Cases.Zip(read))
        {
            Assert.Equal((name, "[]"), (name, found.GetProperty("faults").ToString()));
            OutlinesAreTheKernels(name, sheet, found);
        }
    }

    [OutsideReaderFact(OutsideReader.Npm)]
    public void Write_EveryShippedProfile_HasTheKernelsOutlinesInTwoMoreReaders()
    {
        JsonElement[] read = OutsideReader.ReadByNpm(Cases.Select(Written));
        foreach (((string name, PlotSheet sheet), JsonElement found) in Cases.Zip(read))
        {
            OutlinesAreTheKernels(name, sheet, found.GetProperty("dxf-parser"));
            OutlinesAreTheKernels(name, sheet, found.GetProperty("dxf"));
        }
    }

    private static byte[] Written((string Name, PlotSheet Sheet) one) => Bytes.Of(new DxfWriter(new DxfOptions()), one.Sheet);

    private static void OutlinesAreTheKernels(string name, PlotSheet sheet, JsonElement found)
    {
        double unit = sheet.Unit == SheetUnit.Inch ? Length.MillimetresPerInch : 1;
        double[] expected = [.. sheet.Views.Where(v => v.IsMain).SelectMany(v => v.Outlines).SelectMany(o => Measures(o.Contour, unit)).Order()];
        double[] read = [.. found.GetProperty("outlines").EnumerateObject().SelectMany(layer => layer.Value.EnumerateArray()).SelectMany(o => new[] { Math.Abs(o.GetProperty("area").GetDouble()), o.GetProperty("length").GetDouble() }).Order()];
        Assert.NotEmpty(expected);
        Assert.True(expected.Length == read.Length, name);
        foreach ((double ours, double theirs) in expected.Zip(read))
            Assert.Equal(ours, theirs, Tolerance);
    }

    private static double[] Measures(Contour contour, double unit) =>
        [Math.Abs(ContourMeasure.Area(contour)) / (unit * unit), ContourMeasure.Length(contour) / unit];
}
