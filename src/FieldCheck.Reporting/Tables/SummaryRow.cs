namespace FieldCheck.Reporting.Tables;

/// <summary>One end of an envelope in few words.</summary>
/// <param name="Name">What it is of, as "A" or "moment".</param>
/// <param name="End">"max" or "min"; empty where both are one.</param>
/// <param name="Value">The value with its direction or place, and its verdict.</param>
/// <param name="Governs">What makes it so; may be empty.</param>
internal sealed record SummaryRow(string Name, string End, string Value, string Governs)
{
    private const string Across = " vertical";

    internal static SummaryRow Of(EnvelopeRow row)
    {
        string[] verdicts = [.. row.Items.Skip(1).Where(item => item is "HELD" or "LIFTS")];
        IEnumerable<string> governs = row.Items.Skip(1).Except(verdicts)
            .Where(item => !item.StartsWith('('))
            .OrderByDescending(item => item == EnvelopeRows.Estimate);
        return new SummaryRow(
            row.Name switch
            {
                "deflection" => "defl.",
                "axial force" => "axial",
                _ => row.Name.EndsWith(Across, StringComparison.Ordinal) ? row.Name[..^Across.Length] : row.Name,
            },
            row.End switch
            {
                "greatest" => "max",
                "least" => "min",
                _ => "",
            },
            string.Join(' ', verdicts.Prepend(row.Items[0])),
            string.Join(", ", governs));
    }
}
