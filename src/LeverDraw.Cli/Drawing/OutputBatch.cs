using LeverDraw.Cli.Files;

namespace LeverDraw.Cli.Drawing;

/// <summary>Writes all files of a run or none: each first beside its place under another name, and only when all are there are they renamed.</summary>
internal sealed class OutputBatch(IFileSystem files, CancellationToken stop)
{
    private const int MostNames = 100;

    /// <exception cref="OutputException">They cannot be written; nothing is left behind.</exception>
    public void Write(string folder, IReadOnlyList<RenderedFile> rendered)
    {
        List<(string Beside, string Target)> waiting = [];
        IReadOnlyList<string> made = [];
        int renamed = 0;
        try
        {
            made = MakeFolder(folder);
            foreach (RenderedFile file in rendered)
            {
                stop.ThrowIfCancellationRequested();
                if (files.FolderExists(file.Path))
                    throw new OutputException($"'{file.Path}' is a folder. Move it away, or take another folder with --out.");
                WriteBeside(file, waiting);
            }

            // From here on it is a matter of renaming, and stopping would leave some files new and some old.
            foreach ((string beside, string target) in waiting)
            {
                files.Replace(beside, target);
                renamed++;
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            string so = renamed == 0 ? "Nothing was written." : "Only the files before it were renewed.";
            throw new OutputException($"The files cannot be written to '{folder}': {e.Message.ReplaceLineEndings(" ")} {so}", e);
        }
        finally
        {
            if (renamed < rendered.Count)
                TakeAway(waiting.Skip(renamed).Select(w => w.Beside), renamed == 0 ? made : []);
        }
    }

    private IReadOnlyList<string> MakeFolder(string folder)
    {
        if (files.FileExists(folder))
            throw new OutputException($"'{folder}' is a file, not a folder. Take another folder with --out.");
        return files.MakeFolder(folder);
    }

    private void WriteBeside(RenderedFile file, List<(string Beside, string Target)> waiting)
    {
        string folder = Path.GetDirectoryName(file.Path) ?? "";
        for (int n = 1; n <= MostNames; n++)
        {
            string beside = Path.Combine(folder, FormattableString.Invariant($".{Path.GetFileName(file.Path)}.{n}.part"));
            // One that is there belongs to another run, perhaps one still at work.
            if (files.FileExists(beside))
                continue;
            files.WriteNew(beside, file.Bytes);
            waiting.Add((beside, file.Path));
            return;
        }

        throw new OutputException($"'{folder}' is full of unfinished files of earlier runs (*.part). Remove them.");
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
}
