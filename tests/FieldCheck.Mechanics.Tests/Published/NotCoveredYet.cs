namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>The one list of printed figures that nothing here is held against, and why.</summary>
internal static class NotCoveredYet
{
    internal static readonly (string File, string Reason)[] Files =
    [
        ("09-sections-and-stress.toml", "Section properties and stresses: Mechanics has no sections yet."),
    ];
}
