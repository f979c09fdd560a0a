using System.Collections.Immutable;
using LeverDraw.Drafting.Annotations;
using LeverDraw.Drafting.Dimensions;
using LeverDraw.Profiles;
using LeverDraw.Standards;
using LeverDraw.Tolerancing;
using LeverDraw.Units;

namespace LeverDraw.Parts.AdjustingLever.Sheets;

/// <summary>The notes of the finished lever's sheet, for the machinist.</summary>
internal static class LeverNotes
{
    public static ImmutableArray<string> Finished(Lever lever, Profile profile, DimensionText text)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        SizeValue fillet = lever.Sizes[LeverFields.Fillet];
        SizeValue round = lever.Sizes[LeverFields.EdgeRound];
        string blends = fillet.Millimetres > 0 ? "FILLETS WITHOUT A SIZE R" + text.Number(fillet.Nominal) : "INNER CORNERS WITHOUT A SIZE SHARP";
        blends += round.Millimetres > 0 ? ", OUTER CORNERS R" + text.Number(round.Nominal) + "." : ", OUTER CORNERS SHARP.";
        notes.Add(blends);
        notes.Add("MACHINED: HOLE, HEAD FACES, PADS, TONGUE FLANKS AND NOSE. REST AS CAST, TO THE FOUNDRY'S AGREED TOLERANCE.");
        if (profile.Values.Get(CommonFields.Finish) is { Length: > 0 } finish)
            notes.Add("FINISH: " + finish.ToUpperInvariant() + ".");
        notes.Add("BREAK MACHINED EDGES " + text.Number(Length.FromMillimetres(0.2)) + " TO " + text.Number(Length.FromMillimetres(0.4)) + ". NO BURR IN THE HOLE.");
        if (!lever.Hole.Taper.IsParallel)
            notes.Add("TAPERED HOLE IS HANDED: MARK THE SIDE OF ITS LARGE END (INK OR DOT) BEFORE FITTING.");
        notes.Add("ONE PAD MAY STAND BEFORE THE OTHER BY AT MOST " + text.Number(lever.Sizes[LeverFields.PadOffset].Nominal) + ".");
        notes.Add("(SIZES IN ROUND BRACKETS) FOLLOW FROM OTHERS AND ARE NOT TO BE CHECKED.");
        if (lever.Mark is { } mark)
            notes.Add("RAISED MARK \"" + mark.Text + "\" ON " + (mark.Place == LeverFields.ArmBack ? "BACK OF RIGHT ARM" : "RIGHT HEAD FACE") + ", LETTERS " + text.Number(mark.LetterHeight) + " HIGH, " + text.Number(mark.Height) + " PROUD.");
        if (profile.Values.Get(CommonFields.Reproduction))
            notes.Add("REPRODUCTION PART: SELL AND MARK IT AS SUCH.");
        notes.Add("SAFETY: HOLD IN A NEST, NOT IN THE HAND, TO DRILL AND REAM. EYE PROTECTION. ALLOY MAY HOLD LEAD: WET OR EXTRACTED, NO DRY GRINDING, WASH HANDS. FOLLOW LOCAL RULES.");
        return notes.ToImmutable();
    }

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
}
