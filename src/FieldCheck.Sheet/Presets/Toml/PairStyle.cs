namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>How the pairs of a block are written, so that a new one looks like its neighbours.</summary>
/// <param name="Indent">What stands before the key.</param>
/// <param name="EqualsAt">The column of the equals signs from the start of the key, where they stand below one another; else null.</param>
/// <param name="Around">What stands on either side of the equals sign, at least.</param>
internal sealed record PairStyle(string Indent, int? EqualsAt, string Around)
{
    /// <summary>The style of the pairs among some statements.</summary>
    internal static PairStyle Of(string text, IEnumerable<TomlStatement> statements)
    {
        List<TomlStatement> pairs = [.. statements.Where(statement => statement.Value is not null)];
        if (pairs.Count == 0)
        {
            return new PairStyle("", null, " ");
        }

        int[] places = [.. pairs.Select(pair => EqualsOf(text, pair) - pair.Span.Start).Distinct()];
        string indent = text[(text.LastIndexOf('\n', pairs[^1].Span.Start) + 1)..pairs[^1].Span.Start];
        bool isTight = pairs.TrueForAll(pair => pair.Value!.Span.Start == EqualsOf(text, pair) + 1);
        return new PairStyle(indent, places.Length == 1 && !isTight ? places[0] : null, isTight ? "" : " ");
    }

    /// <summary>A pair in this style, without line end.</summary>
    internal string Pair(string key, string value)
    {
        string padded = key.PadRight(Math.Max((EqualsAt ?? 0) - Around.Length, 0)) + Around;
        return $"{Indent}{padded}={Around}{value}";
    }

    /// <summary>Where the equals sign of a pair stands.</summary>
    internal static int EqualsOf(string text, TomlStatement pair) => text.IndexOf('=', pair.Name.End);
}
