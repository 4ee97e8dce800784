using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>One example of a source: its beam and the figures printed for it.</summary>
/// <param name="Id">What the data file calls it.</param>
/// <param name="Source">Where it is printed.</param>
/// <param name="Units">Units of its places, forces and moments.</param>
/// <param name="IsSeen">True: read in the source; false: from memory.</param>
/// <param name="Kind">beam, moving, influence or section.</param>
/// <param name="Beam">The beam with its loads; null where there is none (a section).</param>
/// <param name="Axles">Moving loads only: force and distance behind the first.</param>
/// <param name="Plates">Sections of rectangles only: breadth, height and height of the middle over the lower edge.</param>
/// <param name="Tube">Round sections only: outer diameter and bore, which is zero of a bar.</param>
/// <param name="Values">The figures.</param>
internal sealed record PublishedCase(
    string Id,
    string Source,
    string Units,
    bool IsSeen,
    string Kind,
    BeamModel? Beam,
    ImmutableArray<(double Force, double Offset)> Axles,
    ImmutableArray<(double Breadth, double Height, double Middle)> Plates,
    (double Diameter, double Bore)? Tube,
    ImmutableArray<PublishedValue> Values);
