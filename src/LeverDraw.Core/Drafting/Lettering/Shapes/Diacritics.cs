using System.Collections.Immutable;

namespace LeverDraw.Drafting.Lettering.Shapes;

/// <summary>Where a mark stands on its letter.</summary>
internal enum MarkPlace
{
    /// <summary>Over the letter's middle; drawn here as over a small letter, lifted over a tall one.</summary>
    Above,

    /// <summary>Under the letter's middle.</summary>
    Below,

    /// <summary>Under the letter's right foot.</summary>
    BelowRight,

    /// <summary>Beside the top of a tall letter, where a mark above would collide with the line above.</summary>
    Beside,
}

/// <summary>One mark and the letters of Latin-1 and Latin Extended-A that carry it.</summary>
/// <param name="Combining">The combining character that asks for it.</param>
/// <param name="Path">Drawn about x = 0.</param>
/// <param name="Letters">Pairs: the plain letter, then the letter with the mark.</param>
internal sealed record Diacritic(char Combining, MarkPlace Place, string Path, string Letters);

internal static class Diacritics
{
    public static ImmutableArray<Diacritic> All { get; } =
    [
        new('\u0300', MarkPlace.Above, "M -0.9 10.2 L 0.7 8.6", "AÀEÈIÌOÒUÙaàeèıìoòuùNǸnǹ"),
        new('\u0301', MarkPlace.Above, "M 0.9 10.2 L -0.7 8.6", "AÁEÉIÍOÓUÚYÝaáeéıíoóuúyýCĆcćLĹlĺNŃnńRŔrŕSŚsśZŹzźÆǼæǽØǾøǿ"),
        new('\u0302', MarkPlace.Above, "M -1.5 8.6 L 0 10.2 L 1.5 8.6", "AÂEÊIÎOÔUÛaâeêıîoôuûCĈcĉGĜgĝHĤhĥJĴȷĵSŜsŝWŴwŵYŶyŷ"),
        new('\u0303', MarkPlace.Above, "M -1.8 8.7 D 0.5 1 B -0.9 9.8 1 0 B 0.9 8.9 1 0 B 1.8 10 0.5 1", "AÃNÑOÕaãnñoõIĨıĩUŨuũ"),
        new('\u0308', MarkPlace.Above, "P -1.3 9.5 P 1.3 9.5", "AÄEËIÏOÖUÜaäeëıïoöuüyÿYŸ"),
        new('\u030A', MarkPlace.Above, "O 0 9.6 1", "AÅaåUŮuů"),
        new('\u030C', MarkPlace.Above, "M -1.5 10.2 L 0 8.6 L 1.5 10.2", "CČcčDĎEĚeěNŇnňRŘrřSŠsšTŤZŽzžGǦgǧ"),
        new('\u0306', MarkPlace.Above, "M -1.5 10.2 D 0 -1 T 1.5 10.2", "AĂaăEĔeĕGĞgğIĬıĭOŎoŏUŬuŭ"),
        new('\u0304', MarkPlace.Above, "M -1.6 9.2 L 1.6 9.2", "AĀaāEĒeēIĪıīOŌoōUŪuū"),
        new('\u0307', MarkPlace.Above, "P 0 9.6", "CĊcċEĖeėGĠgġIİZŻzż"),
        new('\u030B', MarkPlace.Above, "M -0.5 10.2 L -1.5 8.6 M 1.5 10.2 L 0.5 8.6", "OŐoőUŰuű"),
        new('\u0312', MarkPlace.Above, "M -0.3 8.5 L 0.4 10.3", "gģ"),
        new('\u0315', MarkPlace.Beside, "M 0.6 10 L 0 7.8", "dďtťlľLĽ"),
        new('\u0327', MarkPlace.Below, "M 0.2 0 L -0.2 -1.1 D 1 0 B 1 -2 0 -1 B 0 -2.9 -1 0 K -0.8 -2.9", "CÇcçSŞsşTŢtţ"),
        new('\u0326', MarkPlace.Below, "M 0.3 -1.2 L -0.3 -2.9", "GĢKĶkķLĻlļNŅnņRŖrŗSȘsșTȚtț"),
        new('\u0328', MarkPlace.BelowRight, "M 0 0 D -1 -0.6 B -1 -1.7 0 -1 B 0 -2.9 1 0 K 0.3 -2.9", "AĄaąEĘeęIĮiįUŲuų"),
    ];
}
