using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Strength;

/// <summary>All that a beam is held against, and what is not looked at.</summary>
/// <param name="All">Every check asked for, in order of kind, span and support; may be empty.</param>
/// <param name="NotChecked">What was not checked, each in a few words; never empty where there are checks.</param>
public sealed record BeamChecks(ImmutableArray<BeamCheck> All, ImmutableArray<string> NotChecked)
{
    /// <summary>A force along the beam of less than this share of the greatest shear is nothing [–].</summary>
    private const double NoForce = 1e-6;

    /// <summary>No checks: nothing is asked for, or the beam does not stand.</summary>
    public static BeamChecks None { get; } = new([], []);

    /// <summary>
    /// Final deflections of what creeps and is held at once against a limit, but in the end against none: to be told, not judged.
    /// </summary>
    /// <remarks>Their limit is that on the deflection at once, and says nothing of them.</remarks>
    public ImmutableArray<BeamCheck> WithoutFinalLimit { get; init; } = [];

    /// <summary>The check that is used up most; null where none is judged.</summary>
    public BeamCheck? Governing => All.Where(check => check.Figures.Reason is null).MaxBy(check => check.Figures.Utilisation);

    /// <summary>OVER where one is over, else NOT JUDGED where one is not judged, else OK; null without checks.</summary>
    public CheckVerdict? Verdict => All.IsEmpty ? null
        : All.Any(check => check.Figures.Verdict == CheckVerdict.Over) ? CheckVerdict.Over
        : All.Any(check => check.Figures.Verdict == CheckVerdict.NotJudged) ? CheckVerdict.NotJudged
        : CheckVerdict.Ok;

    /// <summary>Every check of a beam, with its words.</summary>
    /// <param name="beam">The beam; its sticks may be others than those of the sheet.</param>
    /// <param name="document">The sheet it was read from.</param>
    /// <param name="envelopes">Its envelopes.</param>
    /// <param name="solver">The solver to work with.</param>
    public static BeamChecks Of(
        BuiltBeam beam, BeamDocument document, ImmutableArray<Envelope> envelopes, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(document);
        StrengthProblem problem = StrengthRows.Of(beam, document);
        ImmutableArray<SectionCheck> found = SectionChecks.Find(problem, envelopes, solver);
        CheckWords words = new(beam, document);
        return found.IsEmpty
            ? None
            : new([.. found.Select(words.Of)], NotCheckedWords.Of(problem, found, Pushing(beam, envelopes), IsCompressed(envelopes)))
            {
                WithoutFinalLimit = [.. FinalWithoutLimit(problem, envelopes, solver).Select(words.Of)],
            };
    }

    private static IEnumerable<SectionCheck> FinalWithoutLimit(
        StrengthProblem problem, ImmutableArray<Envelope> envelopes, BeamSolver solver)
    {
        if (problem.Limits is not DeflectionLimits limits || !problem.Members.Any(member => member.Material?.Creep > 0))
        {
            return [];
        }

        DeflectionLimits asked = new()
        {
            FinalBayRatio = limits.FinalBayRatio is null ? limits.BayRatio : null,
            FinalOverhangRatio = limits.FinalOverhangRatio is null ? limits.OverhangRatio : null,
            Lasting = limits.Lasting,
        };
        return asked is { FinalBayRatio: null, FinalOverhangRatio: null }
            ? []
            : SectionChecks.Find(OnlyBy(asked), envelopes, solver)
                .Where(check => check.Kind is CheckKind.FinalDeflection or CheckKind.FinalOverhangDeflection
                    && check.Terms.Any(term => term is { Symbol: CheckSymbol.CreepFactor, Value: > 0 }));

        StrengthProblem OnlyBy(DeflectionLimits limits) => problem with
        {
            Limits = limits,
            Rules = StrengthRules.None,
            Seats = [.. problem.Seats.Select(_ => new Seat(null, null, null, null))],
        };
    }

    /// <summary>The same without words, for who tries many beams.</summary>
    /// <param name="beam">The beam; its sticks may be others than those of the sheet.</param>
    /// <param name="document">The sheet it was read from.</param>
    /// <param name="envelopes">Its envelopes.</param>
    /// <param name="solver">The solver to work with.</param>
    public static ImmutableArray<SectionCheck> FiguresOf(
        BuiltBeam beam, BeamDocument document, ImmutableArray<Envelope> envelopes, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(document);
        return SectionChecks.Find(StrengthRows.Of(beam, document), envelopes, solver);
    }

    private static ImmutableArray<string?> Pushing(BuiltBeam beam, ImmutableArray<Envelope> envelopes)
    {
        double greatest = envelopes.SelectMany(envelope => envelope.Reactions)
            .Select(reaction => Math.Max(reaction.Vertical.Max.Value, -reaction.Vertical.Min.Value))
            .DefaultIfEmpty(0)
            .Max();
        return
        [
            .. beam.Supports.Select((named, index) =>
                envelopes.Any(envelope => envelope.Reactions[index].Vertical.Max.Value > NoForce * greatest) ? named.Label : null),
        ];
    }

    private static bool IsCompressed(ImmutableArray<Envelope> envelopes) => envelopes.Any(envelope =>
    {
        GovernedExtremes shear = envelope.ExtremesOf(Curve.Shear);
        double greatest = Math.Max(Math.Abs(shear.Max.Value), Math.Abs(shear.Min.Value));
        return envelope.ExtremesOf(Curve.Axial).Min.Value < -NoForce * greatest;
    });
}
