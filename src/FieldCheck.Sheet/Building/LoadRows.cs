using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Building;

/// <summary>Reads a load of any kind, and that it has no key of another kind.</summary>
/// <param name="stations">The places of the beam.</param>
/// <param name="hinges">Positions of the hinges [m].</param>
internal sealed class LoadRows(Stations stations, ImmutableArray<double> hinges)
{
    /// <summary>Parts smaller than this share of a force are the rounding of its angle, as in cos 90 deg [–].</summary>
    private const double Rounding = 1e-15;

    /// <returns>The load, or null when it is not known, which has been told.</returns>
    internal Load? Read(Row row)
    {
        switch (row.Text("kind"))
        {
            case "point":
                row.TakesOnly(["kind", "label", "case", "at", "force", "angle"], "a point load");
                return Point(row);
            case "distributed":
                row.TakesOnly(
                    [
                        "kind", "label", "case", "from", "to", "intensity", "intensity_end", "pressure", "pressure_end",
                        "width", "total", "axial",
                    ],
                    "a distributed load");
                return Distributed(row);
            case "couple":
                row.TakesOnly(["kind", "label", "case", "at", "moment", "side"], "a couple");
                return Couple(row);
            case null:
                row.Refuse("kind", ProblemText.NoLoadKind);
                return null;
            default:
                return null;
        }
    }

    private Load.Point? Point(Row row)
    {
        double? force = row.Needed("force", ProblemText.NoForce);
        double? position = At(row);
        double? angle = row.Has("angle") ? row.Value("angle") : 0;
        return (position, force, angle) is (double at, double size, double lean)
            ? new Load.Point(at, size * Part(Math.Cos(lean)), size * Part(Math.Sin(lean)))
            : null;
    }

    private Load.Couple? Couple(Row row)
    {
        double? moment = row.Needed("moment", ProblemText.NoMoment);
        double? position = At(row);
        if (position is double place && hinges.Contains(place) && !row.Has("side"))
        {
            row.Refuse("side", ProblemText.SideAtHinge);
        }

        return (position, moment) is (double at, double size)
            ? new Load.Couple(at, size, row.Text("side") == "right" ? Side.Right : Side.Left)
            : null;
    }

    private double? At(Row row)
    {
        if (!row.Has("at"))
        {
            row.Refuse("at", ProblemText.NoAt);
        }

        return stations.Place(row, "at");
    }

    private Load.Distributed? Distributed(Row row)
    {
        (double? start, double? end) = Extent(row);
        (double? first, double? last) = LoadIntensity.Read(row, end - start);
        return (start, end, first, last) is (double from, double to, double left, double right)
            ? new Load.Distributed(from, to, left, right, row.IsTrue("axial"))
            : null;
    }

    private (double? From, double? To) Extent(Row row)
    {
        double? from = row.Has("from") ? stations.Place(row, "from") : 0;
        double? to = row.Has("to") ? stations.Place(row, "to") : stations.Length;
        if (from >= to)
        {
            row.Refuse(row.Has("from") ? "from" : "to", ProblemText.FromNotLeftOfTo);
            return (null, null);
        }

        return (from, to);
    }

    private static double Part(double share) => Math.Abs(share) < Rounding ? 0 : share;
}
