using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Units;

namespace LeverDraw.Profiles;

/// <summary>Reads a profile with all it extends, and tells every fault at once. Never throws for what a file holds.</summary>
public static class ProfileReader
{
    /// <param name="path">The profile's path, as the source understands it.</param>
    /// <param name="kinds">The part kinds there are.</param>
    public static Checked<Profile> Read(string path, IProfileSource source, ImmutableArray<PartFields> kinds)
    {
        ProfileChain chain = ProfileChain.Load(path, source);
        if (chain.Links.IsEmpty)
            return Checked<Profile>.Bad(chain.AllFaults.SelectMany(f => f.All()));
        (PartFields? kind, int alike) = KindOf(chain, kinds);
        // What a profile of another kind holds is of no use here, and would only be told as unknown.
        ProfileChain used = alike == chain.Links.Length ? chain : chain with { Links = chain.Links[..alike], IsWhole = false };
        ChainReading reading = new(path, kind, [.. kinds.Select(k => k.Kind)], used);
        MergedValues values = reading.Read();
        ImmutableArray<Diagnostic> faults = [.. chain.AllFaults.SelectMany(f => f.All())];
        return Checked<Profile>.From(faults, () => new Profile(
            kind!.Kind, values.Get(CommonFields.Name), path, CommonFields.UnitOf(values.Get(CommonFields.Units)), values, [.. chain.Links.Select(l => l.Path)]));
    }

    /// <summary>The nearest stated kind, and how many files of the chain, from the nearest on, are of it.</summary>
    private static (PartFields? Kind, int Alike) KindOf(ProfileChain chain, ImmutableArray<PartFields> kinds)
    {
        string? word = null;
        for (int i = 0; i < chain.Links.Length; i++)
        {
            if (chain.Links[i].Document.Find(CommonFields.Kind.Name)?.Value is not RawText { Value: var stated } raw)
                continue;
            if (word is null)
                TellUnknown(stated, raw.Span, chain.Links[i].Faults, kinds);
            else if (word != stated)
            {
                ChainLink child = chain.Links[i - 1];
                child.Faults.Add(
                    DiagnosticCatalogue.ExtendsOtherKind, child.Document.Find(CommonFields.Extends.Name)?.Value?.Span, CommonFields.Extends.Name,
                    FieldReader.Shown(word), chain.Links[i].Path, FieldReader.Shown(stated));
                return (Known(word, kinds), i);
            }
            word ??= stated;
        }
        return (Known(word, kinds), chain.Links.Length);
    }

    private static PartFields? Known(string? word, ImmutableArray<PartFields> kinds) => kinds.FirstOrDefault(k => k.Kind == word);

    private static void TellUnknown(string stated, TextSpan span, FileFaults faults, ImmutableArray<PartFields> kinds)
    {
        // An empty one is told with the other empty texts.
        if (Known(stated, kinds) is not null || string.IsNullOrWhiteSpace(stated))
            return;
        string? near = NearestName.Of(stated, kinds.Select(k => k.Kind));
        faults.AddWithHint(DiagnosticCatalogue.UnknownKind, span, CommonFields.Kind.Name,
            near is null ? null : "Did you mean \"" + near + "\"?", FieldReader.Shown(stated), string.Join(", ", kinds.Select(k => k.Kind)));
    }
}
