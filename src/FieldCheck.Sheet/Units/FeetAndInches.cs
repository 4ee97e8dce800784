using System.Globalization;

namespace FieldCheck.Sheet.Units;

/// <summary>Writes lengths as a tape is read.</summary>
public static class FeetAndInches
{
    private const int PartsPerInch = 16;
    private const int PartsPerFoot = 12 * PartsPerInch;

    /// <summary>Beyond this a tape is not what was measured with [m].</summary>
    private const double LongestTape = 1e5;

    /// <summary>A length to the nearest sixteenth of an inch, as 12'-6 1/2" or 3/4"; "--" for no number.</summary>
    /// <param name="metres">
    /// The length [m]; half a sixteenth goes away from zero; beyond 100 km it is written in decimal feet.
    /// </param>
    public static string Write(double metres)
    {
        if (!double.IsFinite(metres) || Math.Abs(metres) > LongestTape)
        {
            return DisplayUnit.Of(UnitSystem.Us, Reading.QuantityKind.Length).Say(metres);
        }

        // By way of decimal, which keeps 15 digits: a half that came out a hair less in binary is still the half.
        decimal exact = (decimal)(Math.Abs(metres) / UnitTable.Factor("in") * PartsPerInch);
        long parts = (long)decimal.Round(exact, 0, MidpointRounding.AwayFromZero);
        return (metres < 0 && parts > 0 ? "-" : string.Empty) + Tape(parts);
    }

    private static string Tape(long parts)
    {
        (long feet, long rest) = Math.DivRem(parts, PartsPerFoot);
        (long inches, long fraction) = Math.DivRem(rest, PartsPerInch);
        bool showsInches = feet > 0 || inches > 0 || fraction == 0;
        string whole = showsInches ? inches.ToString(CultureInfo.InvariantCulture) : string.Empty;
        string gap = whole.Length > 0 && fraction > 0 ? " " : string.Empty;
        string before = feet > 0 ? feet.ToString(CultureInfo.InvariantCulture) + "'-" : string.Empty;
        return before + whole + gap + Fraction(fraction) + "\"";
    }

    private static string Fraction(long upper)
    {
        if (upper == 0)
        {
            return string.Empty;
        }

        long lower = PartsPerInch;
        while (upper % 2 == 0)
        {
            upper /= 2;
            lower /= 2;
        }

        return string.Create(CultureInfo.InvariantCulture, $"{upper}/{lower}");
    }
}
