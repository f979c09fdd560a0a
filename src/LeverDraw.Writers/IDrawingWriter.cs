using LeverDraw.Drafting.Plotting;

namespace LeverDraw.Writers;

/// <summary>Spells a finished sheet in one file format. It formats coordinates and strings; it never measures, rounds a size or places anything.</summary>
public interface IDrawingWriter
{
    /// <summary>The name the user asks for it by, lower case: <c>svg</c>.</summary>
    string Format { get; }

    /// <summary>File name extension without the dot.</summary>
    string Extension { get; }

    /// <summary>Writes the whole file. The same sheet gives the same bytes, whatever the machine's culture or clock.</summary>
    void Write(PlotSheet sheet, Stream stream);
}
