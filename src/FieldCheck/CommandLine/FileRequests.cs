using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Reporting.Pages;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.CommandLine;

/// <summary>Reads what the commands on beam files ask for.</summary>
internal static class FileRequests
{
    // More threads than any machine has processors only cost memory.
    private const int MostJobs = 1024;

    /// <summary>What check asks for.</summary>
    /// <param name="words">The words of the command line.</param>
    /// <param name="files">The operands behind the command.</param>
    internal static Reading<Request> Check(Words words, ImmutableArray<string> files) =>
        UnitsOf(words).Then(units => files switch
        {
            [] => Refuse("check needs a file: fieldcheck check bearer.toml, or - for standard input."),
            _ when files.Contains("") => Refuse("A file has no name: '' stands among the files."),
            _ when files.Count(file => file == "-") > 1 => Refuse("- stands twice: standard input can be read once."),
            _ when words.Has(Option.Json) && words.Has(Option.Working) =>
                Refuse("--working is text, and --json is not: ask for one of them."),
            _ => Accept(new Request.Check(files, words.Has(Option.Json), words.ValuesOf(Option.At), units)
            {
                HasWorking = words.Has(Option.Working),
            }),
        });

    /// <summary>What batch asks for.</summary>
    /// <param name="words">The words of the command line.</param>
    /// <param name="names">The operands behind the command.</param>
    internal static Reading<Request> Batch(Words words, ImmutableArray<string> names) =>
        UnitsOf(words).Then(units => JobsOf(words).Then(jobs => names switch
        {
            [] => Refuse("batch needs a file or a folder: fieldcheck batch bearers, or - for names on standard input."),
            _ when names.Contains("") => Refuse("A file has no name: '' stands among the files."),
            _ when names.Count(name => name == "-") > 1 => Refuse("- stands twice: standard input can be read once."),
            _ => Accept(new Request.Batch(names, jobs, words.ValuesOf(Option.At), units)),
        }));

    /// <summary>What working asks for.</summary>
    /// <param name="words">The words of the command line.</param>
    /// <param name="files">The operands behind the command.</param>
    internal static Reading<Request> Working(Words words, ImmutableArray<string> files) =>
        UnitsOf(words).Then(units => files switch
        {
            [] => Refuse("working needs a file: fieldcheck working bearer.toml, or - for standard input."),
            [""] => Refuse("The file has no name: '' stands where it should."),
            [string file] => Accept(new Request.Working(file)
            {
                About = words.ValuesOf(Option.About).LastOrDefault(),
                Combination = words.ValuesOf(Option.Combination).LastOrDefault(),
                IsShort = words.Has(Option.Short),
                HasStepNames = !words.Has(Option.NoStepNames),
                Units = units,
            }),
            [_, string second, ..] => Refuse($"working takes one file, and '{second}' stands after it."),
        });

    /// <summary>What report asks for.</summary>
    /// <param name="words">The words of the command line.</param>
    /// <param name="files">The operands behind the command.</param>
    internal static Reading<Request> Report(Words words, ImmutableArray<string> files) =>
        UnitsOf(words).Then(units => (files, words.ValuesOf(Option.Output)) switch
        {
            ([], _) => Refuse("report needs a file: fieldcheck report bearer.toml --output bearer.pdf."),
            ([""], _) => Refuse("The file has no name: '' stands where it should."),
            ([_, string second, ..], _) => Refuse($"report takes one file, and '{second}' stands after it."),
            (_, []) => Refuse("report needs the file to write: --output bearer.pdf, or .html, .md, .txt."),
            (_, [_, string second, ..]) => Refuse($"report writes one file, and '{second}' stands after the first."),
            ([string file], [string output]) when RecordFile.FormatOf(output) is RecordFormat format =>
                Accept(new Request.Report(file, output, format)
                {
                    Date = words.ValuesOf(Option.Date).LastOrDefault(),
                    IsForced = words.Has(Option.Force),
                    IsShort = words.Has(Option.Short),
                    Units = units,
                }),
            (_, [string output]) => Refuse(
                $"--output takes a name that ends in {RecordFile.Endings}, which says what to write; not '{output}'."),
        });

    private static Reading<UnitSystem?> UnitsOf(Words words) => words.ValuesOf(Option.Units).LastOrDefault() switch
    {
        null => new Reading<UnitSystem?>.Accepted(null),
        "us" => new Reading<UnitSystem?>.Accepted(UnitSystem.Us),
        "si" => new Reading<UnitSystem?>.Accepted(UnitSystem.Si),
        string other => new Reading<UnitSystem?>.Refused($"--units takes us or si, not '{other}'.", 0),
    };

    private static Reading<int?> JobsOf(Words words) => words.ValuesOf(Option.Jobs).LastOrDefault() switch
    {
        null => new Reading<int?>.Accepted(null),
        string text when int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int jobs)
            && jobs is >= 1 and <= MostJobs => new Reading<int?>.Accepted(jobs),
        string other => new Reading<int?>.Refused(string.Create(
            CultureInfo.InvariantCulture, $"--jobs takes a whole number from 1 to {MostJobs}, not '{other}'."), 0),
    };

    private static Reading<Request> Accept(Request request) => new Reading<Request>.Accepted(request);

    private static Reading<Request> Refuse(string text) => new Reading<Request>.Refused(text, 0);
}
