using System.Globalization;
using LeverDraw.Units;

namespace LeverDraw.Drafting.Symbols;

/// <summary>How a surface may come about, by the form of its sign (reference 10j, from memory).</summary>
public enum TextureProcess
{
    /// <summary>Bare vee: by any process.</summary>
    Any,

    /// <summary>A bar closes the vee: material has to be taken off.</summary>
    Removal,

    /// <summary>A circle in the vee: nothing may be taken off, as cast.</summary>
    NoRemoval,
}

/// <summary>A surface-texture sign (ISO 21920-1, before that ISO 1302) and what stands beside it.</summary>
/// <param name="Text">Such as <c>Ra 1.6</c>, micrometres; empty for the bare sign.</param>
public sealed record TextureSign(TextureProcess Process, string Text = "")
{
    /// <summary>Machined to a greatest Ra; null when the roughness is zero, which means unsaid.</summary>
    public static TextureSign? Machined(Length ra) => ra <= Length.Zero
        ? null
        : new TextureSign(TextureProcess.Removal, "Ra " + (ra.Millimetres * 1000).ToString("0.###", CultureInfo.InvariantCulture));
}
