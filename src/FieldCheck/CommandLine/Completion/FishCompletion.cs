namespace FieldCheck.CommandLine.Completion;

/// <summary>Completion for fish, 3.0 and later.</summary>
internal static class FishCompletion
{
    private const string Files = "-a '(__fish_complete_suffix .toml)'";

    internal static string Script() => $"""
        # Completion of fieldcheck for fish, made by: fieldcheck completion fish
        complete -c fieldcheck -f
        complete -c fieldcheck -n __fish_use_subcommand -a '{CommandWords.All.Spaced()}'
        complete -c fieldcheck -n __fish_use_subcommand {Files}
        complete -c fieldcheck -n '__fish_seen_subcommand_from {CompletionScript.OnFiles.Spaced()}' {Files}
        complete -c fieldcheck -n '__fish_seen_subcommand_from {CommandWords.Completion}' -a '{Shells.All.Spaced()}'
        {Option.All.Lines(Line)}
        """;

    private static string Line(Option option)
    {
        string condition = option.Commands.IsEmpty ? "" : $"-n '__fish_seen_subcommand_from {option.Commands.Spaced()}' ";
        string value = option switch
        {
            { Value: null } => "",
            { IsFile: true } => " -r -F",
            { Choices.IsEmpty: true } => " -x",
            _ => $" -x -a '{option.Choices.Spaced()}'",
        };
        return $"complete -c fieldcheck {condition}-l {option.Name[2..]}{value}";
    }
}
