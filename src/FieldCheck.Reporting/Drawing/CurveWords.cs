using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Drawing;

/// <summary>What is written beside a curve.</summary>
/// <param name="Edge">Quantity, unit, convention, for the left edge.</param>
/// <param name="Heading">The same on one line.</param>
/// <param name="Number">A value beside the curve.</param>
/// <param name="Say">A value in the line of peaks.</param>
internal sealed record CurveWords(
    ImmutableArray<string> Edge, string Heading, Func<double, string> Number, Func<double, string> Say)
{
    internal static CurveWords Of(BeamWords words, Curve curve, bool isSagDown)
    {
        string force = words.Unit(QuantityKind.Force);
        string moment = words.Unit(QuantityKind.Moment);
        string movement = words.Beam.Display.MovementUnit;
        string sagging = isSagDown ? "+ = sagging, below" : "+ = sagging, above";
        return curve switch
        {
            Curve.Shear => Forces(
                ["shear", force, "+ left", "part", "pushed", "up"], $"shear, {force} (+ = left part pushed up)"),
            Curve.Axial => Forces(["axial", force, "+ pull"], $"axial force, {force} (+ = tension)"),
            Curve.Moment => new CurveWords(
                isSagDown ? ["moment", moment, "sag", "down"] : ["moment", moment, "sag up"],
                $"moment, {moment} ({sagging})",
                value => words.Signed(value, QuantityKind.Moment),
                value => words.Signed(value, QuantityKind.Moment)),
            Curve.Deflection => new CurveWords(
                ["defl.", movement, "as it", "moves"],
                $"deflection, {movement} (drawn as the beam moves)",
                words.MovementSize,
                words.Movement),
            _ => throw new ArgumentOutOfRangeException(nameof(curve), curve, "Is never drawn."),
        };

        CurveWords Forces(ImmutableArray<string> edge, string heading) => new(
            edge,
            heading,
            value => words.Signed(value, QuantityKind.Force),
            value => words.Signed(value, QuantityKind.Force));
    }
}
