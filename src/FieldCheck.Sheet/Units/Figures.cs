using System.Globalization;

namespace FieldCheck.Sheet.Units;

/// <summary>Writes numbers by one rule: so many decimals, more for a small value, halves away from zero.</summary>
/// <param name="Decimals">Always written.</param>
/// <param name="Finest">Decimals that are looked at; zeros beyond <paramref name="Decimals"/> are dropped.</param>
/// <param name="Significant">A small value is given further decimals until it shows so many digits.</param>
internal readonly record struct Figures(int Decimals, int Finest, int Significant)
{
    /// <summary>What stands where there is no number to show.</summary>
    internal const string NotKnown = "--";

    /// <summary>From here on the digits before the point are too many to be read.</summary>
    internal double Unreadable { get; init; } = 1e9;

    /// <summary>What takes so many decimals more is noise beside what else is shown, and reads as zero.</summary>
    internal int Further { get; init; } = 3;

    /// <summary>A large value gives up decimals rather than show more digits than anyone measures.</summary>
    internal int MostDigits { get; init; } = 6;

    /// <summary>Which way what lies between two numbers that can be shown goes; sizes, whatever the sign.</summary>
    internal MidpointRounding Rounding { get; init; } = MidpointRounding.AwayFromZero;

    internal string Write(double value)
    {
        if (!double.IsFinite(value))
        {
            return NotKnown;
        }

        string size = Size(Math.Abs(value));
        return value < 0 && !IsNothing(size) ? "-" + size : size;
    }

    internal string WriteSigned(double value)
    {
        string written = Write(value);
        return value > 0 && double.IsFinite(value) && !IsNothing(written) ? "+" + written : written;
    }

    private string Size(double size)
    {
        if (size >= Unreadable)
        {
            return Rounding == MidpointRounding.AwayFromZero
                ? size.ToString("0.000e0", CultureInfo.InvariantCulture)
                : Large(size);
        }

        decimal exact = Decimal(size);
        int finest = Finest;
        while (finest > 0 && exact >= Power(MostDigits - finest))
        {
            finest--;
        }

        for (int decimals = finest; decimals <= Finest + Further; decimals++)
        {
            decimal rounded = decimal.Round(exact, decimals, Rounding);
            if (rounded * Power(decimals) >= Power(Significant - 1))
            {
                return Trim(rounded, decimals);
            }
        }

        int most = Finest + Further;
        return Trim(decimal.Round(exact, most, Rounding), most);
    }

    private string Large(double size)
    {
        int exponent = (int)Math.Floor(Math.Log10(size));
        double digits = Math.Round(size / Math.Pow(10, exponent - 3), Rounding);
        return string.Create(CultureInfo.InvariantCulture, $"{digits / 1000:0.000}e{exponent}");
    }

    /// <summary>Twelve digits of it: 2.675 that came out as 2.6749999999999998 is still the half.</summary>
    private static decimal Decimal(double size) => decimal.Parse(
        size.ToString("E11", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);

    private string Trim(decimal rounded, int decimals)
    {
        string format = "F" + decimals.ToString(CultureInfo.InvariantCulture);
        string written = rounded.ToString(format, CultureInfo.InvariantCulture);
        int shown = decimals;
        while (shown > Decimals && written[^1] == '0')
        {
            written = written[..^1];
            shown--;
        }

        return written.TrimEnd('.');
    }

    private static bool IsNothing(string written) => written.AsSpan().IndexOfAnyInRange('1', '9') < 0;

    private static decimal Power(int exponent)
    {
        decimal power = 1;
        for (int i = 0; i < exponent; i++)
        {
            power *= 10;
        }

        return power;
    }
}
