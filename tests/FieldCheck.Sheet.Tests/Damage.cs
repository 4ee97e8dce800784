using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests;

/// <summary>A place in a text where something is cut out and something else put in.</summary>
internal readonly record struct Damage(int At, int Cut, string Bit)
{
    private static readonly string[] Bits =
    [
        "\"", "'", "\\", "[", "]", "{", "}", "=", ",", ".", "#", "\n", "\r", "\t", "\"\"\"", "'''", "[[", "]]", "\r\n",
        "\\u", "\\U0010FFFF", "\uD800", "\uDC00", "\uFFFD", "\uFEFF", "\u0000", "\u0085", "é", "𝄞", "0x", "1e999", "nan",
        "2031-02-30", "07:30", "a.b.c", "[span]\n", "[[span]]\n", "[span.a]\n", "format = 2\n",
    ];

    // How many times as many as at every run.
    internal static int Longer { get; } =
        int.Parse(Environment.GetEnvironmentVariable("FIELDCHECK_LONGER") ?? "1", CultureInfo.InvariantCulture);

    internal static Gen<string> AnyBit { get; } = Gen.Int[0, Bits.Length - 1].Select(number => Bits[number]);

    internal static Gen<Damage[]> Some(int least, int most, int longestCut = 6) =>
        Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, longestCut], AnyBit, (at, cut, bit) => new Damage(at, cut, bit)).Array[least, most];

    internal static string On(string text, IEnumerable<Damage> hits) => hits.Aggregate(text, (damaged, hit) => hit.On(damaged));

    /// <summary>Every problem is of this file, at a place that is in it, and says something, in few words.</summary>
    internal static void AssertTold(string name, string text, ImmutableArray<FileProblem> problems)
    {
        string[] lines = text.Split('\n');
        Assert.InRange(problems.Length, 1, FileProblem.Most);
        Assert.All(problems, problem =>
        {
            Assert.Equal(name, problem.File);
            Assert.InRange(problem.Line, 1, lines.Length);
            Assert.InRange(problem.Column, 1, lines[problem.Line - 1].Length + 2);
            Assert.InRange(problem.Text.Length, 1, 1000);
            Assert.True(problem.Key.Length == 0 || KeyPath.Parse(problem.Key) is not null, problem.Key);
        });
    }

    private string On(string text)
    {
        int at = At % (text.Length + 1);
        return text.Remove(at, Math.Min(Cut, text.Length - at)).Insert(at, Bit);
    }
}
