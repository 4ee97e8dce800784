using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet;

/// <summary>
/// Everything that follows from one beam as typed. Start reading here: the form and the command line both call
/// <see cref="Run"/> and nothing else.
/// </summary>
public sealed record Calculation
{
    /// <summary>The beam as typed.</summary>
    public required BeamDocument Document { get; init; }

    /// <summary>Every cell that does not read and everything that is missing, in the order of the file's tables.</summary>
    public required ImmutableArray<Problem> Problems { get; init; }

    /// <summary>The beam as read; null while there are problems.</summary>
    public required BuiltBeam? Beam { get; init; }

    /// <summary>What came of solving it; null while there are problems.</summary>
    public required BeamOutcome? Outcome { get; init; }

    /// <summary>What must be said beside the figures: notes, cautions and faults.</summary>
    public required ImmutableArray<Message> Messages { get; init; }

    /// <summary>Reads, builds and solves a beam.</summary>
    /// <param name="document">The beam as typed.</param>
    /// <param name="catalogue">Sections and materials it may name.</param>
    /// <param name="solver">The solver to use; it keeps its working memory between calls.</param>
    public static Calculation Run(BeamDocument document, SectionCatalogue catalogue, BeamSolver solver) =>
        throw new NotImplementedException();
}
