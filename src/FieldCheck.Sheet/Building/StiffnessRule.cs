using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Sheet.Building;

/// <summary>
/// Decides which rigidities a beam is solved with when not all are known. A determinate beam needs none; an
/// indeterminate one is uniform only where nothing at all is known and nothing but ratios matters; inertias without
/// moduli are such ratios; everything else is a figure missing.
/// </summary>
/// <param name="sticks">What each span is made of.</param>
/// <param name="supports">The supports.</param>
/// <param name="determinacy">Unknowns against equations.</param>
/// <param name="shearDeforms">Whether shear deforms the beam.</param>
/// <param name="problems">Takes what is missing.</param>
internal sealed class StiffnessRule(
    ImmutableArray<Stick> sticks, ImmutableArray<Support> supports, Determinacy determinacy, bool shearDeforms,
    ProblemList problems)
{
    private bool FlexureCounts => determinacy.IsCoupled ? determinacy.Total > 0 : determinacy.Across > 0;

    private bool AreaCounts => determinacy.IsCoupled ? determinacy.Total > 0 : determinacy.Along > 0;

    /// <summary>Why ratios of stiffness do not do; null: they do.</summary>
    private string? NoRatios =>
        shearDeforms ? ProblemText.ShearDeforms
        : supports.Any(support => support.Across is Restraint.Spring || support.Rotation is Restraint.Spring)
            ? ProblemText.SpringStands
        : supports.Any(support => support.Settlement != 0 || support.ImposedRotation != 0) ? ProblemText.SupportMoves
        : null;

    private bool HasNoModulus => sticks.All(stick => stick.Material is null);

    private bool HasOneModulus => sticks.All(stick => stick.Material?.ModulusInUse == sticks[0].Material?.ModulusInUse);

    /// <returns>The rigidities, or null when a figure is missing, which has been told.</returns>
    internal Rigidities? Apply()
    {
        ImmutableArray<double>? shear = Shear();
        (ImmutableArray<double>? flexural, bool uniformStiffness, bool oneModulus) = Flexural();
        // Where nothing ties along and across together, any one value serves; E·I keeps the two of like size.
        (ImmutableArray<double>? axial, bool uniformArea) = Axial(flexural?[0] ?? 1);
        if (flexural is not { } bending || axial is not { } along || (shearDeforms && shear is null))
        {
            return null;
        }

        bool absolute = AllKnown(stick => stick.FlexuralRigidity) is not null
            && (!determinacy.IsCoupled || AllKnown(stick => stick.AxialRigidity) is not null);
        return new Rigidities(bending, along, shear, absolute, uniformStiffness, oneModulus, uniformArea);
    }

    private (ImmutableArray<double>? Values, bool UniformAssumed, bool OneModulusAssumed) Flexural()
    {
        if (AllKnown(stick => stick.FlexuralRigidity) is { } known)
        {
            return (known, false, false);
        }

        if (!FlexureCounts)
        {
            return (Uniform(1), false, false);
        }

        if (NoRatios is null && HasNoModulus && AllKnown(stick => stick.Section?.Inertia) is { } inertias)
        {
            return (inertias, false, true);
        }

        bool nothingKnown = sticks.All(stick => stick.Section is null) && HasOneModulus;
        if (NoRatios is null && !determinacy.IsCoupled && nothingKnown)
        {
            return (Uniform(1), true, false);
        }

        TellMissing(nothingKnown ? NoRatios ?? ProblemText.SlopeCouples : ProblemText.OthersHaveStiffness);
        return (null, false, false);
    }

    private void TellMissing(string why)
    {
        int span = First(stick => stick.Section is null);
        string key = "section";
        if (span < 0)
        {
            span = First(stick => stick.Material is null);
            key = "material";
            why = HasNoModulus ? NoRatios ?? why : why;
        }

        problems.Add($"span[{span + 1}].{key}", ProblemText.NoStiffness(span, key, why));
    }

    private (ImmutableArray<double>? Values, bool Assumed) Axial(double uniform)
    {
        if (AllKnown(stick => stick.AxialRigidity) is { } known)
        {
            return (known, false);
        }

        ImmutableArray<double>? areas = AllKnown(stick => stick.Section?.Area);
        if (AreaCounts && HasNoModulus && areas is not null)
        {
            return (areas, false);
        }

        if (!AreaCounts || !determinacy.IsCoupled)
        {
            return (Uniform(uniform), AreaCounts);
        }

        int span = First(stick => stick.Section is { Area: null });
        if (span >= 0)
        {
            problems.Add(sticks[span].KeyOfSection(span, "area"), ProblemText.NoArea(span));
        }

        return (null, false);
    }

    private ImmutableArray<double>? Shear()
    {
        if (!shearDeforms)
        {
            return null;
        }

        for (int span = 0; span < sticks.Length; span++)
        {
            if (sticks[span].Section?.ShearArea is null)
            {
                problems.Add(sticks[span].KeyOfSection(span, "shear_area"), ProblemText.NoShear(span, "shear area"));
            }

            if (sticks[span].Material?.ShearModulus is null)
            {
                problems.Add(
                    sticks[span].KeyOfMaterial(span, "shear_modulus"), ProblemText.NoShear(span, "shear modulus"));
            }
        }

        return AllKnown(stick => stick.ShearRigidity);
    }

    private ImmutableArray<double>? AllKnown(Func<Stick, double?> figure)
    {
        ImmutableArray<double> known = [.. sticks.Select(figure).OfType<double>()];
        return known.Length == sticks.Length ? known : null;
    }

    private ImmutableArray<double> Uniform(double value) => [.. Enumerable.Repeat(value, sticks.Length)];

    private int First(Func<Stick, bool> holds) =>
        Enumerable.Range(0, sticks.Length).FirstOrDefault(span => holds(sticks[span]), -1);
}
