using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Building;

/// <summary>
/// A beam as typed and how well it is known, for the mechanics: the beam is built anew with cells off by so much, so
/// that everything tied to them moves along as it was typed.
/// </summary>
public static class AlteredBeam
{
    /// <summary>Uncertain cells times spans and loads: up to so many it is found anew at every key.</summary>
    private const int MostAtEveryKey = 8000;

    /// <summary>Whether so much is uncertain that what comes of it cannot be followed at every key.</summary>
    /// <param name="beam">The beam as read.</param>
    public static bool IsTooMuchToFollow(BuiltBeam beam)
    {
        ArgumentNullException.ThrowIfNull(beam);
        return beam.Uncertain.Length * (beam.Model.Spans.Length + beam.Loads.Length) > MostAtEveryKey;
    }

    /// <summary>What the bands are found from.</summary>
    /// <param name="document">The beam as typed.</param>
    /// <param name="catalogue">Sections and materials it may name.</param>
    /// <param name="beam">The beam as read.</param>
    public static ToleranceProblem Problem(BeamDocument document, SectionCatalogue catalogue, BuiltBeam beam)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(beam);
        ImmutableArray<InputSpread> spreads = [.. beam.Uncertain.Select(input => input.Spread)];
        return new ToleranceProblem(beam.Model, spreads, offsets => Built(document, catalogue, beam, offsets));
    }

    /// <summary>The altered beam; null where it does not read, or supports have changed places.</summary>
    private static BeamModel? Built(
        BeamDocument document, SectionCatalogue catalogue, BuiltBeam beam, ImmutableArray<double> offsets)
    {
        ImmutableDictionary<string, double> byKey = beam.Uncertain.Zip(offsets)
            .Where(pair => pair.First.Spread is InputSpread.OfBeam && pair.Second != 0)
            .ToImmutableDictionary(pair => pair.First.Key, pair => pair.Second);
        return ModelBuilder.Build(document, catalogue, new CellOffsets(byKey)) is BuildOutcome.Built built
            && built.Beam.Supports.Select(one => one.Row).SequenceEqual(beam.Supports.Select(one => one.Row))
                ? built.Beam.Model
                : null;
    }
}
