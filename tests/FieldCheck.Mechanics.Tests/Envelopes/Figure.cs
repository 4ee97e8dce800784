using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>A figure of an envelope beside the same of one answer.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Greatest">Its greatest in an envelope.</param>
/// <param name="Least">Its least.</param>
/// <param name="GreatestOf">Its greatest in one answer.</param>
/// <param name="LeastOf">Its least.</param>
/// <param name="SizeOn">How large such figures are on the beam.</param>
internal sealed record Figure(
    string Name,
    Func<Envelope, (double Value, Situation Situation)> Greatest,
    Func<Envelope, (double Value, Situation Situation)> Least,
    Func<BeamResponse, double> GreatestOf,
    Func<BeamResponse, double> LeastOf,
    Func<Scale, double> SizeOn)
{
    internal static Figure[] Reactions(BeamModel model) =>
    [
        .. Enumerable.Range(0, model.Supports.Length).SelectMany(i => new[]
        {
            OfReaction($"vertical {i}", envelope => envelope.Reactions[i].Vertical, one => one.Reactions[i].Vertical),
            OfReaction($"horizontal {i}", envelope => envelope.Reactions[i].Horizontal, one => one.Reactions[i].Horizontal),
            OfReaction($"moment {i}", envelope => envelope.Reactions[i].Moment, one => one.Reactions[i].Moment),
        }),
    ];

    internal static Figure Along(Curve curve) => new(
        $"{curve}",
        envelope => (envelope.ExtremesOf(curve).Max.Value, envelope.ExtremesOf(curve).Max.Situation),
        envelope => (envelope.ExtremesOf(curve).Min.Value, envelope.ExtremesOf(curve).Min.Situation),
        response => response.ExtremesOf(curve).Max.Value,
        response => response.ExtremesOf(curve).Min.Value,
        scale => scale.Of(curve));

    internal static Figure[] All(BeamModel model) =>
        [.. Reactions(model), .. Envelope.Curves.Select(Along), .. Spans(model)];

    /// <summary>The curves on each span: of a jump at its ends the inner side only.</summary>
    private static IEnumerable<Figure> Spans(BeamModel model) =>
        from span in Enumerable.Range(0, model.Spans.Length)
        from curve in Envelope.Curves
        select On(curve, model.JointPositions[span], model.JointPositions[span + 1]);

    private static Figure On(Curve curve, double from, double to) => new(
        $"{curve} from {from} to {to}",
        envelope => (envelope.ExtremesOf(curve, from, to).Max.Value, envelope.ExtremesOf(curve, from, to).Max.Situation),
        envelope => (envelope.ExtremesOf(curve, from, to).Min.Value, envelope.ExtremesOf(curve, from, to).Min.Situation),
        response => ValuesOn(response, curve, from, to).Max(),
        response => ValuesOn(response, curve, from, to).Min(),
        scale => scale.Of(curve));

    private static IEnumerable<double> ValuesOn(BeamResponse response, Curve curve, double from, double to) =>
    [
        Answer.Of(curve, response.At(from).Right),
        .. response.PeaksOf(curve).Where(peak => peak.Position > from && peak.Position < to).Select(peak => peak.Value),
        Answer.Of(curve, response.At(to).Left),
    ];

    private static Figure OfReaction(
        string name, Func<Envelope, GovernedRange> range, Func<BeamResponse, double> value) => new(
        name,
        envelope => (range(envelope).Max.Value, range(envelope).Max.Situation),
        envelope => (range(envelope).Min.Value, range(envelope).Min.Situation),
        value,
        value,
        scale => name.StartsWith("moment", StringComparison.Ordinal) ? scale.Moment : scale.Force);
}
