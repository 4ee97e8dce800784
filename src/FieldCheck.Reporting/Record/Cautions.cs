using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Record;

/// <summary>What stands below every check: how far it goes, and whose word comes first.</summary>
internal static class Cautions
{
    private static readonly ImmutableArray<string> Always =
    [
        "A check aid. It solves the beam you typed, not the one that stands. Walk the span and compare before you use "
            + "the numbers.",
        "Where a licensed engineer, a qualified or a competent person is required by law, by the contract or by the "
            + "size of the job, this sheet supports that person and does not stand in for them.",
        "Local code, permit conditions and the project specification come first. Confirm the edition in force.",
        "Not for lifting devices, crane picks, ground bearing under cranes, shoring of excavations, demolition stages "
            + "or fall-protection anchors without the qualified person responsible for them.",
        "Second-hand, wet, cut, split or unmarked material: use the lowest grade or leave it out. Manufactured gear: "
            + "the maker's table governs.",
        "Have someone else follow the working and sign. A check by its own author is a re-run, not a check.",
    ];

    private const string Pull = "A support that only pushes cannot pull. A downward reaction here means that the beam "
        + "lifts, or needs an anchor.";

    private const string NotChecked = "Not checked here: the strength of the beam itself where no check of it "
        + "stands above, columns and props, connections, bracing, overall stability, foundation settlement, vibration, "
        + "fire, fatigue, ponding, torsion, notches and holes.";

    /// <summary>What is to be said below the checks of a section, wherever they are shown.</summary>
    internal static ImmutableArray<string> OfStrength { get; } = Always[..3];

    /// <summary>All that is to be said below one check.</summary>
    internal static ImmutableArray<string> For(Calculation calculation) =>
    [
        .. Pulls(calculation) ? new[] { Pull } : [],
        NotCheckedIn(calculation),
        .. Always,
    ];

    /// <summary>The same without what was not checked, for where that stands apart.</summary>
    internal static ImmutableArray<string> Beside(Calculation calculation) =>
        [.. Pulls(calculation) ? new[] { Pull } : [], .. Always];

    /// <summary>What was not checked, in one sentence.</summary>
    internal static string NotCheckedIn(Calculation calculation) => calculation.Checks.All.IsEmpty
        ? NotChecked
        : $"Not checked here: {string.Join(", ", calculation.Checks.NotChecked)}.";

    /// <summary>Said beside every combination.</summary>
    internal static string Basis(string basis) =>
        $"{basis} figures: do not compare them with figures of another basis";

    private static bool Pulls(Calculation calculation) => calculation is
    { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands }
        && (beam.Supports.Any(support => support.Support.Action is SupportAction.PushesOnly)
            || calculation.Messages.Any(message => message.Code is MessageCodes.Uplift or MessageCodes.HoldsDown)
            || stands.Combinations.Any(answer => answer.Response.Reactions.Any(new BeamWords(beam).IsDown)));
}
