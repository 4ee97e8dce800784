using System.Globalization;

namespace FieldCheck.Reporting.Tests.Working;

/// <summary>
/// Works out an expression as it stands on the page: + - x / ^, brackets, root( ), sin and cos of degrees, and names,
/// which may stand behind a number without a sign.
/// </summary>
internal sealed class PrintedExpression
{
    private readonly string _text;
    private readonly IReadOnlyDictionary<string, double> _names;
    private int _at;

    private PrintedExpression(string text, IReadOnlyDictionary<string, double> names)
    {
        _text = text;
        _names = names;
    }

    /// <summary>True: all of the text is an expression of numbers and known names.</summary>
    internal static bool TryWork(string text, IReadOnlyDictionary<string, double> names, out double value)
    {
        PrintedExpression expression = new(text.Trim(), names);
        try
        {
            value = expression.Sum();
            return expression._at == expression._text.Length;
        }
        catch (FormatException)
        {
            value = double.NaN;
            return false;
        }
    }

    private double Sum()
    {
        double sum = Product();
        while (true)
        {
            if (Takes(" + "))
            {
                sum += Product();
            }
            else if (Takes(" - "))
            {
                sum -= Product();
            }
            else
            {
                return sum;
            }
        }
    }

    private double Product()
    {
        double product = Signed();
        while (true)
        {
            if (Takes(" x "))
            {
                product *= Signed();
            }
            else if (Takes(" / "))
            {
                product /= Signed();
            }
            else if (Peek(" ") && _at + 1 < _text.Length && char.IsLetter(_text[_at + 1]))
            {
                _at++;
                product *= Name();
            }
            else
            {
                return product;
            }
        }
    }

    private double Signed() => Takes("-") ? -Signed() : Powered();

    private double Powered()
    {
        double value = Atom();
        return Takes("^") ? Math.Pow(value, Number()) : value;
    }

    private double Atom()
    {
        if (Takes("root("))
        {
            // As the page says: what rounding has brought below zero is zero.
            return Math.Sqrt(Math.Max(Bracket(), 0));
        }

        if (Takes("("))
        {
            return Bracket();
        }

        if (Takes("sin "))
        {
            return Math.Sin(Degrees());
        }

        if (Takes("cos "))
        {
            return Math.Cos(Degrees());
        }

        return _at < _text.Length && char.IsLetter(_text[_at]) ? Name() : Number();
    }

    private double Bracket()
    {
        double inside = Sum();
        return Takes(")") ? inside : throw new FormatException("A bracket is not closed.");
    }

    private double Degrees()
    {
        double degrees = Number();
        return Takes(" deg") ? degrees * Math.PI / 180 : throw new FormatException("An angle has no unit.");
    }

    private double Number()
    {
        int start = _at;
        while (_at < _text.Length && (char.IsDigit(_text[_at]) || _text[_at] == '.'))
        {
            _at++;
        }

        if (_at + 1 < _text.Length && _at > start && _text[_at] == 'e' && char.IsDigit(_text[_at + 1]))
        {
            _at++;
            while (_at < _text.Length && char.IsDigit(_text[_at]))
            {
                _at++;
            }
        }

        return double.TryParse(_text[start.._at], NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? value
            : throw new FormatException("No number.");
    }

    private double Name()
    {
        int start = _at;
        while (_at < _text.Length && (char.IsLetterOrDigit(_text[_at]) || _text[_at] == '_'))
        {
            _at++;
        }

        return _names.TryGetValue(_text[start.._at], out double value)
            ? value
            : throw new FormatException("Not a known name.");
    }

    private bool Peek(string text) => string.CompareOrdinal(_text, _at, text, 0, text.Length) == 0;

    private bool Takes(string text)
    {
        bool takes = Peek(text);
        _at += takes ? text.Length : 0;
        return takes;
    }
}
