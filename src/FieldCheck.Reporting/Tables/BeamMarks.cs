using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>Finds the places along a beam that are worth reading off: ends, supports, hinges, loads, peaks, zeros.</summary>
public static class BeamMarks
{
    /// <summary>The marks from left to right, no two at one place.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="curves">The quantities whose peaks and zeros count.</param>
    public static ImmutableArray<BeamMark> Of(BuiltBeam beam, IEnumerable<KeyValuePair<Curve, PlotCurve>> curves)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(curves);
        BeamMark[] all =
        [
            .. beam.Supports.Select(support => new BeamMark(support.Support.Position, support.Label)),
            .. beam.Model.Hinges.Select(hinge => new BeamMark(hinge, "hinge")),
            .. beam.Loads.SelectMany(OfLoad),
            .. curves.SelectMany(pair => OfCurve(PeakRow.NameOf(pair.Key), pair.Value)),
            new BeamMark(0, "left end"),
            new BeamMark(beam.Model.Length, "right end"),
        ];
        List<BeamMark> marks = [];
        foreach (BeamMark mark in all.OrderBy(mark => mark.Position))
        {
            if (marks is [.., BeamMark last] && mark.Position - last.Position <= BeamPlaces.SamePlace * beam.Model.Length)
            {
                marks[^1] = Joined(last, mark);
            }
            else
            {
                marks.Add(mark);
            }
        }

        return [.. marks];
    }

    private static BeamMark Joined(BeamMark one, BeamMark other) =>
        one.Words.Split(", ").Contains(other.Words) ? one : one with { Words = $"{one.Words}, {other.Words}" };

    private static IEnumerable<BeamMark> OfLoad(NamedLoad named)
    {
        if (named.Row is not int row)
        {
            return [];
        }

        string name = $"load {row + 1}";
        return named.Load switch
        {
            Load.Point point => [new BeamMark(point.Position, name)],
            Load.Couple couple => [new BeamMark(couple.Position, name)],
            Load.Distributed spread =>
                [new BeamMark(spread.From, $"{name} begins"), new BeamMark(spread.To, $"{name} ends")],
            _ => throw new UnreachableException(),
        };
    }

    private static IEnumerable<BeamMark> OfCurve(string name, PlotCurve curve)
    {
        PeakReading reading = new(curve);
        return
        [
            .. reading.Peaks.Where(peak => !peak.IsStretch).Select(peak => new BeamMark(peak.From, $"peak {name}")),
            .. reading.Zeros().Select(zero => new BeamMark(zero, $"zero {name}")),
        ];
    }
}
