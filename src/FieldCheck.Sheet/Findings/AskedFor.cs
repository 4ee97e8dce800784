using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What a sheet asks to be judged beside the reactions and what is stated of them, each in a few words.</summary>
internal static class AskedFor
{
    /// <summary>One message for each thing asked for and not judged, and one for what changes no figure yet.</summary>
    internal static IEnumerable<Message> NotJudged(BeamDocument document, BuiltBeam beam)
    {
        IEnumerable<string> asked =
        [
            .. Limits(document.Limits),
            .. document.Materials.SelectMany(Material),
            .. beam.Supports.SelectMany(named => Bearing(named.Label, document.Supports[named.Row])),
        ];
        foreach (string text in asked)
        {
            yield return new Message(
                Severity.Caution, MessageCodes.NotJudged, $"NOT JUDGED: {TextSafety.ForTerminal(text)}.");
        }

        foreach (RollingLoad rolling in beam.Rolling.Where((_, index) => HasSign(document.Rolling[index])))
        {
            yield return new Message(
                Severity.Note,
                MessageCodes.NotCarried,
                $"The plus or minus of {TextSafety.ForTerminal(rolling.Label)} is kept; no band takes it.");
        }

        if (document.Tolerance is not null && beam.Uncertain.IsEmpty)
        {
            yield return new Message(
                Severity.Note, MessageCodes.NotCarried, "The tolerances are kept; nothing measured takes them.");
        }
    }

    /// <summary>The strengths that a material asks to be held against.</summary>
    internal static ImmutableArray<string> Strengths(MaterialEntry material) =>
    [
        .. Fields.Material
            .Where(field => field.Key.StartsWith("allowable_", StringComparison.Ordinal)
                || field.Key.StartsWith("design_", StringComparison.Ordinal))
            .Where(field => field.Get(material) is not null)
            .Select(field => $"{field.Key.Replace('_', ' ')} stress {field.Get(material)}"),
    ];

    private static IEnumerable<string> Limits(LimitsEntry? limits) => limits is null ? [] :
    [
        .. Each(limits.Deflection, "deflection limit {0} of each bay"),
        .. Each(limits.DeflectionOverhang, "deflection limit {0} of each overhang"),
        .. limits.DeflectionCases.Select(figure => $"deflection limit {figure.Text} under case {figure.Name}"),
        .. Each(limits.DeflectionAbsolute, "deflection limit {0}"),
        .. Each(limits.Rules, "strength by {0}"),
    ];

    private static IEnumerable<string> Material(MaterialEntry material) =>
        Strengths(material).Select(strength => $"{strength} of {material.Name}");

    private static IEnumerable<string> Bearing(string label, SupportEntry support) =>
    [
        .. Each(support.BearingAllowable, $"bearing stress {{0}} on {label}"),
        .. Each(support.AllowablePressure, $"ground pressure {{0}} under {label}"),
    ];

    private static bool HasSign(RollingEntry row) => UncertainCell.HasSign(row.Impact)
        || row.Axles.Any(axle => UncertainCell.HasSign(axle.Offset) || UncertainCell.HasSign(axle.Force));

    private static IEnumerable<string> Each(string? figure, string words) =>
        figure is null ? [] : [words.Replace("{0}", figure, StringComparison.Ordinal)];
}
