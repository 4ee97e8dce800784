using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Numbers the places of a beam where something can be found: what is called a node in names.</summary>
public static class HandPlaces
{
    /// <summary>Both ends, every support, hinge and joint, whether a support touches or not [m], increasing.</summary>
    /// <param name="model">The beam.</param>
    public static ImmutableArray<double> Of(BeamModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return
        [
            .. model.JointPositions
                .Concat(model.Supports.Select(support => support.Position))
                .Concat(model.Hinges)
                .Distinct()
                .Order(),
        ];
    }
}
