using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>A guess at which supports touch, the beam solved on it, and which of them it shows to be wrong.</summary>
/// <remarks>
/// A touching support must push (or hold down), a lifted one must stand clear. While what touches could not hold the
/// beam alone, soft springs at the lifted supports do, so that there is always an answer to judge by.
/// </remarks>
internal sealed class ContactState(StiffnessMethod method, Kinematics kinematics)
{
    /// <summary>
    /// What counts as nothing, relative to the greatest force or movement [–]: rounding of the inputs.
    /// </summary>
    private const double Nothing = 1e-12;

    /// <summary>Soft springs that carry less than this part of the loads carry nothing [–].</summary>
    private const double Leaning = 1e-9;

    /// <summary>
    /// How much farther than the heights of the supports differ a resting beam may stand off one [–].
    /// </summary>
    private const double ByHeight = 1000;

    /// <summary>The soft springs, relative to the stiffness of the whole beam [–].</summary>
    private const double EasePerStiffness = 1e-12;

    /// <summary>A gentle press, relative to the loads and to what would bend the beam by the least gap [–].</summary>
    private const double Gentle = 1e-6;

    private bool[] _touching = [];
    private bool[] _wrong = [];
    private BeamModel? _model;
    private double _ease;
    private bool _wantsAlong;

    /// <summary>How many supports the beam has.</summary>
    internal int Count { get; private set; }

    /// <summary>Which supports touch; those that act both ways always do.</summary>
    internal Span<bool> Touching => _touching.AsSpan(0, Count);

    /// <summary>Whether what touches holds the beam against the loads now on it.</summary>
    internal bool IsHeld { get; private set; }

    /// <summary>Whether what touches, not holding the beam, lets the loads move it.</summary>
    internal bool IsLetGo => SlidesAway || LeansOnEase();

    private bool SlidesAway => kinematics.SlidesFreely && method.HasAlongLoad;

    private BeamModel Model => _model ?? throw new InvalidOperationException("No beam was given.");

    /// <summary>Begins with a beam, every support touching.</summary>
    internal void Begin(BeamModel model, bool wantsAlong)
    {
        _model = model;
        _wantsAlong = wantsAlong;
        Count = model.Supports.Length;
        Workspace.Grow(ref _touching, Count);
        Workspace.Grow(ref _wrong, Count);
        _ease = EaseOf(model);
        TouchAll();
    }

    internal void TouchAll() => Touching.Fill(true);

    /// <summary>Presses the beam gently down (1), up (-1), or no more (0): far too little to close a gap by bending.</summary>
    internal void Press(int sense)
    {
        double least = double.PositiveInfinity;
        foreach (Support support in Model.Supports)
        {
            least = support.Settlement == 0 ? least : Math.Min(least, Math.Abs(support.Settlement));
        }

        double bending = double.IsFinite(least) ? least * _ease / EasePerStiffness : 0;
        double ofLoads = method.LoadSize > 0 ? method.LoadSize : bending;
        method.Press = sense * Gentle * Math.Min(bending, ofLoads) / Count;
    }

    internal bool IsOneWay(int support) => Model.Supports[support].Action != SupportAction.Both;

    internal bool IsWrong(int support) => _wrong[support];

    /// <summary>Solves on what touches.</summary>
    /// <param name="isEased">True: the soft springs stay even where what touches holds the beam.</param>
    /// <returns>False: the arithmetic cannot hold the figures.</returns>
    internal bool Solve(bool isEased = false)
    {
        kinematics.Examine(Model, Touching);
        IsHeld = !kinematics.CanMoveAcross && !SlidesAway;
        if (!method.Hold(Touching, _wantsAlong, IsHeld && !isEased ? 0 : _ease))
        {
            return false;
        }

        method.Move(withImposed: true);
        return method.StayedFinite;
    }

    /// <summary>Marks the touching supports that pull and the lifted ones that the beam runs into.</summary>
    /// <returns>How many there are.</returns>
    internal int FindWrong()
    {
        double force = Nothing * method.GreatestForce;
        int wrong = 0;
        for (int i = 0; i < Count; i++)
        {
            _wrong[i] = IsOneWay(i) && (_touching[i] ? Push(i) < -force : Clearance(i) < -SmallMovement(i));
            wrong += _wrong[i] ? 1 : 0;
        }

        return wrong;
    }

    /// <summary>
    /// Whether the soft springs carry loads, and more than unequal heights of the supports make them carry.
    /// </summary>
    private bool LeansOnEase()
    {
        double carried = 0;
        double settled = 0;
        for (int i = 0; i < Count; i++)
        {
            carried += _touching[i] ? 0 : Math.Abs(Clearance(i)) * _ease;
            settled += Math.Abs(Model.Supports[i].Settlement) * _ease;
        }

        return carried > Leaning * method.LoadSize + ByHeight * settled;
    }

    /// <summary>The reaction of a touching support in the one sense that it can give [N]: negative is wrong.</summary>
    internal double Push(int support)
    {
        (double right, double up, _) = method.ReactionAt(method.Grid.NodeOfSupport(support));
        return Signed(support, Model.Supports[support].NormalPart(right, up));
    }

    /// <summary>How far the beam stands clear of a support [m]: negative is wrong.</summary>
    internal double Clearance(int support)
    {
        NodeMovement movement = method.MovementOf(method.Grid.NodeOfSupport(support));
        double rise = Model.Supports[support].NormalPart((double)movement.Right, (double)movement.Up);
        return Signed(support, rise + Model.Supports[support].Settlement);
    }

    private double Signed(int support, double value) =>
        Model.Supports[support].Action == SupportAction.HoldsDownOnly ? -value : value;

    private double SmallMovement(int support) =>
        Nothing * (method.GreatestMovement + Math.Abs(Model.Supports[support].Settlement));

    /// <summary>
    /// A stiffness far below any of the beam's own [N/m], yet far above the rounding of double-doubles.
    /// </summary>
    private static double EaseOf(BeamModel model)
    {
        double flexural = double.PositiveInfinity;
        foreach (Span span in model.Spans)
        {
            flexural = Math.Min(flexural, span.FlexuralRigidity);
        }

        double ease = EasePerStiffness * flexural / (model.Length * model.Length * model.Length);
        foreach (Support support in model.Supports)
        {
            if (support.Across is Restraint.Spring spring)
            {
                ease = Math.Min(ease, 1e-9 * spring.Stiffness);
            }
        }

        return ease;
    }
}
