using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>A combination and how the beam answers it.</summary>
/// <param name="Combination">The combination.</param>
/// <param name="Response">The answer.</param>
public sealed record CombinationResponse(Combination Combination, BeamResponse Response);
