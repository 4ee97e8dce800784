namespace FieldCheck.Sheet.Tests;

/// <summary>A test of what only Unix has, as pipes that lie among files; skipped elsewhere.</summary>
internal sealed class UnixFactAttribute : FactAttribute
{
    internal const string WhyNot = "Windows has no pipes and devices among its files.";

    public UnixFactAttribute() => Skip = OperatingSystem.IsWindows() ? WhyNot : null;
}

/// <summary>The same with data.</summary>
internal sealed class UnixTheoryAttribute : TheoryAttribute
{
    public UnixTheoryAttribute() => Skip = OperatingSystem.IsWindows() ? UnixFactAttribute.WhyNot : null;
}
