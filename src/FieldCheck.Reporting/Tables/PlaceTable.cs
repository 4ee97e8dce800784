using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>What acts at one place, both sides of a jump.</summary>
internal static class PlaceTable
{
    /// <summary>One item for each quantity at a place.</summary>
    internal static ImmutableArray<string> Items(
        BuiltBeam beam, BeamResponse response, double position, bool isSpoken = false)
    {
        BeamWords words = new(beam, isSpoken);
        (SectionState left, SectionState right) = Inside(beam, response, position);
        double larger = Math.Max(Math.Abs(left.Axial), Math.Abs(right.Axial));
        string[] axial = words.IsNothing(larger, QuantityKind.Force)
            ? []
            : [Sides(words, Curve.Axial, left.Axial, right.Axial)];
        string[] deflection = beam.Model.HasAbsoluteStiffness
            ? [$"{PeakRow.NameOf(Curve.Deflection)} {words.Movement(left.Deflection)}"]
            : [];
        return
        [
            .. axial,
            Sides(words, Curve.Shear, left.Shear, right.Shear),
            Sides(words, Curve.Moment, left.Moment, right.Moment),
            .. deflection,
        ];
    }

    /// <summary>At an end only the side that is beam counts.</summary>
    private static (SectionState Left, SectionState Right) Inside(
        BuiltBeam beam, BeamResponse response, double position)
    {
        (SectionState left, SectionState right) = response.At(position);
        return (position <= 0 ? right : left, position >= beam.Model.Length ? left : right);
    }

    private static string Sides(BeamWords words, Curve curve, double left, double right)
    {
        string name = PeakRow.NameOf(curve);
        string before = PeakRow.Say(words, curve, left);
        string after = PeakRow.Say(words, curve, right);
        return before == after ? $"{name} {before}" : $"{name} {before} left, {after} right";
    }
}
