using System.Collections.Immutable;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>Where one more support that only pushes would help a beam.</summary>
/// <param name="Stiffness">How stiff it stands [N/m]; null: rigid.</param>
/// <param name="First">The check of the beam as typed that is used up most; null: none is judged, or the beam tips.</param>
/// <param name="EveryCheck">Where every judged check holds.</param>
/// <param name="FirstAlone">Where the checks of the kind of the first hold; looked for where not every check does.</param>
public sealed record PropAnswer(
    double? Stiffness,
    SectionCheck? First,
    ImmutableArray<PropStretch> EveryCheck,
    ImmutableArray<PropStretch> FirstAlone)
{
    /// <summary>Where every judged check would hold, were supports tied down that nobody said to be; looked for last.</summary>
    public ImmutableArray<PropStretch> IfTied { get; init; } = [];

    /// <summary>True: it could not be looked for, as the beam's stiffness is not known and the prop gives way.</summary>
    public bool IsOpen { get; init; }
}
