using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Solving;

/// <summary>One way in which the beam can move while no support resists.</summary>
/// <param name="SlidesAlong">True: it moves along the beam too.</param>
/// <param name="Parts">The parts that move across the beam, left to right; empty when it only slides.</param>
public sealed record FreeMotion(bool SlidesAlong, ImmutableArray<MovingPart> Parts);
