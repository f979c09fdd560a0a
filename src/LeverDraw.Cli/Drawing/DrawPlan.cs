using LeverDraw.Cli.Files;
using LeverDraw.Drafting.Sheets;
using LeverDraw.Parts;
using LeverDraw.Profiles;

namespace LeverDraw.Cli.Drawing;

/// <summary>What will be drawn into which files, settled before anything is drawn.</summary>
internal static class DrawPlan
{
    public static IReadOnlyList<DrawJob> Make(IReadOnlyList<(string Path, BuiltPart Part)> parts, DrawChoices choices, IFileSystem files, List<UsageFault> faults)
    {
        List<DrawJob> jobs = [];
        HashSet<string> inputs = new(StringComparer.OrdinalIgnoreCase);
        foreach ((string path, BuiltPart part) in parts)
        {
            inputs.UnionWith(part.Profile.Files.Select(files.Canonical));
            BuiltSheet[] sheets = [.. Wanted(part, choices)];
            if (sheets.Length == 0)
            {
                faults.Add(part.Kind.SheetNames.IsEmpty
                    ? new UsageFault($"'{path}' is of kind {part.Kind.Name}, which has no sheet of its own.", "Draw a setup that names it, or take 'fits --sheet'.")
                    : new UsageFault(
                    $"'{path}' is of kind {part.Kind.Name} and has no sheet {string.Join(" or ", choices.Sheets)}.",
                    $"Its sheets: {string.Join(", ", part.Kind.SheetNames)}."));
            }

            if (!choices.Tabled)
                jobs.AddRange(sheets.Select(s => JobOf(path, part, s, choices)));
        }

        if (choices.Tabled)
            jobs.AddRange(Tabled(parts, choices));

        Check(jobs, inputs, files, faults);
        return jobs;
    }

    /// <summary>One sheet that is not a part's own, named after a profile.</summary>
    public static IReadOnlyList<DrawJob> Make(Profile profile, BuiltSheet sheet, DrawChoices choices, IFileSystem files, List<UsageFault> faults)
    {
        DrawJob[] jobs = [JobOf(profile.Path, sheet, choices.SheetFor(profile), choices)];
        Check(jobs, [.. profile.Files.Select(files.Canonical)], files, faults);
        return jobs;
    }

    /// <summary>One sheet for all profiles of a kind, named after the first.</summary>
    private static IEnumerable<DrawJob> Tabled(IEnumerable<(string Path, BuiltPart Part)> parts, DrawChoices choices) =>
        parts.GroupBy(p => p.Part.Kind.Name, StringComparer.Ordinal).SelectMany(kind =>
        {
            (string path, BuiltPart first) = kind.First();
            return Wanted(first, choices).Select(s => JobOf(path, first, TabledSheet.Of([.. kind.Select(p => p.Part)], s.Name), choices));
        });

    // A sheet that plots itself has no letters to put into a table.
    private static IEnumerable<BuiltSheet> Wanted(BuiltPart part, DrawChoices choices)
    {
        bool all = choices.Sheets.IsEmpty || (choices.SheetsUnasked && !part.Kind.SheetNames.Any(choices.Sheets.Contains));
        return part.Sheets.Where(s => !choices.Tabled || s.Plot is null).Where(s => all ? s.IsUsual : choices.Sheets.Contains(s.Name));
    }

    private static DrawJob JobOf(string path, BuiltPart part, BuiltSheet sheet, DrawChoices choices) => JobOf(path, sheet, choices.SheetFor(part.Profile), choices);

    /// <param name="path">The profile's, or what stands for it in the files' names.</param>
    public static DrawJob JobOf(string path, BuiltSheet sheet, SheetOptions options, DrawChoices choices) =>
        new(path, sheet, options, [.. choices.Writers.Select(w => new PlannedFile(
            Join(choices.Folder, OutputName.Of(path, sheet.Name, w.Extension, DrawChoices.FileUnit(options.Units), choices.OutlinesOnly)), w))]);

    // Case is left out of account: what differs only in it is one file on other systems.
    public static void Check(IEnumerable<DrawJob> jobs, HashSet<string> inputs, IFileSystem files, List<UsageFault> faults)
    {
        Dictionary<string, string> taken = new(StringComparer.OrdinalIgnoreCase);
        foreach (DrawJob job in jobs)
        {
            foreach (PlannedFile file in job.Files)
            {
                string target = files.Canonical(file.Path);
                if (inputs.Contains(target))
                    faults.Add(new UsageFault($"'{file.Path}' would overwrite a profile.", "Take another folder with --out."));
                else if (!taken.TryAdd(target, job.Profile))
                    faults.Add(new UsageFault($"'{taken[target]}' and '{job.Profile}' would both be written to '{file.Path}'.", "Draw them into different folders."));
            }
        }
    }

    public static string Join(string folder, string name) => folder == "." ? name : Path.Combine(folder, name);
}
