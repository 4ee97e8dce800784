using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of stresses given that come too near the yield: a yield typed for an allowable passes too much.</summary>
internal static class StressFindings
{
    /// <summary>The greatest shares of yield that practice allows in bending, shear and bearing; common practice, no source [–].</summary>
    private static readonly (double Bending, double Shear, double Bearing) AllowableShares = (0.75, 0.45, 0.9);

    /// <summary>The same of design stresses, after all factors; common practice, no source [–].</summary>
    private static readonly (double Bending, double Shear, double Bearing) DesignShares = (1, 0.6, 1.35);

    /// <summary>One caution for each such stress of a material that a span is made of.</summary>
    internal static IEnumerable<Message> Of(BuiltBeam beam) =>
        from stick in beam.Sticks.DistinctBy(one => one.MaterialName)
        where stick.Material?.Yield is not null
        let material = stick.Material!
        from one in Given("Allowable", material.Allowable, AllowableShares).Concat(Given("Design", material.Design, DesignShares))
        where one.Stress > one.Share * material.Yield * (1 + 1e-9)
        select new Message(
            Severity.Caution,
            MessageCodes.StressNearYield,
            $"{one.Name} stress of {TextSafety.ForTerminal(stick.MaterialName!)}: {Say(beam, one.Stress!.Value)} is "
                + $"{Share(one.Stress.Value / material.Yield!.Value)} of its yield, {Say(beam, material.Yield.Value)}, and "
                + $"practice stops at {Share(one.Share)}. Is it the yield that was typed?");

    private static IEnumerable<(string Name, double? Stress, double Share)> Given(
        string side, Strengths? strengths, (double Bending, double Shear, double Bearing) shares) =>
    [
        ($"{side} bending", strengths?.Bending, shares.Bending),
        ($"{side} shear", strengths?.Shear, shares.Shear),
        ($"{side} bearing", strengths?.Bearing, shares.Bearing),
    ];

    private static string Say(BuiltBeam beam, double stress) => beam.Display.Say(stress, QuantityKind.Pressure);

    private static string Share(double share) => FormattableString.Invariant($"{share:0.00}");
}
