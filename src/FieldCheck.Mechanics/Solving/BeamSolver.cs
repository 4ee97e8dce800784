using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Solves beams. It keeps its working memory from one solve to the next; one instance a thread.</summary>
public sealed class BeamSolver
{
    private readonly StiffnessMethod _method = new();
    private readonly Kinematics _kinematics = new();
    private readonly ContactSearch _contact;
    private bool[] _touching = [];
    private double[] _factors = [];

    /// <summary>A solver that has solved nothing yet.</summary>
    public BeamSolver()
    {
        _contact = new ContactSearch(_method, _kinematics);
    }

    /// <summary>Counts unknowns against equations without solving; needs no stiffness.</summary>
    /// <param name="model">The beam.</param>
    public static Determinacy DeterminacyOf(BeamModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return DeterminacyCount.Of(model);
    }

    /// <summary>Solves a beam for every combination that its model asks for.</summary>
    /// <param name="model">The beam.</param>
    /// <exception cref="ArgumentException">The model was altered so that it breaks its own rules.</exception>
    public BeamOutcome Solve(BeamModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        BeamRules.Check(model);
        Determinacy determinacy = DeterminacyOf(model);
        Workspace.Grow(ref _touching, model.Supports.Length);
        Span<bool> touching = _touching.AsSpan(0, model.Supports.Length);
        touching.Fill(true);
        _kinematics.Examine(model, touching);
        bool wantsAlong = Lengthways.IsAskedBy(model);
        if (_kinematics.CanMoveAcross || (_kinematics.SlidesFreely && wantsAlong))
        {
            return new BeamOutcome.CanMove(determinacy, _kinematics.Motions());
        }

        FreeMotion? nearMotion = NearMotion.IsWorthALook(model, _kinematics) ? NearMotion.Of(model) : null;
        _method.Prepare(model);
        BeamOutcome outcome = model.Supports.Any(support => support.Action != SupportAction.Both)
            ? SolveEachOnWhatTouches(model, determinacy, wantsAlong)
            : SolveOnAll(model, determinacy, touching, wantsAlong);
        return outcome is BeamOutcome.Stands stands ? stands with { NearMotion = nearMotion } : outcome;
    }

    /// <summary>How many stiffness matrices it has factored.</summary>
    internal int Factorisations => _method.Factorisations;

    /// <summary>
    /// Solves for every case alone with one factorisation, as if every support acted both ways; null where the beam can
    /// move or the arithmetic does not reach.
    /// </summary>
    /// <param name="model">The beam.</param>
    /// <param name="traced">Of how many cases, the first ones, the whole answer is wanted.</param>
    internal PartAnswers? SolveParts(BeamModel model, int traced)
    {
        BeamRules.Check(model);
        Workspace.Grow(ref _touching, model.Supports.Length);
        Span<bool> touching = _touching.AsSpan(0, model.Supports.Length);
        touching.Fill(true);
        _kinematics.Examine(model, touching);
        bool wantsAlong = Lengthways.IsAskedBy(model);
        if (_kinematics.CanMoveAcross || (_kinematics.SlidesFreely && wantsAlong))
        {
            return null;
        }

        _method.Prepare(model);
        if (!_method.Hold(touching, wantsAlong))
        {
            return null;
        }

        BeamResponse imposed = Solve(model, FactorsOf(model, -1), true, touching);
        ImmutableArray<PartAnswer>.Builder cases = ImmutableArray.CreateBuilder<PartAnswer>(traced);
        ImmutableArray<PartStarts>.Builder starts = ImmutableArray.CreateBuilder<PartStarts>(model.Cases.Length - traced);
        for (int i = 0; i < model.Cases.Length; i++)
        {
            _method.Carry(model.Cases[i]);
            if (i < traced)
            {
                cases.Add(Answers.PartOf(_method, model));
            }
            else
            {
                starts.Add(Answers.StartsOf(_method, model));
            }
        }

        return _method.StayedFinite
            ? new PartAnswers(imposed, cases.MoveToImmutable(), starts.MoveToImmutable())
            : null;
    }

    /// <summary>
    /// Solves for settlements and imposed rotations alone, as if every support acted both ways; null where the arithmetic
    /// does not reach.
    /// </summary>
    /// <param name="model">The beam; it cannot move.</param>
    internal BeamResponse? SolveImposed(BeamModel model)
    {
        Workspace.Grow(ref _touching, model.Supports.Length);
        Span<bool> touching = _touching.AsSpan(0, model.Supports.Length);
        touching.Fill(true);
        _method.Prepare(model);
        if (!_method.Hold(touching, Lengthways.IsAskedBy(model)))
        {
            return null;
        }

        BeamResponse imposed = Solve(model, FactorsOf(model, -1), true, touching);
        return _method.StayedFinite ? imposed : null;
    }

    /// <summary>Every support acts both ways: one factorisation serves all cases and combinations.</summary>
    private BeamOutcome SolveOnAll(
        BeamModel model, Determinacy determinacy, ReadOnlySpan<bool> touching, bool wantsAlong)
    {
        if (!_method.Hold(touching, wantsAlong))
        {
            return new BeamOutcome.Undecided(determinacy, null, UndecidedReason.BeyondArithmetic);
        }

        bool isHeldAlong = !_kinematics.SlidesFreely;
        bool hasImposed = model.Supports.Any(HasImposed);
        ImmutableArray<BeamResponse?> cases = SolveCases(model, touching, isHeldAlong);
        ImmutableArray<CombinationResponse>.Builder combinations =
            ImmutableArray.CreateBuilder<CombinationResponse>(model.Combinations.Length);
        foreach (Combination combination in model.Combinations)
        {
            int only = hasImposed ? -1 : OnlyCase(combination.Factors);
            BeamResponse response = (only < 0 ? null : cases[only])
                ?? Solve(model, combination.Factors.AsSpan(), hasImposed, touching);
            combinations.Add(new CombinationResponse(combination, response));
        }

        BeamResponse? imposed = hasImposed ? Solve(model, FactorsOf(model, -1), true, touching) : null;
        return _method.StayedFinite
            ? new BeamOutcome.Stands(determinacy, isHeldAlong, combinations.MoveToImmutable())
            {
                Cases = cases,
                ImposedMovements = imposed,
            }
            : new BeamOutcome.Undecided(determinacy, null, UndecidedReason.BeyondArithmetic);
    }

    private ImmutableArray<BeamResponse?> SolveCases(BeamModel model, ReadOnlySpan<bool> touching, bool isHeldAlong)
    {
        ImmutableArray<BeamResponse?>.Builder cases = ImmutableArray.CreateBuilder<BeamResponse?>(model.Cases.Length);
        for (int i = 0; i < model.Cases.Length; i++)
        {
            bool canStand = isHeldAlong || !Lengthways.IsIn(model.Cases[i]);
            cases.Add(canStand ? Solve(model, FactorsOf(model, i), false, touching) : null);
        }

        return cases.MoveToImmutable();
    }

    private BeamResponse Solve(
        BeamModel model, ReadOnlySpan<double> factors, bool withImposed, ReadOnlySpan<bool> touching)
    {
        _method.Load(factors);
        _method.Move(withImposed);
        return Answers.Of(_method, model, factors, touching);
    }

    /// <summary>Some support acts one way only: each combination has to find what touches.</summary>
    private BeamOutcome SolveEachOnWhatTouches(BeamModel model, Determinacy determinacy, bool wantsAlong)
    {
        bool isHeldAlong = true;
        ImmutableArray<CombinationResponse>.Builder combinations =
            ImmutableArray.CreateBuilder<CombinationResponse>(model.Combinations.Length);
        foreach (Combination combination in model.Combinations)
        {
            _method.Load(combination.Factors.AsSpan());
            ContactVerdict verdict = _contact.Find(model, wantsAlong);
            if (verdict != ContactVerdict.Stands)
            {
                return WithoutStand(determinacy, combination, verdict);
            }

            isHeldAlong &= !_kinematics.SlidesFreely;
            combinations.Add(new CombinationResponse(
                combination, Answers.Of(_method, model, combination.Factors.AsSpan(), _contact.Touching)));
        }

        return new BeamOutcome.Stands(determinacy, isHeldAlong, combinations.MoveToImmutable());
    }

    private BeamOutcome WithoutStand(Determinacy determinacy, Combination combination, ContactVerdict verdict) =>
        verdict switch
        {
            ContactVerdict.Tips => new BeamOutcome.Tips(determinacy, combination, LiftedOff(), _kinematics.Motions()),
            ContactVerdict.Contradicts => new BeamOutcome.Undecided(
                determinacy, combination, UndecidedReason.ContactContradictsItself),
            _ => new BeamOutcome.Undecided(determinacy, combination, UndecidedReason.BeyondArithmetic),
        };

    private ImmutableArray<int> LiftedOff()
    {
        ImmutableArray<int>.Builder lifted = ImmutableArray.CreateBuilder<int>();
        for (int i = 0; i < _contact.Touching.Length; i++)
        {
            if (!_contact.Touching[i])
            {
                lifted.Add(i);
            }
        }

        return lifted.ToImmutable();
    }

    /// <summary>Factors that take one case alone, or none for -1.</summary>
    private ReadOnlySpan<double> FactorsOf(BeamModel model, int only)
    {
        Workspace.Grow(ref _factors, model.Cases.Length);
        Span<double> factors = _factors.AsSpan(0, model.Cases.Length);
        factors.Clear();
        if (only >= 0)
        {
            factors[only] = 1;
        }

        return factors;
    }

    /// <summary>The one case that a combination takes, with factor 1, or -1.</summary>
    private static int OnlyCase(ImmutableArray<double> factors)
    {
        int only = -1;
        for (int i = 0; i < factors.Length; i++)
        {
            if (factors[i] != 0)
            {
                if (only >= 0 || factors[i] != 1)
                {
                    return -1;
                }

                only = i;
            }
        }

        return only;
    }

    private static bool HasImposed(Support support) =>
        (support.Settlement != 0 && support.Across is not Restraint.None)
        || (support.ImposedRotation != 0 && support.Rotation is Restraint.Rigid);
}
