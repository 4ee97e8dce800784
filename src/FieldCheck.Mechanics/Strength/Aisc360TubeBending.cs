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
            .. Aisc360Bending.SteelTerms(steel),
            Term.Number(CheckSymbol.FlangeSlenderness, flange, CheckFormula.TubeFlange),
            Term.Number(CheckSymbol.FlangeCompactLimit, 1.12 * root, CheckFormula.AiscTubeFlangeCompact),
            Term.Number(CheckSymbol.FlangeNoncompactLimit, 1.40 * root, CheckFormula.AiscTubeFlangeNoncompact),
            Term.Number(CheckSymbol.WebSlenderness, web, CheckFormula.TubeWeb),
            Term.Number(CheckSymbol.WebCompactLimit, 2.42 * root, CheckFormula.AiscTubeWebCompact),
            Term.Number(CheckSymbol.WebNoncompactLimit, 5.70 * root, CheckFormula.AiscTubeWebNoncompact),
            .. Aisc360Bending.PlasticTerms(steel, moduli.Plastic),
        ];
        if (flange > 1.40 * root || web > 5.70 * root)
        {
            return Nominal.Unknown(CheckClause.Aisc360Flexure, NotJudgedReason.TooSlender, terms);
        }

        Nominal Buckling(CheckClause clause, CheckFormula by, double slope, double slenderness, double start)
        {
            double moment = Math.Min(plastic, plastic - (plastic - elastic) * (slope * slenderness / root - start));
            return new Nominal(
                clause,
                moment,
                [
                    .. terms,
                    Term.Modulus(CheckSymbol.SectionModulus, moduli.Elastic),
                    Term.Moment(CheckSymbol.NominalMoment, moment, by),
                ]);
        }

        Nominal yielding = new(CheckClause.Aisc360F7Yielding, plastic, [.. terms, Aisc360Bending.Yields(plastic)]);
        return Nominal.Least(
            yielding,
            flange > 1.12 * root
                ? Buckling(CheckClause.Aisc360F7Flange, CheckFormula.AiscTubeFlangeMoment, 3.57, flange, 4.0)
                : yielding,
            web > 2.42 * root
                ? Buckling(CheckClause.Aisc360F7Web, CheckFormula.AiscTubeWebMoment, 0.305, web, 0.738)
                : yielding);
    }

    internal static Nominal Of(SteelMember steel, Moduli moduli, SectionShape.RoundTube tube)
    {
        double ratio = steel.Modulus / steel.Yield;
        double wall = tube.Diameter / tube.Wall;
        double plastic = steel.Yield * moduli.Plastic;
        ImmutableArray<CheckTerm> terms =
        [
            .. Aisc360Bending.SteelTerms(steel),
            Term.Number(CheckSymbol.WallSlenderness, wall),
            Term.Number(CheckSymbol.CompactLimit, 0.07 * ratio, CheckFormula.AiscWallCompact),
            Term.Number(CheckSymbol.NoncompactLimit, 0.31 * ratio, CheckFormula.AiscWallNoncompact),
            .. Aisc360Bending.PlasticTerms(steel, moduli.Plastic),
        ];
        if (wall >= 0.45 * ratio)
        {
            return Nominal.Unknown(CheckClause.Aisc360Flexure, NotJudgedReason.TooSlender, terms);
        }

        if (wall <= 0.07 * ratio)
        {
            return new Nominal(CheckClause.Aisc360F8Yielding, plastic, [.. terms, Aisc360Bending.Yields(plastic)]);
        }

        bool isNoncompact = wall <= 0.31 * ratio;
        double stress = isNoncompact
            ? 0.021 * steel.Modulus / wall + steel.Yield
            : 0.33 * steel.Modulus / wall;
        double moment = Math.Min(plastic, stress * moduli.Elastic);
        return new Nominal(
            CheckClause.Aisc360F8Local,
            moment,
            [
                .. terms,
                Term.Modulus(CheckSymbol.SectionModulus, moduli.Elastic),
                Term.Stress(
                    CheckSymbol.CriticalStress,
                    stress,
                    isNoncompact ? CheckFormula.AiscNoncompactWall : CheckFormula.AiscSlenderWall),
                Term.Moment(CheckSymbol.NominalMoment, moment, CheckFormula.MomentOfCriticalStress),
            ]);
    }
}
