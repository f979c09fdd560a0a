using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The notes of the finished lever's sheet, for the machinist: general, machining, fit, marks, safety.</summary>
internal static class LeverNotes
{
    public static ImmutableArray<string> Finished(Lever lever, Profile profile, DimensionText text) =>
    [
        .. General(lever, profile, text),
        .. Machining(),
        .. Fit(lever, text),
        .. Marks(lever, profile, text),
        "SAFETY: HOLD IN A NEST, NOT IN THE HAND, TO DRILL AND REAM. EYE PROTECTION. ALLOY MAY HOLD LEAD: WET OR EXTRACTED, NO DRY GRINDING, WASH HANDS. FOLLOW LOCAL RULES.",
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

    private static IEnumerable<string> General(Lever lever, Profile profile, DimensionText text)
    {
        yield return "(SIZES IN ROUND BRACKETS) FOLLOW FROM OTHERS AND ARE NOT TO BE CHECKED.";
        SizeValue fillet = lever.Sizes[LeverFields.Fillet], round = lever.Sizes[LeverFields.EdgeRound];
        string blends = fillet.Millimetres > 0 ? "FILLETS WITHOUT A SIZE R" + text.Number(fillet.Nominal) : "INNER CORNERS WITHOUT A SIZE SHARP";
        yield return blends + (round.Millimetres > 0 ? ", OUTER CORNERS R" + text.Number(round.Nominal) + "." : ", OUTER CORNERS SHARP.");
        if (lever.Sizes[LeverFields.ShoulderStart].Millimetres == 0)
            yield return (lever.Forms.Shoulders != LeverFields.Concave && fillet.Millimetres > 0 ? "SHOULDER FILLETS" : "SHOULDERS") + " LEAVE THE HEAD'S SIDES LEVEL WITH THE PIVOT AXIS.";
        if (lever.Forms.Arms == LeverFields.Tapered)
            yield return "ARMS TAPER STRAIGHT FROM THE LEVEL SHOWN TO THE PAD'S THICKNESS AT THE TOP OF THE PAD.";
        if (MassNote.Of(LeverMass.Of(lever).CubicCentimetres, profile.Values.Get(CommonFields.Material)) is { } mass)
            yield return mass;
        if (profile.Values.Get(CommonFields.Finish) is { Length: > 0 } finish)
            yield return "FINISH: " + finish.ToUpperInvariant() + ".";
        double height = lever.SideProfile.Box.Height, width = lever.ForkProfile.Box.Width;
        yield return "REST AS CAST " + AsCastNote.Of(profile.Values.Get(CommonFields.Material), profile.Values.Get(CommonFields.Process), Length.FromMillimetres(Math.Max(height, width)), text) + ".";
    }

    private static IEnumerable<string> Machining()
    {
        yield return "MACHINE: HOLE, HEAD FACES, PADS, TONGUE FLANKS AND NOSE.";
        yield return LeverSymbols.Note;
        yield return "NO BURR IN THE HOLE.";
    }

    private static IEnumerable<string> Fit(Lever lever, DimensionText text)
    {
        if (!lever.Hole.Taper.IsParallel)
            yield return "TAPERED HOLE IS HANDED: MARK THE SIDE OF ITS LARGE END (INK OR DOT) BEFORE FITTING.";
        if (LeverHoleNote.Clearance(lever, text) is { } clearance)
            yield return clearance;
        yield return "ONE PAD MAY STAND BEFORE THE OTHER BY AT MOST " + text.Number(lever.Sizes[LeverFields.PadOffset].Nominal) + ".";
    }

    private static IEnumerable<string> Marks(Lever lever, Profile profile, DimensionText text)
    {
        if (lever.Mark is { } mark)
        {
            yield return "RAISED MARK \"" + mark.Text + "\" ON " + (mark.Place == LeverFields.ArmBack ? "BACK OF RIGHT ARM, ON THE ARM'S MID-LINE" : "RIGHT HEAD FACE, ON THE ARMS' MID-LINE")
                + ", PLACED BY ITS MIDDLE; LETTERS " + text.Number(mark.LetterHeight) + " HIGH, " + text.Number(mark.Height) + " PROUD.";
        }

        if (profile.Values.Get(CommonFields.Reproduction))
            yield return "REPRODUCTION PART: SELL AND MARK IT AS SUCH.";
    }
}
