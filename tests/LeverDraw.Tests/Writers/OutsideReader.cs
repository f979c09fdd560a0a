using System.Diagnostics;
using System.Text.Json;

namespace LeverDraw.Tests.Writers;

/// <summary>Programs that read our files and share no code with us. tests/all installs them.</summary>
internal static class OutsideReader
{
    public const string Ezdxf = "ezdxf";
    public const string Npm = "npm";
    public const string Poppler = "poppler";

    private static readonly Lazy<string?> Python = new(() =>
        new[] { "/usr/bin/python3", "python3" }.FirstOrDefault(p => Runs(p, "-c", "import ezdxf")));

    private static readonly Lazy<bool> Node = new(() =>
        Directory.Exists(Path.Combine(Scripts, "node_modules", "dxf-parser")) && Runs("node", "--version"));

    private static readonly Lazy<bool> PopplerTools = new(() => Runs("pdfinfo", "-v") && Runs("pdftoppm", "-v"));

    private static string Scripts => Path.Combine(Root, "tests", "readers");

    private static string Root
    {
        get
        {
            string at = AppContext.BaseDirectory;
            while (!File.Exists(Path.Combine(at, "LeverDraw.sln")))
                at = Path.GetDirectoryName(at) ?? throw new InvalidOperationException("The tests do not run inside the repository.");
            return at;
        }
    }

    public static bool IsThere(string reader) => reader switch
    {
        Ezdxf => Python.Value is not null,
        Npm => Node.Value,
        Poppler => PopplerTools.Value,
        _ => throw new ArgumentOutOfRangeException(nameof(reader)),
    };

    /// <summary>What read_dxf.py found in each file.</summary>
    public static JsonElement[] ReadByEzdxf(IEnumerable<byte[]> dxf) =>
        WithFiles(dxf, ".dxf", files => Json(Run(Python.Value ?? "python3", [Path.Combine(Scripts, "read_dxf.py"), .. files])));

    /// <summary>What read_dxf.cjs found in each file: one property for each of its two parsers.</summary>
    public static JsonElement[] ReadByNpm(IEnumerable<byte[]> dxf) =>
        WithFiles(dxf, ".dxf", files => Json(Run("node", [Path.Combine(Scripts, "read_dxf.cjs"), .. files])));

    public static T WithFile<T>(byte[] bytes, string extension, Func<string, T> use) =>
        WithFiles([bytes], extension, files => use(files[0]));

    private static T WithFiles<T>(IEnumerable<byte[]> contents, string extension, Func<string[], T> use)
    {
        string folder = Directory.CreateTempSubdirectory("leverdraw-test-").FullName;
        try
        {
            string[] files = [.. contents.Select((_, i) => Path.Combine(folder, FormattableString.Invariant($"sheet{i}{extension}")))];
            foreach ((string file, byte[] bytes) in files.Zip(contents))
                File.WriteAllBytes(file, bytes);
            return use(files);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Standard output of a program that must succeed.</summary>
    public static string Run(string program, params string[] arguments)
    {
        (int exit, string output, string errors) = Start(program, arguments);
        return exit == 0 ? output : throw new InvalidOperationException($"{program} failed: {errors}");
    }

    private static JsonElement[] Json(string text) => [.. JsonDocument.Parse(text).RootElement.EnumerateArray()];

    private static bool Runs(string program, params string[] arguments)
    {
        try
        {
            return Start(program, arguments).Exit == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    private static (int Exit, string Output, string Errors) Start(string program, string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, errors.Result);
    }
}
