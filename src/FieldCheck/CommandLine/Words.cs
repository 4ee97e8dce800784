using System.Collections.Immutable;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.CommandLine;

/// <summary>The words of a command line, parted into options and operands.</summary>
/// <param name="Options">Every option given, with its value or null, in order.</param>
/// <param name="Operands">Everything else, in order.</param>
/// <param name="CommandMayStand">False: "--" came before the first operand, which is a file whatever its name.</param>
internal sealed record Words(
    ImmutableArray<(string Name, string? Value)> Options,
    ImmutableArray<string> Operands,
    bool CommandMayStand)
{
    private const string EndOfOptions = "--";

    internal bool Has(string option) => Options.Any(given => given.Name == option);

    internal ImmutableArray<string> ValuesOf(string option) =>
        [.. Options.Where(given => given.Name == option).Select(given => given.Value!)];

    /// <summary>Parts the words; an option that does not exist or lacks its value is refused.</summary>
    /// <param name="words">As the shell gave them.</param>
    internal static Reading<Words> Part(ImmutableArray<string> words)
    {
        var options = ImmutableArray.CreateBuilder<(string, string?)>();
        var operands = ImmutableArray.CreateBuilder<string>();
        bool commandMayStand = true;
        for (int i = 0; i < words.Length; i++)
        {
            string word = words[i];
            if (word == EndOfOptions)
            {
                commandMayStand = operands.Count > 0;
                operands.AddRange(words[(i + 1)..]);
                break;
            }

            if (word.Length < 2 || word[0] != '-')
            {
                operands.Add(word);
                continue;
            }

            string? next = i + 1 < words.Length ? words[i + 1] : null;
            switch (Option(word, next))
            {
                case Reading<(string Name, string? Value)>.Accepted found:
                    options.Add(found.Value);
                    i += found.Value.Value is not null && !word.Contains('=') ? 1 : 0;
                    break;
                case Reading<(string Name, string? Value)>.Refused refused:
                    return new Reading<Words>.Refused(refused.Text, i);
            }
        }

        return new Reading<Words>.Accepted(new(options.ToImmutable(), operands.ToImmutable(), commandMayStand));
    }

    private static Reading<(string Name, string? Value)> Option(string word, string? next)
    {
        string[] parts = word.Split('=', 2);
        string name = parts[0] == "-h" ? CommandLine.Option.Help : parts[0];
        string? joined = parts.Length == 2 ? parts[1] : null;
        Option? option = CommandLine.Option.All.FirstOrDefault(known => known.Name == name);
        if (option is null)
        {
            IReadOnlyList<string> near = NearSpelling.Of(name, CommandLine.Option.All.Select(known => known.Name));
            return Refused($"There is no option {name}." + (near is [] ? "" : $" Did you mean {near[0]}?"));
        }

        if (option.Value is null)
        {
            return joined is null ? Accepted(name, null) : Refused($"{name} takes no value.");
        }

        // A value may begin with a minus, an option's two dashes may not.
        string? value = joined ?? (next is null || next.StartsWith("--", StringComparison.Ordinal) ? null : next);
        return string.IsNullOrWhiteSpace(value)
            ? Refused($"{name} needs a value after it: {option.Value}.")
            : Accepted(name, value);
    }

    private static Reading<(string Name, string? Value)> Accepted(string name, string? value) =>
        new Reading<(string, string?)>.Accepted((name, value));

    private static Reading<(string Name, string? Value)> Refused(string text) =>
        new Reading<(string, string?)>.Refused(text, 0);
}
