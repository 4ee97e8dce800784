using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Tubes in bending, AISC 360-16 F7.1 to F7.3 and F8.</summary>
internal static class Aisc360TubeBending
{
    internal static Nominal Of(SteelMember steel, Moduli moduli, TubeSides sides)
    {
        double root = steel.StiffnessRoot;
        double plastic = steel.Yield * moduli.Plastic;
        double elastic = steel.Yield * moduli.Elastic;
        double flange = sides.FlangeSlenderness;
        double web = sides.WebSlenderness;
        ImmutableArray<CheckTerm> terms =
        [
            .. Terms(CheckSymbol.FlangeSlenderness, flange, 1.12 * root, 1.40 * root),
            .. Terms(CheckSymbol.WebSlenderness, web, 2.42 * root, 5.70 * root),
            .. Aisc360Bending.PlasticTerms(steel, moduli.Plastic, plastic),
        ];
        if (flange > 1.40 * root || web > 5.70 * root)
        {
            return Nominal.Unknown(CheckClause.Aisc360Flexure, NotJudgedReason.TooSlender, terms);
        }

        Nominal Buckling(CheckClause clause, double slope, double slenderness, double start)
        {
            double moment = Math.Min(plastic, plastic - (plastic - elastic) * (slope * slenderness / root - start));
            return new Nominal(
                clause,
                moment,
                [
                    .. terms,
                    Term.Modulus(CheckSymbol.SectionModulus, moduli.Elastic),
                    Term.Moment(CheckSymbol.NominalMoment, moment),
                ]);
        }

        Nominal yielding = new(CheckClause.Aisc360F7Yielding, plastic, terms);
        return Nominal.Least(
            yielding,
            flange > 1.12 * root ? Buckling(CheckClause.Aisc360F7Flange, 3.57, flange, 4.0) : yielding,
            web > 2.42 * root ? Buckling(CheckClause.Aisc360F7Web, 0.305, web, 0.738) : yielding);
    }

    internal static Nominal Of(SteelMember steel, Moduli moduli, SectionShape.RoundTube tube)
    {
        double ratio = steel.Modulus / steel.Yield;
        double wall = tube.Diameter / tube.Wall;
        double plastic = steel.Yield * moduli.Plastic;
        ImmutableArray<CheckTerm> terms =
        [
            .. Terms(CheckSymbol.WallSlenderness, wall, 0.07 * ratio, 0.31 * ratio),
            .. Aisc360Bending.PlasticTerms(steel, moduli.Plastic, plastic),
        ];
        if (wall >= 0.45 * ratio)
        {
            return Nominal.Unknown(CheckClause.Aisc360Flexure, NotJudgedReason.TooSlender, terms);
        }

        if (wall <= 0.07 * ratio)
        {
            return new Nominal(CheckClause.Aisc360F8Yielding, plastic, terms);
        }

        double stress = wall <= 0.31 * ratio
            ? 0.021 * steel.Modulus / wall + steel.Yield
            : 0.33 * steel.Modulus / wall;
        double moment = Math.Min(plastic, stress * moduli.Elastic);
        return new Nominal(
            CheckClause.Aisc360F8Local,
            moment,
            [
                .. terms,
                Term.Modulus(CheckSymbol.SectionModulus, moduli.Elastic),
                Term.Stress(CheckSymbol.CriticalStress, stress),
                Term.Moment(CheckSymbol.NominalMoment, moment),
            ]);
    }

    private static ImmutableArray<CheckTerm> Terms(
        CheckSymbol symbol, double slenderness, double compact, double noncompact) =>
    [
        Term.Number(symbol, slenderness),
        Term.Number(CheckSymbol.CompactLimit, compact),
        Term.Number(CheckSymbol.NoncompactLimit, noncompact),
    ];
}
