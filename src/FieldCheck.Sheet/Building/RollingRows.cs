using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Building;

/// <summary>Reads the loads that roll over the beam.</summary>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class RollingRows(ProblemList problems)
{
    /// <returns>The loads that are known; what is wrong with the others has been told.</returns>
    internal ImmutableArray<Draft> Read(Rows<RollingEntry> entries) =>
        [.. entries.Select((entry, index) => Read(entry, index + 1)).OfType<Draft>()];

    private Draft? Read(RollingEntry entry, int number)
    {
        Row row = Row.Of(Fields.Rolling, entry, $"rolling[{number}]", problems);
        double? impact = row.Has("impact") ? row.NotNegative("impact") : 0;
        if (entry.Axles.Count == 0)
        {
            row.Refuse("axles", ProblemText.NoAxles);
        }

        (double? Offset, double? Down)[] axles =
            [.. entry.Axles.Select((axle, index) => Read(axle, $"{row.Path}.axles[{index + 1}]"))];
        return impact is double share && axles.Length > 0 && axles.All(axle => axle is (double, double))
            ? new Draft(
                row.Text("label") is { } label && !string.IsNullOrWhiteSpace(label)
                    ? label.Trim()
                    : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"rolling load {number}"),
                row.Text("case") ?? LoadCases.Default,
                FromFirst(axles),
                share)
            : null;
    }

    private (double? Offset, double? Down) Read(AxleEntry axle, string path)
    {
        Row row = Row.Of(Fields.Axle, axle, path, problems);
        row.Needed("offset", ProblemText.NoOffset);
        return (row.NotNegative("offset"), row.Needed("force", ProblemText.NoAxleForce));
    }

    /// <summary>The first axle is the one that stands foremost, whatever its offset is counted from.</summary>
    private static ImmutableArray<Axle> FromFirst((double? Offset, double? Down)[] axles)
    {
        double first = axles.Min(axle => axle.Offset!.Value);
        return
        [
            .. axles.OrderBy(axle => axle.Offset).Select(axle => new Axle(axle.Offset!.Value - first, axle.Down!.Value)),
        ];
    }

    /// <summary>A rolling load by the name of its case.</summary>
    internal sealed record Draft(string Label, string Case, ImmutableArray<Axle> Axles, double Impact)
    {
        internal RollingLoad In(ImmutableArray<LoadCase> cases) =>
            new(Label, cases.Select(one => one.Name).ToList().IndexOf(Case), Axles, Impact);
    }
}
