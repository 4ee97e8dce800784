namespace FieldCheck.Mechanics.Strength;

/// <summary>Puts down one number of a check, by its unit, with the formula that it comes by.</summary>
internal static class Term
{
    internal static CheckTerm Stress(CheckSymbol symbol, double value, CheckFormula? by = null) =>
        new(symbol, value, CheckUnit.Stress) { By = by };

    internal static CheckTerm Force(CheckSymbol symbol, double value, CheckFormula? by = null) =>
        new(symbol, value, CheckUnit.Force) { By = by };

    internal static CheckTerm Moment(CheckSymbol symbol, double value, CheckFormula? by = null) =>
        new(symbol, value, CheckUnit.Moment) { By = by };

    internal static CheckTerm Length(CheckSymbol symbol, double value, CheckFormula? by = null) =>
        new(symbol, value, CheckUnit.Length) { By = by };

    internal static CheckTerm Area(CheckSymbol symbol, double value, CheckFormula? by = null) =>
        new(symbol, value, CheckUnit.Area) { By = by };

    internal static CheckTerm Modulus(CheckSymbol symbol, double value, CheckFormula? by = null) =>
        new(symbol, value, CheckUnit.SectionModulus) { By = by };

    internal static CheckTerm Inertia(CheckSymbol symbol, double value, CheckFormula? by = null) =>
        new(symbol, value, CheckUnit.Inertia) { By = by };

    internal static CheckTerm Number(CheckSymbol symbol, double value, CheckFormula? by = null) =>
        new(symbol, value, CheckUnit.Number) { By = by };
}
