using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Building;

/// <summary>A beam as read: the model for the solver, and what its rows were called on the sheet.</summary>
/// <param name="Model">The beam in SI.</param>
/// <param name="Supports">One for each support of the model, in its order.</param>
/// <param name="Loads">Every load of the model, in the order of the sheet; own weight first.</param>
/// <param name="Display">The units that results are shown in.</param>
public sealed record BuiltBeam(
    BeamModel Model,
    ImmutableArray<NamedSupport> Supports,
    ImmutableArray<NamedLoad> Loads,
    DisplayUnits Display);
