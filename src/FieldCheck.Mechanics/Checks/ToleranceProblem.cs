using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>A beam and how well it is known.</summary>
/// <param name="Model">The beam as measured.</param>
/// <param name="Inputs">What is uncertain, each independent of the others; may be empty.</param>
/// <param name="Altered">
/// The beam with the inputs that change the beam itself off by so much: takes one offset for each input, in its order
/// and own unit, zero for all others; gives a model with the same cases, loads and supports in the same order, or null
/// where no beam is left (places cross). Null where no input changes the beam itself.
/// </param>
public sealed record ToleranceProblem(
    BeamModel Model,
    ImmutableArray<InputSpread> Inputs,
    Func<ImmutableArray<double>, BeamModel?>? Altered = null);
