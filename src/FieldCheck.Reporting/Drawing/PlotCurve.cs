using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Drawing;

/// <summary>One quantity along a beam, with the words and numbers that go beside its picture.</summary>
public sealed record PlotCurve
{
    /// <summary>Length of the beam [m].</summary>
    public required double Length { get; init; }

    /// <summary>The value just left and just right of a place [m from the left end], in SI.</summary>
    public required Func<double, (double Left, double Right)> At { get; init; }

    /// <summary>The only places where the value may jump [m], both ends of the beam among them.</summary>
    public required ImmutableArray<double> Breaks { get; init; }

    /// <summary>Every local greatest and least value, left to right; both sides of a jump count.</summary>
    public required ImmutableArray<Extreme> Peaks { get; init; }

    /// <summary>Places inside the beam where the value passes through zero [m].</summary>
    public ImmutableArray<double> Zeros { get; init; } = [];

    /// <summary>A value of this size or less is rounding, not a value; in SI.</summary>
    public double Negligible { get; init; }

    /// <summary>What the value lies between over all that may happen; null: only the curve is drawn.</summary>
    public PlotBand? Band { get; init; }

    /// <summary>True: positive values are drawn below the zero line.</summary>
    public bool IsPositiveDown { get; init; }

    /// <summary>The letters in the zero line.</summary>
    public ImmutableArray<PlotMark> Marks { get; init; } = [];

    /// <summary>Quantity, unit and convention, one a row, for the left edge.</summary>
    public ImmutableArray<string> Edge { get; init; } = [];

    /// <summary>The same on one line, for above the picture.</summary>
    public string Heading { get; init; } = "";

    /// <summary>A value as it is written beside the curve.</summary>
    public required Func<double, string> Number { get; init; }

    /// <summary>A value as it is written in the line of peaks.</summary>
    public required Func<double, string> Say { get; init; }

    /// <summary>A place [m from the left end] in words: a support's label, or the distance with its unit.</summary>
    public required Func<double, string> Place { get; init; }

    /// <summary>One quantity of a solved beam.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="response">How it answers.</param>
    /// <param name="curve">Which quantity; not the slope.</param>
    /// <param name="isSagDown">True: sagging moments are drawn below the zero line.</param>
    public static PlotCurve Of(BuiltBeam beam, BeamResponse response, Curve curve, bool isSagDown = false)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(response);
        return ResponseCurve.Of(beam, response, curve, isSagDown);
    }
}
