using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Bending strength of the section by itself, AISC 360-16 chapter F: yielding and local buckling.</summary>
internal static class Aisc360Bending
{
    internal static Nominal Of(SteelMember steel)
    {
        if (steel.Section is not { PlasticModulus: double plastic, SectionModulus: double elastic })
        {
            return Nominal.Unknown(CheckClause.Aisc360Flexure, NotJudgedReason.NoSectionModulus);
        }

        Moduli moduli = new(plastic, elastic);
        bool isFlat = steel.Section.IsFlat;
        return steel.Shape switch
        {
            SectionShape.I shape when isFlat => Aisc360WeakBending.Of(
                steel, moduli, shape.FlangeWidth / (2 * shape.FlangeThickness), CheckFormula.HalfFlange),
            SectionShape.Channel shape when isFlat => Aisc360WeakBending.Of(
                steel, moduli, shape.FlangeWidth / shape.FlangeThickness, CheckFormula.WholeFlange),
            SectionShape.I shape => StrongAxis(steel, moduli, Aisc360Plates.Of(steel, shape), hasSlenderFlanges: true),
            SectionShape.Channel shape => StrongAxis(
                steel, moduli, Aisc360Plates.Of(steel, shape), hasSlenderFlanges: false),
            SectionShape.RectangularTube tube => Aisc360TubeBending.Of(steel, moduli, TubeSides.Of(tube, isFlat)),
            SectionShape.RoundTube tube => Aisc360TubeBending.Of(steel, moduli, tube),
            SectionShape.Rectangle or SectionShape.Round => Bar(steel, moduli),
            _ => Nominal.Unknown(CheckClause.Aisc360Flexure, NotJudgedReason.ShapeNotInRules),
        };
    }

    /// <summary>The moment to which the whole section yields.</summary>
    internal static ImmutableArray<CheckTerm> PlasticTerms(SteelMember steel, double plastic) =>
    [
        Term.Modulus(CheckSymbol.PlasticModulus, plastic),
        Term.Moment(CheckSymbol.PlasticMoment, steel.Yield * plastic, CheckFormula.PlasticMoment),
    ];

    /// <summary>The same of a shape that yields at its edge far sooner.</summary>
    internal static ImmutableArray<CheckTerm> BoundedTerms(Moduli moduli, double moment) =>
    [
        Term.Modulus(CheckSymbol.PlasticModulus, moduli.Plastic),
        Term.Modulus(CheckSymbol.SectionModulus, moduli.Elastic),
        Term.Moment(CheckSymbol.PlasticMoment, moment, CheckFormula.BoundedPlasticMoment),
    ];

    /// <summary>Yield stress and modulus of elasticity.</summary>
    internal static ImmutableArray<CheckTerm> SteelTerms(SteelMember steel) =>
        [Term.Stress(CheckSymbol.Yield, steel.Yield), Term.Stress(CheckSymbol.Modulus, steel.Modulus)];

    /// <summary>A moment that yielding alone limits.</summary>
    internal static CheckTerm Yields(double moment) => Term.Moment(CheckSymbol.NominalMoment, moment, CheckFormula.Yielding);

    /// <summary>F2.1 while the flanges are compact, F3.2 for an I whose flanges are not.</summary>
    private static Nominal StrongAxis(
        SteelMember steel, Moduli moduli, Aisc360Plates plates, bool hasSlenderFlanges)
    {
        double plastic = steel.Yield * moduli.Plastic;
        ImmutableArray<CheckTerm> terms =
        [
            .. SteelTerms(steel), .. plates.WebTerms, .. plates.FlangeTerms, .. PlasticTerms(steel, moduli.Plastic),
        ];
        bool isCompact = plates.Flange <= plates.FlangeCompact;
        if (plates.Web > plates.WebCompact || !isCompact && !hasSlenderFlanges)
        {
            return Nominal.Unknown(CheckClause.Aisc360Flexure, NotJudgedReason.TooSlender, terms);
        }

        if (isCompact)
        {
            return new Nominal(CheckClause.Aisc360F2Yielding, plastic, [.. terms, Yields(plastic)]);
        }

        double elastic = 0.7 * steel.Yield * moduli.Elastic;
        double share = (plates.Flange - plates.FlangeCompact) / (plates.FlangeNoncompact - plates.FlangeCompact);
        bool isNoncompact = plates.Flange <= plates.FlangeNoncompact;
        double buckling = isNoncompact
            ? plastic - (plastic - elastic) * share
            : 0.9 * steel.Modulus * Aisc360Plates.WebRestraint(plates.Web) * moduli.Elastic
                / (plates.Flange * plates.Flange);
        double moment = Math.Min(plastic, buckling);
        return new Nominal(
            CheckClause.Aisc360F3Flange,
            moment,
            [
                .. terms,
                Term.Modulus(CheckSymbol.SectionModulus, moduli.Elastic),
                Term.Moment(
                    CheckSymbol.NominalMoment,
                    moment,
                    isNoncompact ? CheckFormula.AiscNoncompactFlange : CheckFormula.AiscSlenderFlange),
            ]);
    }

    /// <summary>F11.1.</summary>
    private static Nominal Bar(SteelMember steel, Moduli moduli)
    {
        double moment = steel.Yield * Math.Min(moduli.Plastic, 1.6 * moduli.Elastic);
        return new Nominal(
            CheckClause.Aisc360F11Yielding,
            moment,
            [Term.Stress(CheckSymbol.Yield, steel.Yield), .. BoundedTerms(moduli, moment), Yields(moment)]);
    }
}
