namespace FieldCheck.Mechanics.Strength;

/// <summary>Resistance of the section in bending, EN 1993-1-1 6.2.5.</summary>
internal static class En1993Bending
{
    internal static Resistance Of(SteelMember steel)
    {
        En1993Class section = En1993Class.Of(steel);
        Resistance blank = En1993.Moment(CheckKind.Bending, CheckClause.En1993Bending);
        return section.Number switch
        {
            <= 2 => By(CheckSymbol.PlasticModulus, steel.Section.PlasticModulus, CheckFormula.EnPlasticMoment),
            3 => By(CheckSymbol.SectionModulus, steel.Section.SectionModulus, CheckFormula.EnElasticMoment),
            _ => blank with
            {
                Clause = CheckClause.En1993Class,
                Reason = NotJudgedReason.TooSlender,
                Terms = section.Terms,
            },
        };

        Resistance By(CheckSymbol symbol, double? modulus, CheckFormula by) => modulus is double size
            ? blank with
            {
                Limit = size * steel.Yield / En1993.SectionFactor,
                LimitBy = by,
                Terms =
                [
                    .. section.Terms,
                    Term.Modulus(symbol, size),
                    Term.Number(CheckSymbol.PartialFactor, En1993.SectionFactor),
                ],
            }
            : blank with { Reason = NotJudgedReason.NoSectionModulus };
    }
}
