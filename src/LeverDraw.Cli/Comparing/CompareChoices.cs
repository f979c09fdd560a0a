using LeverDraw.Cli.Drawing;
using LeverDraw.Cli.Reporting;
using LeverDraw.Comparison;

namespace LeverDraw.Cli.Comparing;

/// <summary>What <c>compare</c> was asked for, all checked.</summary>
/// <param name="TableOnly">No sheet; any number of variants.</param>
internal sealed record CompareChoices(Alignment Alignment, bool TableOnly, PrintForm Print, DrawChoices Output);
