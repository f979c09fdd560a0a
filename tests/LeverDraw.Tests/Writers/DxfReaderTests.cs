using System.Text.Json;
using LeverDraw.Drafting.Plotting;
using LeverDraw.Writers.Dxf;

namespace LeverDraw.Tests.Writers;

/// <summary>Our DXF files as readers that are not ours see them.</summary>
public class DxfReaderTests
{
    private const double Tolerance = 1e-6;

    /// <summary>Worked by hand. Keyhole: three quarters of a circle of radius 5, a triangle 5·5/2 and a foot 7.0711 by 11.4645. Hole: radius 1.53. Fork: 16 by 20 less 8 by 10 and half a circle of radius 4.</summary>
    private static readonly double[] Areas =
    [
        (0.75 * Math.PI * 25) + 12.5 + (5 * Math.Sqrt(2) * (15 - (5 / Math.Sqrt(2)))),
        Math.PI * 1.53 * 1.53,
        320 - 80 - (8 * Math.PI),
    ];

    private static readonly double[] Perimeters =
    [
        (7.5 * Math.PI) + (5 * Math.Sqrt(2)) + (2 * (15 - (5 / Math.Sqrt(2)))),
        2 * Math.PI * 1.53,
        4 + 10 + (4 * Math.PI) + 10 + 4 + 20 + 16 + 20,
    ];

    private static readonly (string Name, PlotSheet Sheet, DxfOptions Options)[] Cases =
    [
        ("text beyond ASCII", SampleSheets.Everything(), new DxfOptions()),
        ("plain text", SampleSheets.Ascii(), new DxfOptions()),
        ("inch", SampleSheets.Ascii(SheetUnit.Inch), new DxfOptions()),
        ("forced 2000", SampleSheets.Everything(), new DxfOptions(DxfVersion.R2000)),
        ("forced 2010", SampleSheets.Ascii(), new DxfOptions(DxfVersion.R2010)),
        ("outlines", SampleSheets.Everything(), new DxfOptions(Content: DxfContent.OutlinesOnly)),
        ("outlines in inch", SampleSheets.Everything(SheetUnit.Inch), new DxfOptions(Content: DxfContent.OutlinesOnly)),
        ("nothing drawn", SampleSheets.Ascii() with { Items = [], Views = [], Dimensions = [] }, new DxfOptions()),
    ];

    /// <summary>All cases in one run of each reader: starting one takes longer than reading.</summary>
    private static readonly Lazy<JsonElement[]> Ezdxf = new(() => OutsideReader.ReadByEzdxf(Written()));
    private static readonly Lazy<JsonElement[]> Npm = new(() => OutsideReader.ReadByNpm(Written()));

    [OutsideReaderFact(OutsideReader.Ezdxf)]
    public void Write_EveryCase_IsReadStrictlyWithoutAFault()
    {
        foreach (((string name, PlotSheet sheet, _), JsonElement found) in Cases.Zip(Ezdxf.Value))
        {
            Assert.Equal((name, "[]"), (name, found.GetProperty("faults").ToString()));
            Assert.Equal((name, sheet.Unit == SheetUnit.Inch ? (1, 0) : (4, 1)), (name, (found.GetProperty("units").GetInt32(), found.GetProperty("measurement").GetInt32())));
        }
    }

    [OutsideReaderFact(OutsideReader.Ezdxf)]
    public void Write_Outlines_HaveTheirHandWorkedAreasAndLengths()
    {
        foreach (((_, PlotSheet sheet, _), JsonElement found) in Cases.Zip(Ezdxf.Value).Where(c => !c.First.Sheet.Views.IsEmpty))
            CheckOutlines(found, sheet.Unit);
    }

    [OutsideReaderFact(OutsideReader.Npm)]
    public void Write_Outlines_AreTheSameForTwoUnrelatedReaders()
    {
        foreach (((_, PlotSheet sheet, _), JsonElement found) in Cases.Zip(Npm.Value).Where(c => !c.First.Sheet.Views.IsEmpty))
        {
            CheckOutlines(found.GetProperty("dxf-parser"), sheet.Unit);
            CheckOutlines(found.GetProperty("dxf"), sheet.Unit);
        }
    }

    [OutsideReaderFact(OutsideReader.Ezdxf)]
    public void Write_Layers_HoldWhatTheSheetHolds()
    {
        JsonElement found = Ezdxf.Value[0];
        // Counted by hand on the sample sheet; lengths are paper lengths over 2.
        Assert.Equal(
            """
            ALLOWANCE {"LINE": 1}
            CENTRE {"LINE": 2}
            CUTTING_PLANE {"LINE": 1}
            DIM {"LINE": 2, "CIRCLE": 1, "SOLID": 2, "TEXT": 1, "DIMENSION": 6}
            EDGES {"LWPOLYLINE": 2, "LINE": 1, "ARC": 1}
            FRAME {"LINE": 7}
            HATCH {"HATCH": 1}
            HIDDEN {"LINE": 1}
            HOLE_CENTRES {"POINT": 1}
            OUTLINE_FINISHED {"LWPOLYLINE": 2, "CIRCLE": 1}
            OVERLAY_A {"LINE": 1}
            OVERLAY_B {"CIRCLE": 1}
            PARTING {"LINE": 1}
            PHANTOM {"LWPOLYLINE": 1}
            RAISED_MARK {"LINE": 1}
            TEXT {"TEXT": 2}
            """,
            string.Join('\n', found.GetProperty("counts").EnumerateObject().Select(l => $"{l.Name} {l.Value.GetRawText()}")),
            ignoreLineEndingDifferences: true);
        JsonElement lengths = found.GetProperty("lengths");
        Assert.Equal(15 + 15, lengths.GetProperty("CENTRE").GetDouble(), Tolerance);
        Assert.Equal(4 * Math.PI, lengths.GetProperty("OVERLAY_B").GetDouble(), Tolerance);
        // On paper the detail's slot (4:1) is 24 + 24 + 16π, the section 20 + 20 + 10π, an edge of 10 and an arc of 4 rad at radius 10.
        Assert.Equal((48 + (16 * Math.PI) + 40 + (10 * Math.PI) + 10 + 40) / 2, lengths.GetProperty("EDGES").GetDouble(), Tolerance);
        Assert.Equal(0.5, found.GetProperty("linetypeScale").GetDouble());
        Assert.Equal([30.0, 45.0], found.GetProperty("holeCentres")[0].EnumerateArray().Select(v => v.GetDouble()));
    }

    [OutsideReaderFact(OutsideReader.Npm)]
    public void Write_CountsAndLengths_AreTheSameInBothNpmReaders()
    {
        foreach (JsonElement found in Npm.Value)
        {
            JsonElement first = found.GetProperty("dxf-parser");
            JsonElement second = found.GetProperty("dxf");
            // The first one drops hatches.
            foreach (JsonProperty layer in second.GetProperty("counts").EnumerateObject().Where(l => l.Name != "HATCH"))
                Assert.Equal(layer.Value.ToString(), first.GetProperty("counts").GetProperty(layer.Name).ToString());
            SameLengths(second, first);
        }
    }

    [OutsideReaderFact(OutsideReader.Npm)]
    public void Write_Lengths_AreTheSameInNpmAndEzdxf()
    {
        if (!OutsideReader.IsThere(OutsideReader.Ezdxf))
            return;
        foreach ((JsonElement ezdxf, JsonElement npm) in Ezdxf.Value.Zip(Npm.Value))
            SameLengths(ezdxf, npm.GetProperty("dxf"));
    }

    [OutsideReaderFact(OutsideReader.Ezdxf)]
    public void Write_Dimensions_MeasureTheirValueAndShowTheirText()
    {
        foreach (((_, PlotSheet sheet, _), JsonElement found) in Cases.Zip(Ezdxf.Value).Where(c => c.First.Name is "plain text" or "inch"))
        {
            PlotDimension[] expected = [.. sheet.Dimensions.Where(d => d.Kind != PlotDimensionKind.Note)];
            JsonElement[] read = [.. found.GetProperty("dimensions").EnumerateArray()];
            Assert.Equal(expected.Length, read.Length);
            foreach ((PlotDimension dimension, JsonElement one) in expected.Zip(read))
                CheckDimension(dimension, one, sheet.Unit);
        }
    }

    private static IEnumerable<byte[]> Written() => Cases.Select(c => Bytes.Of(new DxfWriter(c.Options), c.Sheet));

    private static void CheckDimension(PlotDimension dimension, JsonElement read, SheetUnit unit)
    {
        bool angle = dimension.Kind == PlotDimensionKind.Angle;
        double inUnit = unit == SheetUnit.Inch && !angle ? dimension.Value / 25.4 : dimension.Value;
        double factor = angle ? 1 : read.GetProperty("factor").GetDouble();
        Assert.Equal(inUnit, read.GetProperty("measured").GetDouble() * factor, Tolerance);
        Assert.Equal(dimension.Decimals, read.GetProperty("decimals").GetInt32());
        Assert.Equal(Plain(dimension.Text).Replace("\n", "\\P", StringComparison.Ordinal), read.GetProperty("text").GetString());
        Assert.Equal(Plain(dimension.Text).Split('\n'), read.GetProperty("drawn").EnumerateArray().Select(t => t.GetString()!));
    }

    private static void SameLengths(JsonElement a, JsonElement b)
    {
        foreach (JsonProperty layer in a.GetProperty("lengths").EnumerateObject())
            Assert.Equal(layer.Value.GetDouble(), b.GetProperty("lengths").GetProperty(layer.Name).GetDouble(), Tolerance);
    }

    /// <summary>The %% forms, typed here once more from the published DXF reference.</summary>
    private static string Plain(string text) =>
        text.Replace("⌀", "%%c", StringComparison.Ordinal).Replace("°", "%%d", StringComparison.Ordinal).Replace("±", "%%p", StringComparison.Ordinal);

    private static void CheckOutlines(JsonElement found, SheetUnit unit)
    {
        double k = unit == SheetUnit.Inch ? 1 / 25.4 : 1;
        JsonElement[] loops = [.. found.GetProperty("outlines").GetProperty("OUTLINE_FINISHED").EnumerateArray()];
        Assert.Equal(Areas.Length, loops.Length);
        for (int i = 0; i < loops.Length; i++)
        {
            Assert.Equal(Areas[i] * k * k, loops[i].GetProperty("area").GetDouble(), Tolerance);
            Assert.Equal(Perimeters[i] * k, loops[i].GetProperty("length").GetDouble(), Tolerance);
        }
    }
}
