using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Findings;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Stated;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet;

/// <summary>
/// Everything that follows from one beam as typed. Start reading here: the form and the command line both call
/// <see cref="Run"/> and nothing else.
/// </summary>
public sealed record Calculation
{
    /// <summary>The beam as typed.</summary>
    public required BeamDocument Document { get; init; }

    /// <summary>Every cell that does not read and all that is missing, in the order of the file's tables.</summary>
    public required ImmutableArray<Problem> Problems { get; init; }

    /// <summary>The beam as read; null while there are problems.</summary>
    public required BuiltBeam? Beam { get; init; }

    /// <summary>What came of solving it; null while there are problems.</summary>
    public required BeamOutcome? Outcome { get; init; }

    /// <summary>Every stated figure, judged; in the order of the rows.</summary>
    public ImmutableArray<StatedFigure> Stated { get; init; } = [];

    /// <summary>Pulls, thrusts and moments that nobody states, under what something is stated for.</summary>
    public ImmutableArray<UnstatedReaction> Unstated { get; init; } = [];

    /// <summary>Whether whole sets of stated figures carry the loads.</summary>
    public ImmutableArray<StatedBalance> StatedBalances { get; init; } = [];

    /// <summary>What would explain stated figures that are called low or high, one for each set of them.</summary>
    /// <remarks>Found when first asked for: it can take some thousand solves.</remarks>
    public ImmutableArray<StatedExplanation> Explanations => ExplanationsToFind?.Value ?? [];

    /// <summary>
    /// How well reactions and peaks are known; null where nothing is uncertain, or the beam does not stand.
    /// </summary>
    /// <remarks>Found when first asked for: it can take some hundred solves.</remarks>
    public ToleranceBands? Bands => BandsToFind?.Value;

    /// <summary>
    /// The greatest and least of everything over all that may happen, one for each basis; empty for a beam that does not
    /// stand.
    /// </summary>
    /// <remarks>Found when first asked for.</remarks>
    public ImmutableArray<Envelope> Envelopes => EnvelopesToFind?.Value ?? [];

    /// <summary>What the sections, seats and deflections are held against.</summary>
    public BeamChecks Checks { get; init; } = BeamChecks.None;

    /// <summary>Questions about a beam that differs from this one; null where no check of this one is asked for.</summary>
    public WhatIf? WhatIf => WhatIfToAsk?.Value;

    /// <summary>What must be said beside the figures: notes, cautions and faults.</summary>
    public required ImmutableArray<Message> Messages { get; init; }

    /// <summary>What the check comes to.</summary>
    public CheckStatus Status => Outcome switch
    {
        null => CheckStatus.NotUsable,
        BeamOutcome.CanMove or BeamOutcome.Tips => CheckStatus.CanMove,
        _ => Messages.Select(message => MessageCodes.StatusOf(message.Code)).DefaultIfEmpty(CheckStatus.Holds).Max(),
    };

    /// <summary>The same with all that is too much to be found at every key; a record is made of it.</summary>
    /// <remarks>Found when first asked for.</remarks>
    public Calculation InFull => InFullToFind?.Value ?? this;

    private Lazy<Calculation>? InFullToFind { get; init; }

    private Lazy<WhatIf>? WhatIfToAsk { get; init; }

    private Lazy<ToleranceBands?>? BandsToFind { get; init; }

    private Lazy<ImmutableArray<Envelope>>? EnvelopesToFind { get; init; }

    private Lazy<ImmutableArray<StatedExplanation>>? ExplanationsToFind { get; init; }

    /// <summary>Reads, builds and solves a beam.</summary>
    /// <param name="document">The beam as typed.</param>
    /// <param name="catalogue">Sections and materials it may name.</param>
    /// <param name="solver">The solver to use; it keeps its working memory between calls.</param>
    /// <param name="isFollowed">True: it is asked for at every key, so what takes long is left out and said to be.</param>
    public static Calculation Run(
        BeamDocument document, SectionCatalogue catalogue, BeamSolver solver, bool isFollowed = false)
    {
        ArgumentNullException.ThrowIfNull(solver);
        return ModelBuilder.Build(document, catalogue) switch
        {
            BuildOutcome.Built built => Solved(document, catalogue, built.Beam, solver, isFollowed),
            BuildOutcome.Refused refused => Unread(document, refused.Problems),
            _ => throw new UnreachableException(),
        };
    }

    private static Calculation Solved(
        BeamDocument document, SectionCatalogue catalogue, BuiltBeam beam, BeamSolver solver, bool isFollowed)
    {
        BeamOutcome outcome = solver.Solve(beam.Model);
        // A solver of its own: by the time they are asked for, this one may be at work elsewhere.
        Lazy<ToleranceBands?>? bands = beam.Uncertain.IsEmpty || outcome is not BeamOutcome.Stands
            ? null
            : new(() => ToleranceBands.Find(AlteredBeam.Problem(document, catalogue, beam), new BeamSolver()));
        Lazy<ImmutableArray<Envelope>> envelopes = new(() =>
            outcome is BeamOutcome.Stands ? EnvelopeSearch.Find(beam.Situations, new BeamSolver()) : []);
        StatedFigures stated = StatedFigures.Of(document, beam, outcome, solver, bands, envelopes);
        AskedFor asked = AskedFor.Of(document, beam);
        BeamChecks checks = asked.IsNothing || outcome is not BeamOutcome.Stands
            ? BeamChecks.None
            : BeamChecks.Of(beam, document, envelopes.Value, solver);
        bool isLeftOut = isFollowed && bands is not null && AlteredBeam.IsTooMuchToFollow(beam);
        WorstReactions? worst = beam.Varies && outcome is BeamOutcome.Stands ? WorstReactions.Of(beam, envelopes, solver) : null;
        return new Calculation
        {
            Document = document,
            Problems = [],
            Beam = beam,
            Outcome = outcome,
            Stated = stated.Figures,
            Unstated = stated.Unstated,
            StatedBalances = stated.Balances,
            ExplanationsToFind = new(() => StatedExplanations.Of(stated.Figures, beam, document)),
            BandsToFind = bands,
            InFullToFind = isLeftOut ? new(() => Solved(document, catalogue, beam, new BeamSolver(), isFollowed: false)) : null,
            EnvelopesToFind = envelopes,
            Checks = checks,
            WhatIfToAsk = checks.All.IsEmpty ? null : new(() => new WhatIf(document, catalogue, beam, checks)),
            Messages =
            [
                .. outcome is BeamOutcome.Stands stands
                    ? new ReactionFindings(beam, stands.Combinations, worst, isLeftOut ? null : Within(beam, stands, bands)).All()
                    : [],
                .. isLeftOut ? [BandFindings.NotFollowed] : Array.Empty<Message>(),
                .. BeamFindings.OfOutcome(beam, outcome),
                .. BeamFindings.OfLoads(beam),
                .. BeamFindings.OfRelief(document, beam),
                .. FactorFindings.NotTaken(document),
                .. BeamFindings.OfGrades(document),
                .. BeamFindings.OfSticks(beam),
                .. CatalogueFindings.Of(document, catalogue),
                .. StatedFindings.Of(beam, stated),
                .. StatedDoubts.Of(beam, stated, worst, envelopes),
                .. StrengthFindings.Of(beam, document, checks, envelopes, catalogue),
                .. asked.NotJudged(checks),
            ],
        };
    }

    private static BandFindings? Within(BuiltBeam beam, BeamOutcome.Stands stands, Lazy<ToleranceBands?>? bands) =>
        bands?.Value is ToleranceBands found ? new BandFindings(beam, stands.Combinations, found) : null;

    private static Calculation Unread(BeamDocument document, ImmutableArray<Problem> problems) => new()
    {
        Document = document,
        Problems = problems,
        Beam = null,
        Outcome = null,
        Messages = [],
    };
}
