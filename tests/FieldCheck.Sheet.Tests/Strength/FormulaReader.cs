using System.Globalization;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>Works a written formula out: + - * / ^, brackets, sqrt, min, max, pi, and numbers that a unit may follow.</summary>
/// <param name="text">The formula.</param>
/// <param name="values">What each sign stands for; of signs that begin alike the longest is meant.</param>
internal sealed class FormulaReader(string text, IReadOnlyDictionary<string, double> values)
{
    private static readonly Dictionary<string, double> Units = new() { ["MPa"] = 1e6, ["in"] = 0.0254 };

    private readonly string[] _signs = [.. values.Keys.OrderByDescending(sign => sign.Length)];
    private int _at;

    internal double Value()
    {
        double value = Sum();
        return _at == text.Length ? value : throw Unread();
    }

    private double Sum()
    {
        double value = Product();
        while (true)
        {
            if (Take("+"))
            {
                value += Product();
            }
            else if (Take("-"))
            {
                value -= Product();
            }
            else
            {
                return value;
            }
        }
    }

    private double Product()
    {
        double value = Power();
        while (true)
        {
            if (Take("*"))
            {
                value *= Power();
            }
            else if (Take("/"))
            {
                value /= Power();
            }
            else
            {
                return value;
            }
        }
    }

    private double Power()
    {
        double value = One();
        return Take("^") ? Math.Pow(value, One()) : value;
    }

    private double One()
    {
        if (Take("("))
        {
            return Closed(Sum());
        }

        if (Take("sqrt("))
        {
            return Closed(Math.Sqrt(Sum()));
        }

        if (Take("min("))
        {
            return Closed(Math.Min(Sum(), Second()));
        }

        if (Take("max("))
        {
            return Closed(Math.Max(Sum(), Second()));
        }

        return _signs.FirstOrDefault(IsNext) is string sign && Take(sign) ? values[sign] : Number();
    }

    private double Number()
    {
        if (Take("pi"))
        {
            return Math.PI;
        }

        int from = _at;
        while (_at < text.Length && (char.IsAsciiDigit(text[_at]) || text[_at] == '.'))
        {
            _at++;
        }

        if (from == _at)
        {
            throw Unread();
        }

        double number = double.Parse(text[from.._at], CultureInfo.InvariantCulture);
        Skip();
        return Units.Keys.FirstOrDefault(IsNext) is string unit && Take(unit) ? number * Units[unit] : number;
    }

    private double Second() => Take(",") ? Sum() : throw Unread();

    private double Closed(double value) => Take(")") ? value : throw Unread();

    private bool Take(string sign)
    {
        if (!IsNext(sign))
        {
            return false;
        }

        _at += sign.Length;
        Skip();
        return true;
    }

    /// <summary>Whether it stands here, and is not the beginning of a longer word.</summary>
    private bool IsNext(string sign) => string.CompareOrdinal(text, _at, sign, 0, sign.Length) == 0
        && (!char.IsAsciiLetterOrDigit(sign[^1])
            || _at + sign.Length == text.Length
            || !char.IsAsciiLetterOrDigit(text[_at + sign.Length]) && text[_at + sign.Length] != '_');

    private void Skip()
    {
        while (_at < text.Length && text[_at] == ' ')
        {
            _at++;
        }
    }

    private FormatException Unread() => new($"'{text}' is not read from '{text[_at..]}'.");
}
