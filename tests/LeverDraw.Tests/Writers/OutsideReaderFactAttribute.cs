namespace LeverDraw.Tests.Writers;

/// <summary>A test that needs an outside program. Without it the test is skipped on a desk and fails in CI, where it must be installed.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OutsideReaderFactAttribute : FactAttribute
{
    public OutsideReaderFactAttribute(string reader)
    {
        bool mustRun = string.Equals(Environment.GetEnvironmentVariable("CI"), "true", StringComparison.OrdinalIgnoreCase);
        if (!mustRun && !OutsideReader.IsThere(reader))
            Skip = $"The outside reader {reader} is not installed; tests/all installs it.";
    }
}
