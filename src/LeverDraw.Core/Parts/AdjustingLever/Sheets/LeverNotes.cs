using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Drafting.Symbols;
using LeverDraw.Parts.AdjustingLever.Foundry;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The notes of the finished lever's sheet, for the machinist: general, machining, fit, marks, safety.</summary>
internal static class LeverNotes
{
    /// <summary>Most that deburring may take off the hole's mouth, where a broken edge would cost bearing (common practice, no source).</summary>
    private static readonly Length _mouthBreak = Length.FromMillimetres(0.1);

    /// <summary>Below this the general tolerances name no radius (ISO 2768-1 table 2), millimetres.</summary>
    private const double SmallestGeneralRadius = 0.5;

    /// <summary>What a filed or machined corner is held to there (common practice, no source).</summary>
    private static readonly Length _smallRadius = Length.FromMillimetres(0.1);

    public static ImmutableArray<string> Finished(Lever lever, Profile profile, DimensionText text) =>
    [
        .. General(lever, profile, text),
        .. Machining(lever, text),
        .. Fit(lever, text),
        .. Marks(lever, profile, text),
        "SAFETY: DRILL AND REAM IN A NEST, NOT IN HAND. EYE PROTECTION. ALLOY MAY HOLD LEAD: WET OR EXTRACTED, NO DRY GRINDING, WASH HANDS. FOLLOW LOCAL RULES.",
    ];

    /// <summary>The sizes that the notes state, place by place.</summary>
    public static ImmutableArray<StatedSize> Sizes(Lever lever)
    {
        var all = ImmutableArray.CreateBuilder<StatedSize>();
        Add(LeverParameters.StepFillet, lever.Side.StepFilletRight?.Radius);
        Add(LeverParameters.ShoulderFillet, lever.Fork.ShoulderFillet?.Radius);
        Add(LeverParameters.NeckFillet, lever.Side.NeckFillet?.Radius);
        if (lever.Sizes.Find(LeverFields.FootFillet) is null)
            Add(LeverParameters.FootFillet, lever.Fork.TongueFillet?.Radius);
        Add(LeverFields.EdgeRound.Name, lever.Sizes[LeverFields.EdgeRound].Millimetres);
        Add(LeverFields.MarkLetterHeight.Name, lever.Mark?.LetterHeight.Millimetres);
        Add(LeverFields.MarkHeight.Name, lever.Mark?.Height.Millimetres);
        return all.ToImmutable();
        void Add(string name, double? value)
        {
            if (value is { } stated)
                all.Add(new StatedSize(name, stated));
        }
    }

    /// <summary>What holds where a size states nothing of its own (common practice for small machined castings, no source).</summary>
    public static string GeneralTolerance => new GeneralTolerance(GeneralToleranceClass.Medium).Text + " ON MACHINED SURFACES";

    /// <summary>Where other inner corners are rounded: a boss is drawn, cast and patterned without a fillet, which would be higher than it.</summary>
    public static string BossRoots(Lever lever) => lever.Boss is null ? "" : ", BOSS ROOTS SHARP";

    private static IEnumerable<string> General(Lever lever, Profile profile, DimensionText text)
    {
        yield return "SIZES WHOLLY IN ROUND BRACKETS FOLLOW FROM OTHERS: UNCHECKED.";
        SizeValue fillet = lever.Sizes[LeverFields.Fillet], round = lever.Sizes[LeverFields.EdgeRound];
        string blends = fillet.Millimetres > 0 ? "FILLETS WITHOUT A SIZE R" + text.Number(fillet.Nominal) + BossRoots(lever) : "INNER CORNERS WITHOUT A SIZE SHARP";
        blends += round.Millimetres > 0 ? ", ROUND OUTER CORNERS R" + text.Number(round.Nominal) + " IN FORK VIEW, SIZES TO SHARP CORNERS" : ", OUTER CORNERS SHARP";
        bool small = lever.Forms.PadEnds == LeverFields.Square && lever.Sizes[LeverFields.PadEndCorner].Millimetres is > 0 and < SmallestGeneralRadius;
        yield return blends + (small ? "; RADII BELOW " + text.Number(Length.FromMillimetres(SmallestGeneralRadius)) + ": " + text.PlusMinus(_smallRadius) + "." : ".");
        if (Shoulders(lever) is { } shoulders)
            yield return shoulders;
        if (lever.Forms.Arms == LeverFields.Tapered)
            yield return "ARMS TAPER FROM THEIR THICKNESS, " + text.Number(LeverArmAnnotations.ThicknessLevel(lever)) + " BELOW AXIS, TO PADS' AT PADS' TOP.";
        if (lever.Forms.Arms == LeverFields.Curved)
            yield return "ARMS: ARCS ABOUT ONE CENTRE, LEVEL WITH PAD TOP; MID-LINE THROUGH AXIS.";
        string? finish = profile.Values.Get(CommonFields.Finish) is { Length: > 0 } wanted ? "FINISH: " + wanted.ToUpperInvariant() + "." : null;
        string made = string.Join(' ', ((string?[])[MassNote.Of(LeverMass.Of(lever).CubicCentimetres, profile.Values.Get(CommonFields.Material)), finish]).OfType<string>());
        if (made.Length > 0)
            yield return made;
        yield return "REST AS CAST " + AsCast(profile, lever.Largest, text) + ".";
    }

    /// <summary>As the casting's own sheet has it, where the profile settles the grade.</summary>
    private static string AsCast(Profile profile, Length greatest, DimensionText text) => FoundryPlanning.StatedTolerance(profile.Values) is { } agreed
        ? AsCastNote.Of(agreed, greatest, text, "AS AGREED WITH FOUNDRY")
        : AsCastNote.Of(profile.Values.Get(CommonFields.Material), profile.Values.Get(CommonFields.Process), greatest, text);

    /// <summary>What leaves the head's sides.</summary>
    internal static string ShouldersOf(Lever lever) => lever.Fork.ShoulderFillet is null ? "SHOULDERS" : "SHOULDER FILLETS";

    /// <summary>Where the shoulders begin, if no size says so, and down to where the head or its bosses are faced.</summary>
    private static string? Shoulders(Lever lever)
    {
        bool level = lever.Sizes[LeverFields.ShoulderStart].Millimetres == 0;
        string name = ShouldersOf(lever);
        if (lever.Boss is not null)
            return level ? name + " LEAVE HEAD'S SIDES LEVEL WITH PIVOT AXIS: FACE BOSSES DOWN TO THEM." : "FACE BOSSES DOWN TO " + name + ".";
        return level
            ? name + " BEGIN LEVEL WITH PIVOT AXIS: FACE HEAD DOWN TO THERE."
            : "FACE HEAD'S SIDES DOWN TO " + name + ".";
    }

    private static IEnumerable<string> Machining(Lever lever, DimensionText text)
    {
        yield return "MACHINE SIGNED FACES UP TO FILLETS" + CastOrMachined(lever) + ".";
        yield return LeverSymbols.Note(lever, text);
        yield return "EDGE SIGN: MACHINED EDGES. HOLE'S MOUTH: DEBURR, AT MOST " + text.AtMost(_mouthBreak) + ".";
        yield return Tongue(lever, text);
    }

    /// <summary>An exception to the general sign, which forbids machining.</summary>
    private static string CastOrMachined(Lever lever)
    {
        SizeField[] sizes = [.. LeverSymbols.MachinedIfNeedBe(lever)];
        // They stand along the lugs and the nut as the head's sides do: the same roughness.
        string roughness = TextureSign.Machined(lever.Sizes[LeverFields.HeadTexture]) is { } sign ? ", " + sign.Text : "";
        return sizes.Length == 0 ? ""
            : sizes is [var only] && only == LeverFields.ForkGap ? "; FORK'S GAP IF NOT HELD AS CAST" + roughness
            : "; OTHER TOLERANCED SIZES IF NOT HELD AS CAST" + roughness;
    }

    /// <summary>Where the tongue's length ends and its thickness is taken, which the nose's form decides.</summary>
    private static string Tongue(Lever lever, DimensionText text)
    {
        string below = text.Number(Length.FromMillimetres((lever.Side.NoseTip - lever.Side.NoseCentre).Length)) + " BELOW TIP";
        return lever.Forms.Tongue switch
        {
            LeverFields.Parallel => "TONGUE'S LENGTH ENDS " + below + ", HALF ITS THICKNESS.",
            LeverFields.Bulb => "TONGUE'S THICKNESS: BULB'S DIAMETER. ITS CENTRE " + below + ", NECK'S SIZE AS FAR BEHIND IT.",
            _ => "TONGUE'S THICKNESS HOLDS AT NOSE CENTRE, " + below + ".",
        };
    }

    private static IEnumerable<string> Fit(Lever lever, DimensionText text)
    {
        if (!lever.Hole.Taper.IsParallel)
            yield return "HANDED HOLE: MARK LARGE END'S SIDE (INK OR DOT) BEFORE FITTING.";
        if (LeverHoleNote.Clearance(lever, text) is { } clearance)
            yield return clearance;
        // One zone for both needs no datum. In a second frame under the pads' own it cost small sheets their scale.
        yield return (lever.Sizes[LeverFields.PadOffset].Nominal is { Millimetres: > 0 } zone ? "BOTH PADS' MID-PLANES IN ONE ZONE " + text.ZoneInEachUnit(zone) + " WIDE. " : "") + "CROWNS CENTRED ON PADS' LENGTH.";
    }

    private static IEnumerable<string> Marks(Lever lever, Profile profile, DimensionText text)
    {
        if (lever.Mark is { } mark)
        {
            yield return "RAISED MARK \"" + mark.Text + "\" ON " + (mark.Place == LeverFields.ArmBack ? "RIGHT ARM IN FORK VIEW, ON ITS MID-LINE" : "HEAD'S RIGHT FACE IN FORK VIEW, ON THE ARMS' MID-LINE")
                + ", PLACED BY ITS MIDDLE; LETTERS " + text.Number(mark.LetterHeight) + " HIGH, " + text.Number(mark.Height) + " PROUD.";
        }

        if (profile.Values.Get(CommonFields.Reproduction))
            yield return ReproductionNote.Text;
    }
}
