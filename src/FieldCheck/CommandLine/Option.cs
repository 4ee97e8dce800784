namespace FieldCheck.CommandLine;

/// <summary>One option of the command line.</summary>
/// <param name="Name">As typed, with its dashes.</param>
/// <param name="Value">What its value is called in messages; null: it takes none.</param>
/// <param name="IsForCheckOnly">True: it belongs to the command check.</param>
internal sealed record Option(string Name, string? Value = null, bool IsForCheckOnly = false)
{
    internal const string Json = "--json";
    internal const string At = "--at";
    internal const string Units = "--units";
    internal const string Help = "--help";
    internal const string Version = "--version";
    internal const string Paths = "--paths";
    internal const string NoColor = "--no-color";
    internal const string Plain = "--plain";

    /// <summary>Every option there is.</summary>
    internal static IReadOnlyList<Option> All { get; } =
    [
        new(Json, IsForCheckOnly: true),
        new(At, "PLACE", IsForCheckOnly: true),
        new(Units, "us or si", IsForCheckOnly: true),
        new(Help),
        new(Version),
        new(Paths),
        new(NoColor),
        new(Plain),
    ];
}
