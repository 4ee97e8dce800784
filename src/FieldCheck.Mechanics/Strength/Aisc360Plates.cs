using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Slenderness of the plates of an I or a channel bent about its strong axis, AISC 360-16 Table B4.1b.</summary>
/// <param name="Flange">Width of the outstand over thickness [–].</param>
/// <param name="FlangeCompact">λp of the flange [–].</param>
/// <param name="FlangeNoncompact">λr of the flange [–].</param>
/// <param name="Web">Clear height over thickness [–].</param>
/// <param name="WebCompact">λp of the web [–].</param>
/// <param name="FlangeBy">How the slenderness of the flange comes from its sizes.</param>
/// <param name="IsRolled">True: rolled in one piece.</param>
internal readonly record struct Aisc360Plates(
    double Flange,
    double FlangeCompact,
    double FlangeNoncompact,
    double Web,
    double WebCompact,
    CheckFormula FlangeBy,
    bool IsRolled)
{
    internal ImmutableArray<CheckTerm> FlangeTerms =>
    [
        Term.Number(CheckSymbol.FlangeSlenderness, Flange, FlangeBy),
        Term.Number(CheckSymbol.FlangeCompactLimit, FlangeCompact, CheckFormula.AiscFlangeCompact),
        .. IsRolled
            ? [Term.Number(CheckSymbol.FlangeNoncompactLimit, FlangeNoncompact, CheckFormula.AiscFlangeNoncompact)]
            : new[]
            {
                Term.Number(CheckSymbol.WebRestraint, WebRestraint(Web), CheckFormula.AiscWebRestraint),
                Term.Number(CheckSymbol.FlangeNoncompactLimit, FlangeNoncompact, CheckFormula.AiscBuiltFlangeNoncompact),
            },
    ];

    internal ImmutableArray<CheckTerm> WebTerms =>
    [
        Term.Number(CheckSymbol.WebSlenderness, Web, CheckFormula.WebBetweenFillets),
        Term.Number(CheckSymbol.WebCompactLimit, WebCompact, CheckFormula.AiscWebCompact),
    ];

    internal static Aisc360Plates Of(SteelMember steel, SectionShape.I shape)
    {
        double web = WebPlate.SlendernessOf(shape);
        double root = steel.StiffnessRoot;
        return new Aisc360Plates(
            shape.FlangeWidth / (2 * shape.FlangeThickness),
            0.38 * root,
            shape.IsRolled ? 1.0 * root : 0.95 * Math.Sqrt(WebRestraint(web)) * root / Math.Sqrt(0.7),
            web,
            3.76 * root,
            CheckFormula.HalfFlange,
            shape.IsRolled);
    }

    internal static Aisc360Plates Of(SteelMember steel, SectionShape.Channel shape) => new(
        shape.FlangeWidth / shape.FlangeThickness,
        0.38 * steel.StiffnessRoot,
        1.0 * steel.StiffnessRoot,
        WebPlate.SlendernessOf(shape),
        3.76 * steel.StiffnessRoot,
        CheckFormula.WholeFlange,
        IsRolled: true);

    /// <summary>The factor kc by which a slender web lets its flange buckle sooner.</summary>
    internal static double WebRestraint(double web) => Math.Clamp(4 / Math.Sqrt(web), 0.35, 0.76);
}
