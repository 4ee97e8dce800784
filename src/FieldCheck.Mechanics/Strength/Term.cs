namespace FieldCheck.Mechanics.Strength;

/// <summary>Puts down one number of a check, by its unit.</summary>
internal static class Term
{
    internal static CheckTerm Stress(CheckSymbol symbol, double value) => new(symbol, value, CheckUnit.Stress);

    internal static CheckTerm Force(CheckSymbol symbol, double value) => new(symbol, value, CheckUnit.Force);

    internal static CheckTerm Moment(CheckSymbol symbol, double value) => new(symbol, value, CheckUnit.Moment);

    internal static CheckTerm Length(CheckSymbol symbol, double value) => new(symbol, value, CheckUnit.Length);

    internal static CheckTerm Area(CheckSymbol symbol, double value) => new(symbol, value, CheckUnit.Area);

    internal static CheckTerm Modulus(CheckSymbol symbol, double value) => new(symbol, value, CheckUnit.SectionModulus);

    internal static CheckTerm Inertia(CheckSymbol symbol, double value) => new(symbol, value, CheckUnit.Inertia);

    internal static CheckTerm Number(CheckSymbol symbol, double value) => new(symbol, value, CheckUnit.Number);
}
