using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Finds which of the supports that act one way only touch, under loads now on the beam.</summary>
/// <remarks>
/// A touching support must push (or hold down), a lifted one must stand clear; the search switches those that do not
/// until all do. All at once as long as that leaves fewer and fewer, else only the last of them: that ends, because the
/// soft springs at lifted supports make the problem one with a positive definite matrix (docs/methods.md, "Supports
/// that let go"). They are there only while what touches could not hold the beam alone.
/// </remarks>
internal sealed class Contact(StiffnessMethod method, Kinematics kinematics)
{
    /// <summary>What counts as nothing, relative to the greatest force or movement [–]: rounding of the inputs.</summary>
    private const double Nothing = 1e-12;

    /// <summary>Soft springs carrying less than this of the loads carry nothing [–].</summary>
    private const double Leaning = 1e-9;

    private const int Patience = 5;
    private const int MostTried = 12;

    private bool[] _touching = [];
    private bool[] _wrong = [];
    private BeamModel? _model;
    private int _count;
    private double _ease;
    private bool _wantsAlong;

    /// <summary>What the search came to.</summary>
    internal enum Verdict
    {
        /// <summary>The beam stands on what touches.</summary>
        Stands,

        /// <summary>What touches cannot hold it.</summary>
        Tips,

        /// <summary>No set of touching supports agrees with itself.</summary>
        Contradicts,

        /// <summary>The arithmetic cannot hold the figures.</summary>
        Fails,
    }

    /// <summary>Which supports touch; those that act both ways always do.</summary>
    internal ReadOnlySpan<bool> Touching => _touching.AsSpan(0, _count);

    private BeamModel Model => _model ?? throw new InvalidOperationException("No beam was given.");

    /// <summary>Finds what touches; the method is left solved on it.</summary>
    internal Verdict Find(BeamModel model, bool wantsAlong)
    {
        _model = model;
        _wantsAlong = wantsAlong;
        _count = model.Supports.Length;
        Workspace.Grow(ref _touching, _count);
        Workspace.Grow(ref _wrong, _count);
        _touching.AsSpan(0, _count).Fill(true);
        _ease = EaseOf(model);
        return Switch() ?? TryEach() ?? Verdict.Contradicts;
    }

    /// <summary>Switches supports until none is wrong.</summary>
    /// <returns>The verdict, or null: it went on for too long.</returns>
    private Verdict? Switch()
    {
        int fewest = int.MaxValue;
        int patience = Patience;
        for (int step = 0; step < 20 * _count + 50; step++)
        {
            if (!Solve(out bool isHeld))
            {
                return Verdict.Fails;
            }

            int wrong = FindWrong();
            if (wrong == 0)
            {
                return isHeld ? Verdict.Stands : Settle();
            }

            bool isFewer = wrong < fewest;
            patience = isFewer ? Patience : patience - 1;
            fewest = Math.Min(fewest, wrong);
            SwitchWrong(lastOnly: patience <= 0);
        }

        return null;
    }

    /// <summary>Ends the search where what touches cannot hold the beam alone: it tips, unless nothing leans on the soft springs.</summary>
    private Verdict Settle()
    {
        if (LeansOnEase())
        {
            return Verdict.Tips;
        }

        for (int i = 0; i < _count; i++)
        {
            _touching[i] |= IsClose(i);
        }

        return Solve(out bool isHeld) && isHeld && FindWrong() == 0 ? Verdict.Stands : Verdict.Tips;
    }

    /// <summary>Tries every set of lifted supports where they are few.</summary>
    private Verdict? TryEach()
    {
        int oneWay = 0;
        for (int i = 0; i < _count; i++)
        {
            oneWay += IsOneWay(i) ? 1 : 0;
        }

        for (int set = 0; oneWay <= MostTried && set < 1 << oneWay; set++)
        {
            int bit = 0;
            for (int i = 0; i < _count; i++)
            {
                _touching[i] = !IsOneWay(i) || ((set >> bit++) & 1) == 0;
            }

            if (!Solve(out bool isHeld))
            {
                return Verdict.Fails;
            }

            if (isHeld && FindWrong() == 0)
            {
                return Verdict.Stands;
            }
        }

        return null;
    }

    private bool Solve(out bool isHeld)
    {
        kinematics.Examine(Model, Touching);
        isHeld = !kinematics.CanMoveAcross;
        if (!method.Hold(Touching, _wantsAlong, isHeld ? 0 : _ease))
        {
            return false;
        }

        method.Move(withImposed: true);
        return true;
    }

    /// <summary>Marks the touching supports that pull and the lifted ones that are run into.</summary>
    private int FindWrong()
    {
        double force = Nothing * method.GreatestForce;
        int wrong = 0;
        for (int i = 0; i < _count; i++)
        {
            _wrong[i] = IsOneWay(i) && (_touching[i] ? Push(i) < -force : Clearance(i) < -SmallMovement(i));
            wrong += _wrong[i] ? 1 : 0;
        }

        return wrong;
    }

    private void SwitchWrong(bool lastOnly)
    {
        for (int i = _count - 1; i >= 0; i--)
        {
            if (_wrong[i])
            {
                _touching[i] = !_touching[i];
                if (lastOnly)
                {
                    return;
                }
            }
        }
    }

    private bool LeansOnEase()
    {
        double carried = 0;
        for (int i = 0; i < _count; i++)
        {
            carried += _touching[i] ? 0 : Math.Abs(Clearance(i)) * _ease;
        }

        return carried > Leaning * method.GreatestForce;
    }

    private bool IsOneWay(int support) => Model.Supports[support].Action != SupportAction.Both;

    private bool IsClose(int support) => Math.Abs(Clearance(support)) <= SmallMovement(support);

    /// <summary>The reaction of a touching support in the one sense that it can give [N]: negative is wrong.</summary>
    private double Push(int support)
    {
        (double right, double up, _) = method.ReactionAt(method.Grid.NodeOfSupport(support));
        return Signed(support, Model.Supports[support].NormalPart(right, up));
    }

    /// <summary>How far the beam stands clear of a lifted support [m]: negative is wrong.</summary>
    private double Clearance(int support)
    {
        NodeMovement movement = method.MovementOf(method.Grid.NodeOfSupport(support));
        double rise = Model.Supports[support].NormalPart((double)movement.Right, (double)movement.Up);
        return Signed(support, rise + Model.Supports[support].Settlement);
    }

    private double Signed(int support, double value) =>
        Model.Supports[support].Action == SupportAction.HoldsDownOnly ? -value : value;

    private double SmallMovement(int support) =>
        Nothing * (method.GreatestMovement + Math.Abs(Model.Supports[support].Settlement));

    /// <summary>A stiffness far below any of the beam's own [N/m].</summary>
    private static double EaseOf(BeamModel model)
    {
        double flexural = double.PositiveInfinity;
        foreach (Span span in model.Spans)
        {
            flexural = Math.Min(flexural, span.FlexuralRigidity);
        }

        double ease = 1e-9 * flexural / (model.Length * model.Length * model.Length);
        foreach (Support support in model.Supports)
        {
            if (support.Across is Restraint.Spring spring)
            {
                ease = Math.Min(ease, 1e-6 * spring.Stiffness);
            }
        }

        return ease;
    }
}
