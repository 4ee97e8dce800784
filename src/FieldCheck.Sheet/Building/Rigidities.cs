using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Building;

/// <summary>The rigidities to solve with, and what had to be taken for granted.</summary>
/// <param name="Flexural">E·I of each span [N·m²], or in a ratio to each other.</param>
/// <param name="Axial">E·A of each span [N], or in a ratio to each other.</param>
/// <param name="Shear">G·A of each span [N]; null: shear does not deform the beam.</param>
/// <param name="AreAbsolute">False: ratios only, so movements mean nothing.</param>
/// <param name="UniformStiffnessAssumed">True: nothing was known, and E·I decides the answer.</param>
/// <param name="OneModulusAssumed">True: inertias without moduli served as ratios, and decide the answer.</param>
/// <param name="UniformAreaAssumed">True: areas were not known, and E·A decides the answer.</param>
internal sealed record Rigidities(
    ImmutableArray<double> Flexural,
    ImmutableArray<double> Axial,
    ImmutableArray<double>? Shear,
    bool AreAbsolute,
    bool UniformStiffnessAssumed,
    bool OneModulusAssumed,
    bool UniformAreaAssumed)
{
    /// <summary>A span of the model.</summary>
    /// <param name="length">Its length [m].</param>
    /// <param name="index">Which, counted from 0.</param>
    internal Span Span(double length, int index) => new(length, Flexural[index], Axial[index], Shear?[index]);
}
