using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>The balance of loads and reactions, summed anew.</summary>
internal static class ProofLines
{
    // Share of all that acts; common practice, no source.
    private const double Closes = 1e-6;

    /// <summary>One sentence for each balance; along the beam only where something acts along it.</summary>
    internal static ImmutableArray<string> Of(BeamWords words, EquilibriumProof proof)
    {
        string verdict = Verdict(proof);
        string across = $"{Across(words, proof)}: {verdict}";
        string turning = $"moments about the left end: reactions "
            + $"{words.Say(Math.Abs(proof.ReactionMoment), QuantityKind.Moment)} = loads "
            + $"{words.Say(Math.Abs(proof.LoadMoment), QuantityKind.Moment)}: {verdict}";
        bool isAlong = !words.IsNothing(proof.LoadRight, QuantityKind.Force)
            || !words.IsNothing(proof.ReactionRight, QuantityKind.Force);
        string along = $"sum lengthways: reactions {words.Horizontal(proof.ReactionRight)} = "
            + $"loads {words.Horizontal(proof.LoadRight)}: {verdict}";
        return isAlong ? [across, along, turning] : [across, turning];
    }

    /// <summary>The balance across the beam; senses are written only where the loads together push up.</summary>
    internal static string Across(BeamWords words, EquilibriumProof proof, string sum = "sum of reactions")
    {
        bool isUsual = proof.LoadDown >= 0 && proof.ReactionUp >= 0;
        return isUsual
            ? $"{sum} {words.Say(proof.ReactionUp, QuantityKind.Force)} = "
                + $"loads {words.Say(proof.LoadDown, QuantityKind.Force)}"
            : $"{sum} {words.Vertical(proof.ReactionUp)} = loads {words.Vertical(-proof.LoadDown)}";
    }

    internal static string Verdict(EquilibriumProof proof) =>
        proof.Residual <= Closes ? "closes" : "DOES NOT CLOSE: do not use these figures";
}
