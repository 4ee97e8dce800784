using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Solves beams. It keeps its working memory from one solve to the next; one instance a thread.</summary>
public sealed class BeamSolver
{
    private readonly StiffnessMethod _method = new();
    private readonly Kinematics _kinematics = new();
    private readonly Contact _contact;
    private bool[] _touching = [];
    private double[] _factors = [];

    /// <summary>A solver that has solved nothing yet.</summary>
    public BeamSolver()
    {
        _contact = new Contact(_method, _kinematics);
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
        _touching.AsSpan(0, model.Supports.Length).Fill(true);
        ReadOnlySpan<bool> touching = _touching.AsSpan(0, model.Supports.Length);
        _kinematics.Examine(model, touching);
        bool wantsAlong = AsksAlong(model);
        if (_kinematics.CanMoveAcross || (_kinematics.SlidesFreely && wantsAlong))
        {
            return new BeamOutcome.CanMove(determinacy, _kinematics.Motions());
        }

        bool isClose = _kinematics.LeastPivot < Solving.NearMotion.Plain && model.Hinges.Length <= Solving.NearMotion.MostHinges;
        FreeMotion? nearMotion = isClose ? Solving.NearMotion.Of(model) : null;
        _method.Prepare(model);
        BeamOutcome outcome = model.Supports.Any(support => support.Action != SupportAction.Both)
            ? SolveContact(model, determinacy, wantsAlong)
            : SolveLinear(model, determinacy, touching, wantsAlong);
        return outcome is BeamOutcome.Stands stands ? stands with { NearMotion = nearMotion } : outcome;
    }

    /// <summary>Counts unknowns against equations without solving; needs no stiffness.</summary>
    /// <param name="model">The beam.</param>
    public static Determinacy DeterminacyOf(BeamModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return DeterminacyCount.Of(model);
    }

    private BeamOutcome SolveLinear(
        BeamModel model, Determinacy determinacy, ReadOnlySpan<bool> touching, bool wantsAlong)
    {
        bool isHeldAlong = !_kinematics.SlidesFreely;
        bool hasImposed = model.Supports.Any(HasImposed);
        if (!_method.Hold(touching, wantsAlong))
        {
            return new BeamOutcome.Undecided(determinacy, null, UndecidedReason.BeyondArithmetic);
        }

        ImmutableArray<BeamResponse?>.Builder cases = ImmutableArray.CreateBuilder<BeamResponse?>(model.Cases.Length);
        for (int i = 0; i < model.Cases.Length; i++)
        {
            bool canCarry = isHeldAlong || !ActsAlong(model.Cases[i]);
            cases.Add(canCarry ? AnswerTo(model, FactorsOf(model, i), false, touching) : null);
        }

        BeamResponse? imposed = hasImposed ? AnswerTo(model, FactorsOf(model, -1), true, touching) : null;
        ImmutableArray<CombinationResponse>.Builder combinations =
            ImmutableArray.CreateBuilder<CombinationResponse>(model.Combinations.Length);
        foreach (Combination combination in model.Combinations)
        {
            int only = hasImposed ? -1 : OnlyCase(combination.Factors);
            BeamResponse response = (only < 0 ? null : cases[only])
                ?? AnswerTo(model, combination.Factors.AsSpan(), hasImposed, touching);
            combinations.Add(new CombinationResponse(combination, response));
        }

        return new BeamOutcome.Stands(determinacy, isHeldAlong, combinations.MoveToImmutable())
        {
            Cases = cases.MoveToImmutable(),
            ImposedMovements = imposed,
        };
    }

    private BeamOutcome SolveContact(BeamModel model, Determinacy determinacy, bool wantsAlong)
    {
        bool isHeldAlong = true;
        ImmutableArray<CombinationResponse>.Builder combinations =
            ImmutableArray.CreateBuilder<CombinationResponse>(model.Combinations.Length);
        foreach (Combination combination in model.Combinations)
        {
            _method.Load(combination.Factors.AsSpan());
            Contact.Verdict verdict = _contact.Find(model, wantsAlong);
            isHeldAlong &= !_kinematics.SlidesFreely;
            switch (verdict)
            {
                case Contact.Verdict.Stands when !_kinematics.SlidesFreely || !_method.HasAlongLoad:
                    combinations.Add(new CombinationResponse(
                        combination, Answer(model, combination.Factors.AsSpan(), _contact.Touching)));
                    break;
                case Contact.Verdict.Stands or Contact.Verdict.Tips:
                    return new BeamOutcome.Tips(
                        determinacy, combination, LiftedOff(_contact.Touching), _kinematics.Motions());
                case Contact.Verdict.Contradicts:
                    return new BeamOutcome.Undecided(
                        determinacy, combination, UndecidedReason.ContactContradictsItself);
                default:
                    return new BeamOutcome.Undecided(determinacy, combination, UndecidedReason.BeyondArithmetic);
            }
        }

        return new BeamOutcome.Stands(determinacy, isHeldAlong, combinations.MoveToImmutable());
    }

    private BeamResponse AnswerTo(
        BeamModel model, ReadOnlySpan<double> factors, bool withImposed, ReadOnlySpan<bool> touching)
    {
        _method.Load(factors);
        _method.Move(withImposed);
        return Answer(model, factors, touching);
    }

    private BeamResponse Answer(BeamModel model, ReadOnlySpan<double> factors, ReadOnlySpan<bool> touching)
    {
        _method.Trace();
        Equilibrium equilibrium = default;
        for (int i = 0; i < factors.Length; i++)
        {
            if (factors[i] != 0)
            {
                equilibrium.Add(model.Cases[i], factors[i]);
            }
        }

        ImmutableArray<Reaction>.Builder reactions = ImmutableArray.CreateBuilder<Reaction>(touching.Length);
        for (int i = 0; i < touching.Length; i++)
        {
            Reaction reaction = ReactionOf(model.Supports[i], _method.Grid.NodeOfSupport(i), touching[i]);
            reactions.Add(reaction);
            equilibrium.Add(model.Supports[i].Position, reaction);
        }

        return new BeamResponse
        {
            Reactions = reactions.MoveToImmutable(),
            Proof = equilibrium.Prove(),
            HasDeflections = model.HasAbsoluteStiffness,
            Pieces = [.. _method.Pieces],
        };
    }

    private Reaction ReactionOf(Support support, int node, bool touches)
    {
        bool isSloped = support.SurfaceSlope != 0;
        if (!touches)
        {
            return new Reaction(0, 0, 0, isSloped ? 0 : null, true);
        }

        (double right, double up, double turn) = _method.ReactionAt(node);
        if (isSloped)
        {
            double normal = support.NormalPart(right, up);
            (double sine, double cosine) = Math.SinCos(support.SurfaceSlope);
            return new Reaction(0 - sine * normal, cosine * normal, IfHeld(support.Rotation, turn), normal, false);
        }

        return new Reaction(
            IfHeld(support.Along, right), IfHeld(support.Across, up), IfHeld(support.Rotation, turn), null, false);
    }

    private static double IfHeld(Restraint restraint, double force) => restraint is Restraint.None ? 0 : force;

    private static ImmutableArray<int> LiftedOff(ReadOnlySpan<bool> touching)
    {
        ImmutableArray<int>.Builder lifted = ImmutableArray.CreateBuilder<int>();
        for (int i = 0; i < touching.Length; i++)
        {
            if (!touching[i])
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

    /// <summary>Whether some combination, or without any some case, acts along the beam.</summary>
    private static bool AsksAlong(BeamModel model)
    {
        for (int i = 0; i < model.Cases.Length; i++)
        {
            bool isAsked = model.Combinations.IsEmpty;
            foreach (Combination combination in model.Combinations)
            {
                isAsked |= combination.Factors[i] != 0;
            }

            if (isAsked && ActsAlong(model.Cases[i]))
            {
                return true;
            }
        }

        return false;
    }

    private static bool ActsAlong(LoadCase loadCase)
    {
        foreach (Load load in loadCase.Loads)
        {
            if (load is Load.Point { Right: not 0 }
                or Load.Distributed { ActsAlong: true, StartIntensity: not 0 }
                or Load.Distributed { ActsAlong: true, EndIntensity: not 0 })
            {
                return true;
            }
        }

        return false;
    }

    private static bool HasImposed(Support support) =>
        (support.Settlement != 0 && support.Across is not Restraint.None)
        || (support.ImposedRotation != 0 && support.Rotation is Restraint.Rigid);
}
