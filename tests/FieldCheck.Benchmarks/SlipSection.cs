using System.Globalization;
using FieldCheck.Mechanics.Tests.Checks.Slips;

namespace FieldCheck.Benchmarks;

/// <summary>
/// How well slips in stated reactions are told, by simulation: the tables of docs/verification.md and of FalseClaims.
/// </summary>
internal static class SlipSection
{
    internal const string Begin = "<!-- slips: begin, written by the benchmarks -->";
    internal const string End = "<!-- slips: end -->";

    private static readonly int[] Digits = [3, 2, 1];

    /// <summary>Draws, and prints both tables as they stand in the documentation.</summary>
    /// <param name="report">Takes the promises.</param>
    /// <param name="options">`--seed N`, `--beams N` for each slip, `--errors N` for each rate, `--write FILE`.</param>
    internal static void Run(Report report, string[] options)
    {
        int seed = Number(options, "--seed", 1);
        int beams = Number(options, "--beams", 2_000);
        int errors = Number(options, "--errors", 20_000);
        report.Section("Slips in stated reactions");
        SlipTally[] tallies =
            [.. SlipKinds.All.AsParallel().AsOrdered().Select(kind => SlipTally.Of(kind, beams, digits: 3, seed))];
        (int Digits, int Figures)[] rows =
        [
            .. from digits in Digits
               from figures in Enumerable.Range(1, 5)
               select (digits, figures),
        ];
        ErrorTally[] claims =
            [.. rows.AsParallel().AsOrdered().Select(row => ErrorTally.Of(row.Figures, errors, row.Digits, seed))];
        CorrectTally correct = CorrectTally.Of(errors, seed);
        string text = string.Join('\n', Text(seed, beams, errors, tallies, claims).Append("").Append(Text(correct)));
        Console.WriteLine(text);
        Promise(report, tallies, claims);
        report.Promise("Correct figures called wrong or explained", correct.Called, 0, correct.Called == 0);
        if (Array.IndexOf(options, "--write") is var at and >= 0)
        {
            Write(options[at + 1], text);
        }
    }

    private static void Promise(Report report, SlipTally[] tallies, ErrorTally[] claims)
    {
        SlipTally[] firm = [.. tallies.Where((_, i) => !IsFitted(SlipKinds.All[i]))];
        double told = Percent(firm.Sum(tally => tally.Told), firm.Sum(tally => tally.Drawn));
        double alone = firm.Min(tally => Percent(tally.Alone, tally.Drawn));
        double claimed = claims.Take(5).Skip(2).Max(claim => 100 * claim.Rate);
        report.Promise("True slip told, per cent", told, 100, told == 100);
        report.Promise("True slip alone, per cent, of the kind where it is that least often", alone, 95, alone >= 95);
        report.Promise("Unrelated errors claimed, 3 figures and more, per cent", claimed, 1, claimed <= 1);
    }

    private static IEnumerable<string> Text(
        int seed, int beams, int errors, SlipTally[] tallies, ErrorTally[] claims)
    {
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"Seed {seed}; {beams:#,0} beams for each slip, {errors:#,0} for each rate of unrelated errors.");
        yield return "";
        yield return "| slip | told | first | alone | tied with another |";
        yield return "| --- | --- | --- | --- | --- |";
        for (int i = 0; i < tallies.Length; i++)
        {
            SlipTally tally = tallies[i];
            string rank = IsFitted(SlipKinds.All[i])
                ? "- | - | -"
                : string.Join(" | ", new[] { tally.First, tally.Alone, tally.Tied }.Select(n => Share(n, tally.Drawn)));
            yield return $"| {SlipKinds.All[i].Name} | {Share(tally.Told, tally.Drawn)} | {rank} |";
        }

        yield return "";
        yield return "| unrelated errors claimed | 1 figure | 2 | 3 | 4 | 5 |";
        yield return "| --- | --- | --- | --- | --- | --- |";
        for (int row = 0; row < Digits.Length; row++)
        {
            IEnumerable<string> rates = claims
                .Skip(5 * row)
                .Take(5)
                .Select(claim => (100 * claim.Rate).ToString("0.00", CultureInfo.InvariantCulture) + " %");
            yield return $"| {Digits[row]} {(Digits[row] == 1 ? "digit" : "digits")} | {string.Join(" | ", rates)} |";
        }
    }

    private static string Text(CorrectTally correct) => string.Create(
        CultureInfo.InvariantCulture,
        $"Correct figures, rounded to 1 to 4 digits: {correct.Drawn:#,0} beams, {correct.Figures:#,0} figures; "
        + $"{correct.Wrong} called low or high with a tolerance of nothing, {correct.Explained} beams explained.");

    private static void Write(string file, string text)
    {
        string whole = File.ReadAllText(file);
        int begin = whole.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int end = whole.IndexOf(End, StringComparison.Ordinal);
        File.WriteAllText(file, $"{whole[..begin]}\n\n{text}\n\n{whole[end..]}");
    }

    private static bool IsFitted(SlipKind kind) => kind.Name.EndsWith("(fitted)", StringComparison.Ordinal);

    private static double Percent(int part, int whole) => 100.0 * part / whole;

    private static string Share(int part, int whole) =>
        Percent(part, whole).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static int Number(string[] options, string name, int usual) =>
        Array.IndexOf(options, name) is var at and >= 0
            ? int.Parse(options[at + 1], CultureInfo.InvariantCulture)
            : usual;
}
