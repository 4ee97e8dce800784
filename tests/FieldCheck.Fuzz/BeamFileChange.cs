namespace FieldCheck.Fuzz;

/// <summary>Changes a beam file line by line, so that most of what comes of it is still TOML.</summary>
internal static class BeamFileChange
{
    /// <summary>One change by chance.</summary>
    internal static string One(string text, string other, Random random)
    {
        List<string> lines = [.. text.Split('\n')];
        string[] others = other.Split('\n');
        int at = random.Next(lines.Count);
        int from = random.Next(others.Length);
        switch (random.Next(10))
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(random.Next(lines.Count), lines[at]);
                break;
            case 2:
                int with = random.Next(lines.Count);
                (lines[at], lines[with]) = (lines[with], lines[at]);
                break;
            case 3:
                lines.Insert(at, Header(random));
                break;
            case 4:
                lines.Insert(at, Pair(random));
                break;
            case 5:
                lines.InsertRange(at, others[from..Math.Min(from + random.Next(1, 8), others.Length)]);
                break;
            case 6:
                lines[at] = WithKey(lines[at], OneOf(BeamFileWords.Keys, random));
                break;
            case 7:
                lines[at] = WithValue(lines[at], Nested(lines[at], random));
                break;
            case 8:
                lines.InsertRange(at, Enumerable.Repeat(lines[at], 1 << random.Next(1, random.Next(30) == 0 ? 12 : 5)));
                break;
            default:
                lines[at] = WithValue(lines[at], OneOf(BeamFileWords.Values, random));
                break;
        }

        return string.Join('\n', lines);
    }

    private static string Header(Random random)
    {
        string name = OneOf(BeamFileWords.Tables, random);
        return random.Next(4) switch
        {
            0 => $"[{name}]",
            1 => $"[{name}.{OneOf(BeamFileWords.Keys, random)}]",
            _ => $"[[{name}]]",
        };
    }

    private static string Pair(Random random)
    {
        string key = OneOf(BeamFileWords.Keys, random);
        return $"{(random.Next(6) == 0 ? $"{OneOf(BeamFileWords.Tables, random)}.{key}" : key)} = {OneOf(BeamFileWords.Values, random)}";
    }

    private static string WithKey(string line, string key) => line.Contains('=', StringComparison.Ordinal)
        ? key + line[line.IndexOf('=', StringComparison.Ordinal)..]
        : line;

    private static string WithValue(string line, string value) => line.Contains('=', StringComparison.Ordinal)
        ? line[..(line.IndexOf('=', StringComparison.Ordinal) + 1)] + " " + value
        : line;

    private static string Nested(string line, Random random)
    {
        string value = line[(line.IndexOf('=', StringComparison.Ordinal) + 1)..].TrimEnd('\r');
        int times = random.Next(1, random.Next(10) == 0 ? 80 : 4);
        return random.Next(2) == 0
            ? string.Concat(Enumerable.Repeat("[", times)) + value + string.Concat(Enumerable.Repeat("]", times))
            : string.Concat(Enumerable.Repeat("{ x = ", times)) + value + string.Concat(Enumerable.Repeat(" }", times));
    }

    private static string OneOf(string[] words, Random random) => words[random.Next(words.Length)];
}
