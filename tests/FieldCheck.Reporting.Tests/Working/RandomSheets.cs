using System.Globalization;
using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Tests.Working;

/// <summary>Draws beams such as stand on a site: any supports and loads, measured to a centimetre.</summary>
internal static class RandomSheets
{
    internal static Gen<BuiltBeam> Any(UnitSystem units) =>
        (from spans in Gen.Int[80, 900].Array[1, 3]
         from supports in SupportsOn(spans)
         from hinges in HingesOn(spans.Sum())
         from loads in LoadOn(spans).Array[1, 5]
         let free = hinges.Where(hinge => supports.All(support => support.Position != hinge)).ToArray()
         select Bench.Beam([.. spans.Select(span => span / 100.0)], supports, loads, free, units))
        .Where(Stands);

    internal static string Print(BuiltBeam beam) => string.Join('\n',
        beam.Model.Spans.Cast<object>().Concat(beam.Model.Supports).Concat(beam.Model.Cases[0].Loads)
            .Concat(beam.Model.Hinges.Cast<object>())
            .Select(row => Convert.ToString(row, CultureInfo.InvariantCulture)));

    private static bool Stands(BuiltBeam beam) => new BeamSolver().Solve(beam.Model) is BeamOutcome.Stands;

    private static Gen<Support[]> SupportsOn(int[] spans) =>
        from places in Gen.Int[0, spans.Sum()].Array[1, 3]
        from atEnds in Gen.Int[0, 3]
        let length = spans.Sum()
        let distinct = places.Concat(atEnds is 1 or 3 ? [0] : []).Concat(atEnds is 2 or 3 ? [length] : [])
            .Distinct().Order().ToArray()
        from kinds in Gen.Int[0, 9].Array[distinct.Length]
        from degrees in Gen.Int[-60, 60].Array[distinct.Length]
        select distinct.Select((place, i) =>
            SupportOf(kinds[i], At(place, spans), place == 0 || place == length, degrees[i])).ToArray();

    private static Support SupportOf(int kind, double place, bool isAtEnd, int degrees) => kind switch
    {
        0 or 1 or 2 => Support.Pin(place),
        3 when isAtEnd => Support.Fixed(place),
        4 => Support.Roller(place, degrees * Math.PI / 180),
        5 => Support.Roller(place) with { Settlement = degrees / 10_000.0 },
        6 => Support.Spring(place, 2e6),
        _ => Support.Roller(place),
    };

    private static Gen<double[]> HingesOn(int length) =>
        Gen.Int[1, length - 1].Array[0, 2].Select(places => places.Distinct().Order().Select(place => place / 100.0).ToArray());

    private static Gen<Load> LoadOn(int[] spans) =>
        from kind in Gen.Int[0, 6]
        from one in Gen.Int[0, spans.Sum()]
        from other in Gen.Int[0, spans.Sum()]
        from size in Gen.Int[-300, 900]
        from second in Gen.Int[-300, 900]
        select LoadOf(kind, At(Math.Min(one, other), spans), At(Math.Max(one, other), spans), size == 0 ? 10 : size, second, At(spans.Sum(), spans));

    private static Load LoadOf(int kind, double from, double to, int size, int second, double length) => kind switch
    {
        0 or 1 => new Load.Point(from, size * 20.0),
        2 => new Load.Point(from, size * 20.0, second * 10.0),
        3 => new Load.Couple(from, size * 15.0),
        4 when to > from => new Load.Distributed(from, to, size * 10.0, size * 10.0),
        5 when to > from => new Load.Distributed(from, to, size * 10.0, second * 10.0),
        _ => new Load.Distributed(0, length, Math.Abs(size), Math.Abs(size)),
    };

    /// <summary>A place in metres; a joint's own number where one lies there.</summary>
    private static double At(int centimetres, int[] spans)
    {
        double joint = 0;
        int reached = 0;
        foreach (int span in spans)
        {
            joint += span / 100.0;
            reached += span;
            if (reached == centimetres)
            {
                return joint;
            }
        }

        return centimetres / 100.0;
    }
}
