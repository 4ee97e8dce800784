using FieldCheck.Mechanics.Response;

namespace FieldCheck.Screen.Plotting;

/// <summary>What a person wants the influence line of, in a way that outlasts changes of the beam.</summary>
/// <param name="Support">Label of the support whose reaction it is; null: a section.</param>
/// <param name="Curve">At a section: shear or moment.</param>
/// <param name="Position">The section [m from the left end].</param>
internal sealed record InfluenceChoice(string? Support, Curve Curve = Curve.Moment, double Position = 0);
