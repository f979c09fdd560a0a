using LeverDraw.Cli.Drawing;
using LeverDraw.Diagnostics;

namespace LeverDraw.Cli.Reporting;

/// <summary>What a command found out, printed in the form asked for, and the files it wrote beside.</summary>
/// <param name="Ok">False: nothing was written and there is nothing to print but the findings.</param>
/// <param name="Told">Findings on the way.</param>
/// <param name="Written">Empty when no sheet was asked for.</param>
internal sealed record Answer(bool Ok, IReadOnlyList<Diagnostic> Told, IReadOnlyList<RenderedFile> Written)
{
    /// <param name="json">Prints findings and files itself, also when not <see cref="Ok"/>; the other two are called only when it is.</param>
    public int Print(Surroundings surroundings, PrintForm form, Action<TextWriter> json, Action<TextWriter> csv, Action<TextWriter> text)
    {
        int exit = Ok ? ExitCode.Done : ExitCode.InputFaults;
        if (form == PrintForm.Json)
        {
            json(surroundings.Out);
            return exit;
        }

        new DiagnosticPrinter(surroundings.Files, surroundings.Error, surroundings.ColourError).Print(Told);
        if (!Ok)
        {
            surroundings.Error.WriteLine("Nothing was written.");
            return exit;
        }

        (form == PrintForm.Csv ? csv : text)(surroundings.Out);
        // With CSV, standard output is one table and nothing else.
        TextWriter list = form == PrintForm.Csv ? surroundings.Error : surroundings.Out;
        if (Written.Count > 0 && form == PrintForm.Text)
            list.WriteLine();
        foreach (RenderedFile file in Written)
            list.WriteLine(file.Path);
        return exit;
    }
}
