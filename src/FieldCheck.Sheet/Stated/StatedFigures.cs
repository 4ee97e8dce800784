using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Stated;

/// <summary>Every stated figure of a sheet, judged, and what nobody states although the beam does it.</summary>
/// <param name="Figures">In the order of the rows; of one row vertical, horizontal, moment.</param>
/// <param name="Unstated">Pulls, thrusts and moments that no figure states.</param>
/// <param name="Balances">One for each whole set that stands for one combination or case.</param>
public sealed record StatedFigures(
    ImmutableArray<StatedFigure> Figures,
    ImmutableArray<UnstatedReaction> Unstated,
    ImmutableArray<StatedBalance> Balances)
{
    /// <summary>Nothing is stated.</summary>
    public static StatedFigures None { get; } = new([], [], []);

    /// <summary>Judges what a sheet states.</summary>
    /// <param name="document">The beam as typed; without problems.</param>
    /// <param name="beam">The beam as read.</param>
    /// <param name="outcome">What came of solving it.</param>
    /// <param name="solver">Solves cases alone where need be.</param>
    /// <param name="bands">How well reactions are known; null: taken as exact. Found only if something is stated.</param>
    /// <param name="envelopes">Over all situations; null: as far as its combinations go. Found only if a figure asks.</param>
    public static StatedFigures Of(
        BeamDocument document,
        BuiltBeam beam,
        BeamOutcome outcome,
        BeamSolver solver,
        Lazy<ToleranceBands?>? bands = null,
        Lazy<ImmutableArray<Envelope>>? envelopes = null)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(beam);
        ImmutableArray<StatedFigure> read = [.. Read(document, beam)];
        if (read.IsEmpty)
        {
            return None;
        }

        if (outcome is not BeamOutcome.Stands stands)
        {
            string reason = outcome is BeamOutcome.Undecided ? StatedReasons.NoAnswer : StatedReasons.BeamCanMove;
            return None with { Figures = [.. read.Select(figure => figure with { Reason = reason })] };
        }

        StatedExtremes extremes = new(beam, envelopes ?? new(() => EnvelopeSearch.Find(beam.Situations, solver)), solver);
        StatedComparables comparables = new(stands.Combinations, new CaseAnswers(beam, stands, solver), extremes);
        ImmutableArray<StatedFigure> judged =
            [.. read.Select(figure => Judged(figure, comparables, beam, bands?.Value))];
        return new StatedFigures(
            judged, UnstatedReactions.Of(judged, comparables, beam), StatedBalances.Of(judged, beam));
    }

    private static IEnumerable<StatedFigure> Read(BeamDocument document, BuiltBeam beam)
    {
        for (int row = 0; row < document.Stated.Count; row++)
        {
            StatedEntry entry = document.Stated[row];
            int support = IndexOf(entry, beam);
            foreach (ReactionComponent component in ReactionComponent.All)
            {
                if (component.Text(entry) is string text
                    && QuantityReader.Read(text, component.Kind) is Reading<Quantity>.Accepted { Value: Quantity read })
                {
                    yield return new StatedFigure
                    {
                        Row = row,
                        Entry = entry,
                        Support = support,
                        Label = beam.Supports[support].Label,
                        Component = component,
                        Text = text,
                        Stated = read.Value,
                        HalfDigit = read.HalfDigit,
                        PlusOrMinus = read.Spread ?? 0,
                    };
                }
            }
        }
    }

    private static StatedFigure Judged(
        StatedFigure figure, StatedComparables comparables, BuiltBeam beam, ToleranceBands? bands) =>
        comparables.Find(figure.Entry, figure.Support, figure.Component) switch
        {
            Reading<StatedAgainst>.Accepted { Value: StatedAgainst against } => figure with
            {
                Against = against,
                Comparison = ReactionComparison.Of(
                    figure.Stated,
                    figure.Component.Value(against.Response.Reactions[figure.Support]),
                    StatedAllowance.Of(figure.Entry, figure.Component, figure.AsWritten, against, beam),
                    StatedBand.Of(bands, figure, against, beam.Model)),
            },
            Reading<StatedAgainst>.Refused refused => figure with { Reason = refused.Text },
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    // Labels are unique whatever the case.
    private static int IndexOf(StatedEntry row, BuiltBeam beam) => beam.Supports
        .Select(support => support.Label.ToUpperInvariant())
        .ToList()
        .IndexOf(row.Support!.Trim().ToUpperInvariant());
}
