using LeverDraw.Cli.Files;

namespace LeverDraw.Cli.Drawing;

/// <summary>
/// Writes all files of a run or none: each first beside its place under another name; then what stands there already is copied aside;
/// only when all that is done are they renamed, and if one cannot be, those before it get their earlier contents back.
/// </summary>
internal sealed class OutputBatch(IFileSystem files, CancellationToken stop)
{
    private const int MostNames = 100;

    /// <exception cref="OutputException">They cannot be written. All is as it was, or the message names every file that is not.</exception>
    public void Write(string folder, IReadOnlyList<RenderedFile> rendered)
    {
        List<WaitingFile> waiting = [];
        IReadOnlyList<string> made = [];
        bool done = false;
        try
        {
            made = MakeFolder(folder);
            foreach (RenderedFile file in rendered)
            {
                stop.ThrowIfCancellationRequested();
                if (files.FolderExists(file.Path))
                    throw new OutputException($"'{file.Path}' is a folder. Move it away, or take another folder with --out.");
                string beside = FreeName(file.Path, "part");
                files.WriteNew(beside, file.Bytes);
                waiting.Add(new WaitingFile(beside, file.Path));
            }

            foreach (WaitingFile file in waiting.Where(w => files.FileExists(w.Target)))
            {
                stop.ThrowIfCancellationRequested();
                string earlier = FreeName(file.Target, "earlier");
                files.Copy(file.Target, earlier);
                file.Earlier = earlier;
            }

            // From here on it is a matter of renaming, and stopping would leave some files new and some old.
            foreach (WaitingFile file in waiting)
            {
                files.Replace(file.Beside, file.Target);
                file.IsPlaced = true;
            }

            done = true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OutputException($"The files cannot be written to '{folder}': {e.Message.ReplaceLineEndings(" ")} {PutBack(waiting)}", e);
        }
        finally
        {
            TakeAway(
                waiting.Where(w => !w.IsPlaced).Select(w => w.Beside).Concat(waiting.Where(w => done || !w.IsPlaced).Select(w => w.Earlier).OfType<string>()),
                done || waiting.Any(w => w.IsPlaced) ? [] : made);
        }
    }

    /// <summary>Gives every renamed file its earlier contents back, or takes it away when there was none.</summary>
    /// <returns>What is to be told of it.</returns>
    private string PutBack(List<WaitingFile> waiting)
    {
        foreach (WaitingFile file in waiting.Where(w => w.IsPlaced).Reverse())
        {
            try
            {
                if (file.Earlier is { } earlier)
                    files.Replace(earlier, file.Target);
                else
                    files.Remove(file.Target);
                file.IsPlaced = false;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // Told below, with where its earlier contents are.
            }
        }

        string[] renewed = [.. waiting.Where(w => w.IsPlaced).Select(w => $"'{w.Target}'" + (w.Earlier is { } earlier ? $" (its earlier contents are in '{earlier}')" : ""))];
        return renewed.Length == 0
            ? "Nothing was written."
            : "These are new already and could not be put back: " + string.Join(", ", renewed) + "; all others are as they were.";
    }

    private IReadOnlyList<string> MakeFolder(string folder)
    {
        if (files.FileExists(folder))
            throw new OutputException($"'{folder}' is a file, not a folder. Take another folder with --out.");
        return files.MakeFolder(folder);
    }

    private string FreeName(string path, string extension)
    {
        string folder = Path.GetDirectoryName(path) ?? "";
        for (int n = 1; n <= MostNames; n++)
        {
            string name = Path.Combine(folder, FormattableString.Invariant($".{Path.GetFileName(path)}.{n}.{extension}"));
            // One that is there belongs to another run, perhaps one still at work.
            if (!files.FileExists(name))
                return name;
        }

        throw new OutputException($"'{folder}' is full of unfinished files of earlier runs (*.{extension}). Remove them.");
    }

    private void TakeAway(IEnumerable<string> unfinished, IEnumerable<string> folders)
    {
        try
        {
            foreach (string file in unfinished.Where(files.FileExists))
                files.Remove(file);
            foreach (string folder in folders.Where(files.FolderExists))
                files.RemoveEmptyFolder(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The first fault is the one to tell.
        }
    }

    private sealed record WaitingFile(string Beside, string Target)
    {
        /// <summary>Where a copy of what stood there waits; null when nothing did.</summary>
        public string? Earlier { get; set; }

        public bool IsPlaced { get; set; }
    }
}
