using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Beams and stated figures for small cases, in kN and m.</summary>
internal static class Said
{
    internal const double Kilo = 1000;

    internal static BeamModel Simple(double length, params Load[] loads) => On([length], [0, length], loads);

    internal static BeamModel On(double[] spans, double[] supports, params Load[] loads) => new(
        [.. spans.Select(length => new Span(length, 1e7, 1e9))],
        [Support.Pin(supports[0]), .. supports[1..].Select(place => Support.Roller(place))],
        [],
        [new LoadCase("live", [.. loads])],
        [new Combination("service", CombinationBasis.Service, [1])]);

    internal static Load Point(double position, double kilonewtons) => new Load.Point(position, kilonewtons * Kilo);

    internal static Load Spread(double from, double to, double kilonewtonsPerMetre) =>
        new Load.Distributed(from, to, kilonewtonsPerMetre * Kilo, kilonewtonsPerMetre * Kilo);

    /// <summary>Verticals at all supports from the left, as written: "10.3" is within half a tenth.</summary>
    internal static StatedSet Verticals(BeamModel model, params string[] kilonewtons) => new(
        model,
        [.. model.Cases.Select(_ => 1.0)],
        [.. kilonewtons.Select((text, support) => Figure(support, ReactionPart.Vertical, text))]);

    internal static ReactionFigure Figure(int support, ReactionPart part, string kilo)
    {
        int point = kilo.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : kilo.Length - point - 1;
        double value = double.Parse(kilo, CultureInfo.InvariantCulture);
        return new ReactionFigure(support, part, value * Kilo, Kilo / 2 * Math.Pow(10, -decimals));
    }

    internal static ImmutableArray<Explanation> Explanations(StatedSet stated) =>
        Assert.IsType<Diagnosis.Differs>(new ExplanationSearch().Explain(stated)).Explanations;

    /// <summary>The one explanation that is told, fitted ones apart.</summary>
    internal static Explanation Only(StatedSet stated) =>
        Assert.Single(Explanations(stated), explanation => !explanation.IsFitted);
}
