using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>One printed figure and how closely its digits pin it down.</summary>
/// <param name="What">The quantity, a key word of the data files.</param>
/// <param name="Printed">The figure.</param>
/// <param name="Tolerance">Absolute: half a unit of its last printed digit.</param>
/// <param name="At">Where it stands, if at one place.</param>
/// <param name="Side">Which side of that place; the left one if nothing is said.</param>
/// <param name="From">Left end of the stretch that it speaks of, if not of the whole beam.</param>
/// <param name="To">Right end of that stretch.</param>
/// <param name="LoadAt">Influence ordinates only: where the unit load stands.</param>
/// <param name="Moment">Stresses of sections only: bending moment, sagging.</param>
/// <param name="Shear">Stresses of sections only: shear force.</param>
/// <param name="Cut">Sections only: height of a cut over the lower edge.</param>
/// <param name="Thickness">Sections only: width that the source takes at the cut.</param>
/// <param name="IsSeen">Whether it was read in the source, where that differs from the case.</param>
internal sealed record PublishedValue(
    string What,
    double Printed,
    double Tolerance,
    double? At,
    Side Side,
    double? From,
    double? To,
    double? LoadAt,
    double? Moment,
    double? Shear,
    double? Cut,
    double? Thickness,
    bool? IsSeen);
