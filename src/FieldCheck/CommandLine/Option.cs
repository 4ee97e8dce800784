using System.Collections.Immutable;

namespace FieldCheck.CommandLine;

/// <summary>One option of the command line.</summary>
/// <param name="Name">As typed, with its dashes.</param>
/// <param name="Value">What its value is called in messages; null: it takes none.</param>
/// <param name="Commands">The commands that it belongs to; empty: it stands anywhere.</param>
internal sealed record Option(string Name, string? Value, params ImmutableArray<string> Commands)
{
    internal const string Json = "--json";
    internal const string At = "--at";
    internal const string Jobs = "--jobs";
    internal const string Units = "--units";
    internal const string Working = "--working";
    internal const string About = "--about";
    internal const string Combination = "--combination";
    internal const string Short = "--short";
    internal const string NoStepNames = "--no-step-names";
    internal const string Output = "--output";
    internal const string Date = "--date";
    internal const string Force = "--force";
    internal const string Help = "--help";
    internal const string Version = "--version";
    internal const string Paths = "--paths";
    internal const string Licenses = "--licenses";
    internal const string NoColor = "--no-color";
    internal const string Plain = "--plain";

    /// <summary>Every option there is.</summary>
    internal static IReadOnlyList<Option> All { get; } =
    [
        new(Json, null, CommandWords.Check),
        new(At, "PLACE", CommandWords.Check, CommandWords.Batch),
        new(Jobs, "N", CommandWords.Batch),
        new(Working, null, CommandWords.Check),
        new(Units, "us or si", CommandWords.Check, CommandWords.Batch, CommandWords.Working, CommandWords.Report)
        {
            Choices = ["us", "si"],
        },
        new(About, "PLACE", CommandWords.Working),
        new(Combination, "NAME", CommandWords.Working),
        new(Short, null, CommandWords.Working, CommandWords.Report),
        new(NoStepNames, null, CommandWords.Working),
        new(Output, "NAME", CommandWords.Report) { IsFile = true },
        new(Date, "DATE", CommandWords.Report),
        new(Force, null, CommandWords.Report),
        new(Help, null),
        new(Version, null),
        new(Paths, null),
        new(Licenses, null),
        new(NoColor, null),
        new(Plain, null),
    ];

    /// <summary>All that its value can be; empty where that is open.</summary>
    internal ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>True: its value names a file.</summary>
    internal bool IsFile { get; init; }

    /// <summary>What is said of it where a command stands that it does not belong to; null: it may stand there.</summary>
    /// <param name="command">The command; null for none.</param>
    internal string? RefusedBy(string? command)
    {
        string told = Value is null ? Name : $"{Name} {Value}";
        return Commands switch
        {
            [] => null,
            _ when command is not null && Commands.Contains(command) => null,
            [string only] => $"{Name} belongs to the command {only}: fieldcheck {only} FILE {told}.",
            _ => $"{Name} belongs to the commands {string.Join(", ", Commands[..^1])} and {Commands[^1]}: fieldcheck {Commands[0]} FILE {told}.",
        };
    }
}
