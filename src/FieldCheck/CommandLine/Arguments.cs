using System.Collections.Immutable;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.CommandLine;

/// <summary>A command line as read.</summary>
/// <remarks>
/// Read by hand: the grammar is three commands and eight options, and the parsing library that was tried doubles the
/// time to start, answers wrong usage with the status that means "does not hold", and takes a misspelt option for a
/// file.
/// </remarks>
/// <param name="Request">What it asks for.</param>
/// <param name="NoColor">True: no colour.</param>
/// <param name="Plain">True: labelled sentences, one fact a line.</param>
internal sealed record Arguments(Request Request, bool NoColor, bool Plain)
{
    /// <summary>The commands, as typed.</summary>
    internal static IReadOnlyList<string> Commands { get; } = [Check, Presets];

    private const string Check = "check";
    private const string Presets = "presets";

    /// <summary>Reads a command line.</summary>
    /// <param name="words">As the shell gave them, without the program's name.</param>
    internal static Reading<Arguments> Read(ImmutableArray<string> words) => Words.Part(words) switch
    {
        Reading<Words>.Refused refused => Refuse<Arguments>(refused.Text),
        Reading<Words>.Accepted parted => Of(parted.Value),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>A command that a mistyped word may have meant, or an option typed without its dashes.</summary>
    /// <param name="word">The word.</param>
    /// <returns>What would be right, or null.</returns>
    internal static string? Meant(string word) =>
        NearSpelling.Of(word, Commands) is [string near, ..]
            ? near
            : Option.All.Select(option => option.Name).FirstOrDefault(name => name.TrimStart('-') == word);

    private static Reading<Arguments> Of(Words words) => RequestOf(words) switch
    {
        Reading<Request>.Refused refused => Refuse<Arguments>(refused.Text),
        Reading<Request>.Accepted request => new Reading<Arguments>.Accepted(
            new(request.Value, words.Has(Option.NoColor), words.Has(Option.Plain))),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static Reading<Request> RequestOf(Words words)
    {
        string? command = words.CommandMayStand && words.Operands is [string first, ..] && Commands.Contains(first)
            ? first
            : null;
        ImmutableArray<string> operands = command is null ? words.Operands : words.Operands[1..];
        if (words.Has(Option.Help))
        {
            return Accept(new Request.Help(command));
        }

        if (words.Has(Option.Version))
        {
            return Accept(new Request.Version());
        }

        if (command != Check && OfCheck(words) is string lost)
        {
            return Refuse<Request>($"{lost} belongs to the command check: fieldcheck check FILE {lost}.");
        }

        return command switch
        {
            Check => CheckOf(words, operands),
            Presets => Alone(new Request.Presets(), "presets", operands),
            _ when words.Has(Option.Paths) => Alone(new Request.Paths(), Option.Paths, operands),
            _ => FormOf(operands),
        };
    }

    private static string? OfCheck(Words words) => Option.All
        .Where(option => option.IsForCheckOnly)
        .Select(option => option.Name)
        .FirstOrDefault(words.Has);

    private static Reading<Request> CheckOf(Words words, ImmutableArray<string> files)
    {
        string? units = words.ValuesOf(Option.Units).LastOrDefault();
        return units switch
        {
            not (null or "us" or "si") => Refuse<Request>($"--units takes us or si, not '{units}'."),
            _ when files.IsEmpty =>
                Refuse<Request>("check needs a file: fieldcheck check bearer.toml, or - for standard input."),
            _ when files.Contains("") => Refuse<Request>("A file has no name: '' stands among the files."),
            _ when files.Count(file => file == "-") > 1 =>
                Refuse<Request>("- stands twice: standard input can be read once."),
            _ => Accept(new Request.Check(files, words.Has(Option.Json), words.ValuesOf(Option.At), UnitsOf(units))),
        };
    }

    private static UnitSystem? UnitsOf(string? word) => word switch
    {
        "us" => UnitSystem.Us,
        "si" => UnitSystem.Si,
        _ => null,
    };

    private static Reading<Request> FormOf(ImmutableArray<string> operands)
    {
        switch (operands)
        {
            case []:
                return Accept(new Request.Form(null));
            case [""]:
                return Refuse<Request>("The file has no name: '' stands where it should.");
            case [string file]:
                return Accept(new Request.Form(file));
        }

        string first = operands[0];
        if (first.AsSpan().IndexOfAny("./\\") >= 0)
        {
            return Refuse<Request>(
                $"The form takes one file. To check several: fieldcheck check {string.Join(' ', operands)}.");
        }

        string? meant = Meant(first);
        return Refuse<Request>($"There is no command {first}." + (meant is null ? "" : $" Did you mean {meant}?"));
    }

    private static Reading<Request> Alone(Request request, string name, ImmutableArray<string> operands) =>
        operands.IsEmpty
            ? Accept(request)
            : Refuse<Request>($"{name} takes nothing after it, and '{operands[0]}' stands there.");

    private static Reading<Request> Accept(Request request) => new Reading<Request>.Accepted(request);

    private static Reading<T> Refuse<T>(string text) => new Reading<T>.Refused(text, 0);
}
