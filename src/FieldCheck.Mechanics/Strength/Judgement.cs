using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What all judged checks of a beam come to together.</summary>
/// <param name="Utilisation">The greatest utilisation [–]; zero where nothing is judged, infinite where the beam tips.</param>
/// <param name="Governing">The check that it is of; null where nothing is judged or the beam tips.</param>
public readonly record struct Judgement(double Utilisation, SectionCheck? Governing)
{
    private readonly ImmutableArray<SectionCheck> _all;

    /// <summary>Every check, judged or not.</summary>
    public ImmutableArray<SectionCheck> All
    {
        get => _all.IsDefault ? [] : _all;
        init => _all = value.IsEmpty ? default : value;
    }

    /// <summary>
    /// Index of the support that is pulled most of those that nobody said to hold the beam down; null: none is pulled.
    /// </summary>
    public int? Pulled { get; init; }

    /// <summary>How many checks could not be judged.</summary>
    public int NotJudged { get; init; }

    /// <summary>The first of them; null where there is none.</summary>
    public SectionCheck? FirstNotJudged { get; init; }

    /// <summary>The beam stands, nothing judged is over, and no support is pulled that nobody said to hold the beam down.</summary>
    public bool Holds => SectionCheck.IsWithin(Utilisation) && Pulled is null;

    /// <summary>The beam tips in a situation, or no answer is found.</summary>
    public bool Tips => double.IsPositiveInfinity(Utilisation) && Governing is null;

    /// <summary>The same, but not holding where more than so many checks cannot be judged: that is no proof that it does.</summary>
    /// <param name="usual">So many could not be judged of the beam as it is.</param>
    public Judgement WithNoMoreOpenThan(int usual) => NotJudged > usual && !Tips
        ? this with { Utilisation = double.PositiveInfinity, Governing = FirstNotJudged }
        : this;

    /// <summary>Judges a beam anew.</summary>
    /// <param name="problem">The beam with all that it is held against.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <param name="only">The only kind of check that counts; null: every one does.</param>
    public static Judgement Of(StrengthProblem problem, BeamSolver solver, CheckKind? only = null)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ImmutableArray<Envelope> envelopes = EnvelopeSearch.Find(problem.Beam, solver);
        int asked = problem.Beam.Model.Combinations.DistinctBy(one => one.Basis).Count();
        // A basis in none of whose situations the beam stands has no envelope.
        if (envelopes.IsEmpty || envelopes.Length < asked || envelopes.Any(envelope => !envelope.WithoutAnswer.IsEmpty))
        {
            return new Judgement(double.PositiveInfinity, null);
        }

        ImmutableArray<SectionCheck> checks = SectionChecks.Find(problem, envelopes, solver);
        SectionCheck? governing = checks
            .Where(check => check.Reason is null && (only is null || check.Kind == only))
            .MaxBy(check => check.Utilisation);
        return new Judgement(governing?.Utilisation ?? 0, governing)
        {
            All = checks,
            Pulled = LettingGo.PulledMost(problem, envelopes),
            NotJudged = checks.Count(check => check.Verdict == CheckVerdict.NotJudged),
            FirstNotJudged = checks.FirstOrDefault(check => check.Verdict == CheckVerdict.NotJudged),
        };
    }
}
