using System.Diagnostics;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>A load of the beam as a slip may touch it.</summary>
/// <param name="Index">Its index over all cases.</param>
/// <param name="Case">Index of its case.</param>
/// <param name="Load">The load.</param>
/// <param name="Factor">Its factor in the combination asked for [–].</param>
/// <param name="IsOwnWeight">Whether it is own weight.</param>
/// <param name="IsPermanent">Whether its case is there all the time.</param>
internal sealed record ExplanationLoad(
    int Index, int Case, Load Load, double Factor, bool IsOwnWeight, bool IsPermanent)
{
    /// <summary>What a load weighs in all, across the beam [N, down].</summary>
    internal static double Down(Load load) => load switch
    {
        Load.Point point => point.Down,
        Load.Couple or Load.Distributed { ActsAlong: true } => 0,
        Load.Distributed spread => (spread.StartIntensity + spread.EndIntensity) / 2 * (spread.To - spread.From),
        _ => throw new UnreachableException(),
    };
}

/// <summary>A load put on the beam besides all others, or with a factor below zero taken off it.</summary>
/// <param name="Load">The load.</param>
/// <param name="Factor">Its factor [–].</param>
/// <param name="IsOwn">Whether it is one of the beam's own loads.</param>
internal readonly record struct LoadChange(Load Load, double Factor, bool IsOwn = false);
