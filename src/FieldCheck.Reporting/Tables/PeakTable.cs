using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>The greatest and least value of each quantity, with their places.</summary>
internal static class PeakTable
{
    /// <summary>One row for each quantity that is not zero all along.</summary>
    internal static ImmutableArray<string> Lines(BuiltBeam beam, BeamResponse response, int width)
    {
        PeakRow[] rows =
        [
            .. Curves(beam).Select(curve => PeakRow.Of(beam, response, curve)).Where(row => !row.IsNothing),
        ];
        int names = rows.Select(row => row.Name.Length).DefaultIfEmpty().Max();
        int first = rows.Select(row => row.Items[0].Length).DefaultIfEmpty().Max();
        return
        [
            .. rows.SelectMany(row => TextFlow.Join(
                [$"  {row.Name.PadRight(names)}", row.Items[0].PadRight(first), .. row.Items.Skip(1)],
                "   ",
                width,
                indent: 6)),
        ];
    }

    /// <summary>The quantities that are known of a beam.</summary>
    internal static ImmutableArray<Curve> Curves(BuiltBeam beam) => beam.Model.HasAbsoluteStiffness
        ? [Curve.Axial, Curve.Shear, Curve.Moment, Curve.Deflection]
        : [Curve.Axial, Curve.Shear, Curve.Moment];
}
