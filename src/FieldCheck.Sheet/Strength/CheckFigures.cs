using System.Globalization;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Strength;

/// <summary>Numbers of checks as text.</summary>
public static class CheckFigures
{
    /// <summary>Decimals that are tried until a demand that is over does not read as within its limit.</summary>
    private const int MostDecimals = 6;

    /// <summary>A demand or a limit of a check with its unit, as "104.3 MPa".</summary>
    /// <param name="display">The units that results are shown in.</param>
    /// <param name="check">The check.</param>
    /// <param name="value">In SI.</param>
    public static string Say(DisplayUnits display, SectionCheck check, double value)
    {
        ArgumentNullException.ThrowIfNull(display);
        ArgumentNullException.ThrowIfNull(check);
        return check.Kind == CheckKind.PadPressure && check.Unit == CheckUnit.Stress
            ? display.AreaLoad(value)
            : Say(display, value, check.Unit, isSmall: true);
    }

    /// <summary>A number on the way to a limit with its unit.</summary>
    /// <param name="display">The units that results are shown in.</param>
    /// <param name="term">The number.</param>
    public static string Say(DisplayUnits display, CheckTerm term)
    {
        ArgumentNullException.ThrowIfNull(display);
        ArgumentNullException.ThrowIfNull(term);
        return term.Unit == CheckUnit.Number
            ? IsCount(term.Symbol) ? DisplayUnits.Count(term.Value) : DisplayUnits.Factor(term.Value)
            : Say(display, term.Value, term.Unit, !IsAlong(term.Symbol));
    }

    /// <summary>Demand over limit as text, as "0.74"; never "1.00" where it is over.</summary>
    /// <param name="utilisation">Demand over limit [–].</param>
    /// <param name="verdict">What the check comes to.</param>
    public static string Used(double utilisation, CheckVerdict verdict)
    {
        for (int decimals = 2; decimals < MostDecimals; decimals++)
        {
            double rounded = Math.Round(utilisation, decimals, MidpointRounding.AwayFromZero);
            if (verdict != CheckVerdict.Over || rounded > 1)
            {
                return rounded.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            }
        }

        return "just over 1";
    }

    private static string Say(DisplayUnits display, double value, CheckUnit unit, bool isSmall) => unit switch
    {
        CheckUnit.Stress => display.Say(value, QuantityKind.Pressure),
        CheckUnit.Force => display.Say(value, QuantityKind.Force),
        CheckUnit.Moment => display.Say(value, QuantityKind.Moment),
        CheckUnit.Length when isSmall => display.Movement(value),
        CheckUnit.Length => display.Say(value, QuantityKind.Length),
        CheckUnit.Inertia => display.Say(value, QuantityKind.Inertia),
        CheckUnit.SectionModulus => display.Say(value, QuantityKind.SectionModulus),
        CheckUnit.Area => display.Say(value, QuantityKind.Area),
        _ => display.Say(value, QuantityKind.Number),
    };

    /// <summary>Whole as a rule, and written so.</summary>
    private static bool IsCount(CheckSymbol symbol) =>
        symbol is CheckSymbol.Ratio or CheckSymbol.SectionClass or CheckSymbol.FilletSpread;

    /// <summary>Lengths along the beam are told as the beam's own are; all others as movements, in small units.</summary>
    private static bool IsAlong(CheckSymbol symbol) =>
        symbol is CheckSymbol.BayLength or CheckSymbol.UnbracedLength or CheckSymbol.EffectiveLength
            or CheckSymbol.PlasticLength or CheckSymbol.ElasticLength;
}
