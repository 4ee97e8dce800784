using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>One figure of an answer, so that two answers can be compared figure by figure.</summary>
/// <param name="Name">What it is and where.</param>
/// <param name="Of">Takes it from an answer.</param>
/// <param name="SizeOn">How large such figures are on the beam.</param>
internal sealed record Quantity(string Name, Func<BeamResponse, double> Of, Func<Scale, double> SizeOn)
{
    /// <summary>Every reaction, and all five curves on both sides of every place where one may jump.</summary>
    internal static IEnumerable<Quantity> All(BeamModel model, BeamResponse response) =>
        Enumerable.Range(0, model.Supports.Length).SelectMany(OfReaction)
            .Concat(Probes.Dense(model, response, inEach: 3).SelectMany(At));

    private static IEnumerable<Quantity> OfReaction(int i) =>
    [
        new($"Vertical {i}", response => response.Reactions[i].Vertical, scale => scale.Force),
        new($"Horizontal {i}", response => response.Reactions[i].Horizontal, scale => scale.Force),
        new($"Moment {i}", response => response.Reactions[i].Moment, scale => scale.Moment),
        new($"Normal {i}", response => response.Reactions[i].Normal ?? 0, scale => scale.Force),
    ];

    private static IEnumerable<Quantity> At(double x) => Enum.GetValues<Curve>().SelectMany(curve => new Quantity[]
    {
        new($"{curve} left of {x:R}", response => Answer.Of(curve, response.At(x).Left), scale => scale.Of(curve)),
        new($"{curve} right of {x:R}", response => Answer.Of(curve, response.At(x).Right), scale => scale.Of(curve)),
    });
}
