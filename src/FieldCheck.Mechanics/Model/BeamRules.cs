using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Model;

/// <summary>What a beam model must keep to; a breach is a bug of the caller's.</summary>
internal static class BeamRules
{
    /// <summary>Checks a model again, for one altered after it was made; cheap beside a solve.</summary>
    /// <exception cref="ArgumentException">Something breaks the rules that <see cref="BeamModel"/> states.</exception>
    internal static void Check(BeamModel model) =>
        Check(model.JointPositions, model.Supports, model.Hinges, model.Cases, model.Combinations);

    /// <summary>Checks all that makes a model.</summary>
    /// <returns>The joints.</returns>
    /// <exception cref="ArgumentException">Something breaks the rules that <see cref="BeamModel"/> states.</exception>
    internal static ImmutableArray<double> Check(
        ImmutableArray<double> joints,
        ImmutableArray<Support> supports,
        ImmutableArray<double> hinges,
        ImmutableArray<LoadCase> cases,
        ImmutableArray<Combination> combinations)
    {
        CheckJoints(joints);
        CheckSupports(supports, joints[^1]);
        CheckHinges(hinges, supports, joints[^1]);
        CheckCases(cases, joints[^1]);
        CheckCombinations(combinations, cases.Length);
        return joints;
    }

    private static void CheckJoints(ImmutableArray<double> joints)
    {
        for (int i = 1; i < joints.Length; i++)
        {
            Require.That(
                joints[i] > joints[i - 1] && double.IsFinite(joints[i]),
                "Every span must be long enough to move its far joint on.",
                nameof(BeamModel.Spans));
        }
    }

    private static void CheckSupports(ImmutableArray<Support> supports, double length)
    {
        Require.Given(supports, nameof(BeamModel.Supports));
        double before = double.NegativeInfinity;
        foreach (Support support in supports)
        {
            Require.That(
                support.Position > before && support.Position <= length,
                "Supports must stand on the beam in order, no two at one place.",
                nameof(BeamModel.Supports));
            before = support.Position;
            CheckSupport(support);
        }
    }

    private static void CheckSupport(Support support)
    {
        bool holdsAcross = support.Across is not Restraint.None;
        Require.That(
            support.SurfaceSlope == 0 || (holdsAcross && support.Along is Restraint.None),
            "On a sloped surface a support holds normal to it and not along.",
            nameof(BeamModel.Supports));
        Require.That(
            support.Action == SupportAction.Both || (holdsAcross && support.Rotation is not Restraint.Rigid),
            "Only a support that holds across and not in rotation can act one way only.",
            nameof(BeamModel.Supports));
    }

    private static void CheckHinges(ImmutableArray<double> hinges, ImmutableArray<Support> supports, double length)
    {
        Require.Given(hinges, nameof(BeamModel.Hinges));
        double before = 0;
        int support = 0;
        foreach (double hinge in hinges)
        {
            Require.That(
                hinge > before && hinge < length,
                "Hinges must stand inside the beam in order, no two at one place.",
                nameof(BeamModel.Hinges));
            before = hinge;
            while (support < supports.Length && supports[support].Position < hinge)
            {
                support++;
            }

            Require.That(
                support == supports.Length
                    || supports[support].Position != hinge
                    || supports[support].Rotation is Restraint.None,
                "A hinge cannot stand at a support that resists rotation.",
                nameof(BeamModel.Hinges));
        }
    }

    private static void CheckCases(ImmutableArray<LoadCase> cases, double length)
    {
        Require.Given(cases, nameof(BeamModel.Cases));
        foreach (LoadCase loadCase in cases)
        {
            Require.Given(loadCase.Loads, nameof(LoadCase.Loads));
            foreach (Load load in loadCase.Loads)
            {
                Require.That(load.End <= length, "Loads must act on the beam.", nameof(BeamModel.Cases));
            }
        }
    }

    private static void CheckCombinations(ImmutableArray<Combination> combinations, int caseCount)
    {
        Require.Given(combinations, nameof(BeamModel.Combinations));
        foreach (Combination combination in combinations)
        {
            Require.Given(combination.Factors, nameof(Combination.Factors));
            Require.That(
                combination.Factors.Length == caseCount,
                "A combination must have one factor for each case.",
                nameof(BeamModel.Combinations));
            foreach (double factor in combination.Factors)
            {
                Require.Finite(factor);
            }
        }
    }
}
