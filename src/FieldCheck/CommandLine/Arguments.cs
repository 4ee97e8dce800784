using System.Collections.Immutable;
using FieldCheck.CommandLine.Completion;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.CommandLine;

/// <summary>A command line as read.</summary>
/// <remarks>
/// Read by hand: the grammar is a few commands and a dozen options, and the parsing library that was tried doubles the
/// time to start, answers wrong usage with the status that means "does not hold", and takes a misspelt option for a
/// file.
/// </remarks>
/// <param name="Request">What it asks for.</param>
/// <param name="NoColor">True: no colour.</param>
/// <param name="Plain">True: labelled sentences, one fact a line.</param>
internal sealed record Arguments(Request Request, bool NoColor, bool Plain)
{
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
        NearSpelling.Of(word, CommandWords.All) is [string near, ..]
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
        string? command = words.CommandMayStand && words.Operands is [string first, ..] && CommandWords.All.Contains(first)
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

        if (RefusedBy(words, command) is string refusal)
        {
            // "rport FILE --output NAME": the word is what is wrong, not the option.
            bool isMistyped = command is null && words.CommandMayStand && operands is [string typed, ..] && Meant(typed) is not null;
            return Refuse<Request>(isMistyped ? NoCommand(operands[0]) : refusal);
        }

        return command switch
        {
            CommandWords.Check => FileRequests.Check(words, operands),
            CommandWords.Batch => FileRequests.Batch(words, operands),
            CommandWords.Working => FileRequests.Working(words, operands),
            CommandWords.Report => FileRequests.Report(words, operands),
            CommandWords.Presets => Alone(new Request.Presets(), CommandWords.Presets, operands),
            CommandWords.Completion => CompletionFor(operands),
            _ when words.Has(Option.Licenses) => Alone(new Request.Licenses(), Option.Licenses, operands),
            _ when words.Has(Option.Paths) => Alone(new Request.Paths(), Option.Paths, operands),
            _ => FormOf(operands),
        };
    }

    private static string? RefusedBy(Words words, string? command) => Option.All
        .Where(option => words.Has(option.Name))
        .Select(option => option.RefusedBy(command))
        .FirstOrDefault(refusal => refusal is not null);

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

        return Refuse<Request>(NoCommand(first));
    }

    private static string NoCommand(string word) =>
        $"There is no command {word}." + (Meant(word) is string meant ? $" Did you mean {meant}?" : "");

    private static Reading<Request> CompletionFor(ImmutableArray<string> operands) => operands switch
    {
        [string shell] when Shells.All.Contains(shell) => Accept(new Request.Completion(shell)),
        [string other] => Refuse<Request>($"completion takes {Shells.Told}, not '{other}'."),
        [] => Refuse<Request>($"completion needs a shell: {Shells.Told}."),
        [_, string second, ..] => Refuse<Request>($"completion takes one shell, and '{second}' stands after it."),
    };

    private static Reading<Request> Alone(Request request, string name, ImmutableArray<string> operands) =>
        operands.IsEmpty
            ? Accept(request)
            : Refuse<Request>($"{name} takes nothing after it, and '{operands[0]}' stands there.");

    private static Reading<Request> Accept(Request request) => new Reading<Request>.Accepted(request);

    private static Reading<T> Refuse<T>(string text) => new Reading<T>.Refused(text, 0);
}
