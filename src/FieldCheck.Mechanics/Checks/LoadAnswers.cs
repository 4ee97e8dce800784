using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>How the beam answers one uncertain load as typed.</summary>
/// <param name="Start">
/// What acts at one place, once; of a spread load the part of intensity 1 N/m at its left end falling to nothing.
/// </param>
/// <param name="End">Of a spread load the part rising to 1 N/m at its right end; else null.</param>
internal sealed record LoadAnswers(BeamResponse Start, BeamResponse? End)
{
    /// <summary>The loads to solve for, one or two.</summary>
    internal static Load[] LoadsOf(Load load) => load is Load.Distributed spread
        ?
        [
            new Load.Distributed(spread.From, spread.To, 1, 0, spread.ActsAlong),
            new Load.Distributed(spread.From, spread.To, 0, 1, spread.ActsAlong),
        ]
        : [load];

    /// <summary>The figure under given sizes.</summary>
    internal double Of(Target target, (double Start, double End) size) =>
        size.Start * target.In(Start) + (End is null ? 0 : size.End * target.In(End));

    /// <summary>The sizes as typed.</summary>
    internal static (double Start, double End) SizeOf(Load load) =>
        load is Load.Distributed spread ? (spread.StartIntensity, spread.EndIntensity) : (1, 1);
}
