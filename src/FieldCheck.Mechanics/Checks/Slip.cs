using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Checks;

/// <summary>What may have gone wrong in stated reactions. Closed set: the cases are the nested records.</summary>
/// <remarks>Loads are named by their index over all cases; units by which are mixed up and which way it went.</remarks>
public abstract record Slip
{
    private Slip()
    {
    }

    /// <summary>The beam's own weight is not in the figures.</summary>
    public sealed record OwnWeightLeftOut : Slip;

    /// <summary>The beam's own weight is in the figures although it is not among the loads.</summary>
    public sealed record OwnWeightPutIn : Slip;

    /// <summary>The figures are those of another combination of the model.</summary>
    /// <param name="Combination">Its index.</param>
    public sealed record OtherCombination(int Combination) : Slip;

    /// <summary>A common factor is on the loads, or taken off them.</summary>
    /// <param name="Factor">The factor [–].</param>
    /// <param name="IsTakenOff">True: the loads are divided by it.</param>
    /// <param name="IsOnVariableOnly">True: only variable loads have it.</param>
    public sealed record CommonFactor(double Factor, bool IsTakenOff, bool IsOnVariableOnly) : Slip;

    /// <summary>The loads have other factors than the combination gives them.</summary>
    /// <param name="Permanent">Factor of the permanent loads [–].</param>
    /// <param name="Variable">Factor of the variable ones [–].</param>
    public sealed record OtherFactors(double Permanent, double Variable) : Slip;

    /// <summary>The figures stand at the wrong ends.</summary>
    public sealed record EndsSwapped : Slip;

    /// <summary>Figures that act down, to the left or clockwise are written as sizes, as if they acted the other way.</summary>
    public sealed record SenseLeftOut : Slip;

    /// <summary>Every figure is in another unit than is written.</summary>
    /// <param name="Units">The two.</param>
    /// <param name="IsTooGreat">True: the numbers are too great.</param>
    public sealed record FigureUnits(UnitMixUp Units, bool IsTooGreat) : Slip;

    /// <summary>The moments are in another unit than is written.</summary>
    /// <param name="Units">The two.</param>
    /// <param name="IsTooGreat">True: the numbers are too great.</param>
    public sealed record MomentUnits(UnitMixUp Units, bool IsTooGreat) : Slip;

    /// <summary>Every length and place was taken in another unit.</summary>
    /// <param name="Units">The two.</param>
    /// <param name="IsTooGreat">True: they were taken as too long.</param>
    public sealed record LengthUnits(UnitMixUp Units, bool IsTooGreat) : Slip;

    /// <summary>One load is not in the figures.</summary>
    /// <param name="Load">The load.</param>
    public sealed record LoadLeftOut(int Load) : Slip;

    /// <summary>One load is in the figures twice.</summary>
    /// <param name="Load">The load.</param>
    public sealed record LoadDoubled(int Load) : Slip;

    /// <summary>One load was measured from the other end of the beam.</summary>
    /// <param name="Load">The load.</param>
    public sealed record LoadFromOtherEnd(int Load) : Slip;

    /// <summary>One spread load was taken as a single force in the middle of its stretch.</summary>
    /// <param name="Load">The load.</param>
    public sealed record LoadLumped(int Load) : Slip;

    /// <summary>One load was spread evenly over a stretch.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="From">Left end of the stretch [m].</param>
    /// <param name="To">Right end of the stretch [m].</param>
    public sealed record LoadSpread(int Load, double From, double To) : Slip;

    /// <summary>The size of one load was taken in another unit.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="Units">The two.</param>
    /// <param name="IsTooGreat">True: it was taken as too great.</param>
    public sealed record LoadUnits(int Load, UnitMixUp Units, bool IsTooGreat) : Slip;

    /// <summary>The place of one load was taken in another unit.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="Units">The two.</param>
    /// <param name="IsTooGreat">True: it was taken as too far from the left end.</param>
    public sealed record PlaceUnits(int Load, UnitMixUp Units, bool IsTooGreat) : Slip;

    /// <summary>The length of one spread load was taken in another unit.</summary>
    /// <param name="Load">The load.</param>
    /// <param name="Units">The two.</param>
    /// <param name="IsTooGreat">True: it was taken as too long.</param>
    public sealed record StretchUnits(int Load, UnitMixUp Units, bool IsTooGreat) : Slip;

    /// <summary>Spread loads come from half or double the width.</summary>
    /// <param name="Load">The load; null: every one but own weight.</param>
    /// <param name="Factor">A half or two [–].</param>
    public sealed record TributaryWidth(int? Load, double Factor) : Slip;

    /// <summary>Each bay was taken as a simple span.</summary>
    public sealed record SimpleSpans : Slip;

    /// <summary>A hinge was overlooked.</summary>
    /// <param name="Hinge">Its index; null: every one.</param>
    public sealed record HingeOverlooked(int? Hinge) : Slip;

    /// <summary>The loads of one case stand on some bays only.</summary>
    /// <param name="Case">Index of the case.</param>
    /// <param name="Bays">Those bays, counted from 0 over overhangs and bays alike.</param>
    public sealed record Pattern(int Case, ImmutableArray<int> Bays) : Slip;

    /// <summary>Two slips at once.</summary>
    /// <param name="First">One of them.</param>
    /// <param name="Second">The other.</param>
    public sealed record Together(Slip First, Slip Second) : Slip;

    /// <summary>One support stands elsewhere; the place is fitted to the figures.</summary>
    /// <param name="Support">Its index.</param>
    /// <param name="Position">Where it would have to stand [m].</param>
    public sealed record SupportMoved(int Support, double Position) : Slip;

    /// <summary>A load that the beam does not have, or lacks; size and place are fitted to the figures.</summary>
    /// <param name="Down">What the figures lack [N], positive down; negative: what they have too much.</param>
    /// <param name="Position">Where it would have to stand [m].</param>
    public sealed record LoadMissing(double Down, double Position) : Slip;
}
