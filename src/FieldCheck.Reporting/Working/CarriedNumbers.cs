using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Working;

/// <summary>
/// The numbers of a working as they are written: each is worked out from the written ones before it, so that whoever
/// works a line again from the page finds the digits that stand there.
/// </summary>
internal sealed class CarriedNumbers
{
    private const double RadiansPerDegree = Math.PI / 180;

    private readonly HandFigures _figures;
    private readonly Dictionary<HandNumber, string> _written = [];

    internal CarriedNumbers(HandFigures figures)
    {
        _figures = figures;
    }

    internal HandFigures Figures => _figures;

    /// <summary>The number as it is written, without its unit.</summary>
    internal string Text(HandNumber number)
    {
        if (!_written.TryGetValue(number, out string? text))
        {
            text = _figures.Write(Worked(number), number.Unit);
            _written.Add(number, text);
        }

        return text;
    }

    /// <summary>The value that is carried on, in the units of the working.</summary>
    internal double Value(HandNumber number) => HandFigures.Read(Text(number));

    /// <summary>The number with the digits that results have.</summary>
    internal string Rest(HandNumber number) => _figures.WriteRest(Value(number), number.Unit);

    /// <summary>True: with the digits that results have nothing of it is left.</summary>
    internal bool IsNothing(HandNumber number) => Rest(number).AsSpan().IndexOfAnyInRange('1', '9') < 0;

    /// <summary>The number, or nothing where with the digits that results have nothing of it is left.</summary>
    internal string TextOrNothing(HandNumber number) => IsNothing(number) ? Rest(number) : Text(number);

    /// <summary>The number with its unit.</summary>
    internal string Say(HandNumber number)
    {
        string unit = _figures.UnitOf(number.Unit);
        return unit.Length == 0 ? Text(number) : $"{Text(number)} {unit}";
    }

    /// <summary>The number without sign, with its unit.</summary>
    internal string SaySize(HandNumber number) => Say(number).TrimStart('-');

    /// <summary>The carried value in SI.</summary>
    internal double InSi(HandNumber number) => _figures.ToSi(Value(number), number.Unit);

    /// <summary>What a formula comes to with the written numbers, not rounded.</summary>
    internal double Worked(HandFormula formula) =>
        formula.Evaluate(number => number.Unit.IsAngle ? Value(number) * RadiansPerDegree : Value(number));

    private double Worked(HandNumber number) => number.Formula is HandFormula.Given given
        ? _figures.FromSi(given.Value, number.Unit)
        : Worked(number.Formula);
}
