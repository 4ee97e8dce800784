using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Places at which a law is looked at.</summary>
internal static class Probes
{
    /// <summary>Every place where a formula may change, left to right: by the response and by the model.</summary>
    internal static double[] Of(BeamModel model, BeamResponse response) =>
    [
        .. response.Breaks
            .Concat(model.JointPositions)
            .Concat(model.Hinges)
            .Concat(model.Supports.Select(support => support.Position))
            .Concat(model.Cases.SelectMany(one => one.Loads).SelectMany(PlacesOf))
            .Distinct()
            .Order(),
    ];

    /// <summary>Stretches over which every quantity is one polynomial, each with the span that it lies in.</summary>
    internal static IEnumerable<(double From, double To, Span Span)> Stretches(
        BeamModel model, BeamResponse response) => Of(model, response).Pairwise().Select(pair => (pair.First, pair.Second, SpanAt(model, pair.First)));

    internal static IEnumerable<(double First, double Second)> Pairwise(this double[] places) =>
        places.Zip(places.Skip(1));

    /// <summary>Many places, among them all where a formula changes.</summary>
    internal static double[] Dense(BeamModel model, BeamResponse response, int inEach) =>
    [
        .. Of(model, response).Pairwise()
            .SelectMany(pair => Enumerable.Range(0, inEach)
                .Select(i => pair.First + ((pair.Second - pair.First) * i / inEach)))
            .Append(model.Length),
    ];

    private static Span SpanAt(BeamModel model, double x)
    {
        int right = Enumerable.Range(1, model.Spans.Length - 1).FirstOrDefault(k => x < model.JointPositions[k]);
        return right == 0 ? model.Spans[^1] : model.Spans[right - 1];
    }

    private static double[] PlacesOf(Load load) => load switch
    {
        Load.Point point => [point.Position],
        Load.Couple couple => [couple.Position],
        Load.Distributed spread => [spread.From, spread.To],
        _ => throw new ArgumentOutOfRangeException(nameof(load), load, "Not a load."),
    };
}
