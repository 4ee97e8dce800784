using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Building;

/// <summary>The numbered and named places of one beam, and how a typed place becomes a position on it.</summary>
internal sealed class Stations
{
    /// <summary>
    /// Two positions closer than this share of the beam's length are one place [–]. "12 ft" and "3.6576 m" are the
    /// same mark on the beam, yet sums in different units differ in the last digits of a double, and the solver takes
    /// positions as equal only when they are the same number. A billionth is far below any tape and far above rounding.
    /// </summary>
    internal const double SamePlace = 1e-9;

    private readonly int _spans;
    private readonly DisplayUnits _display;
    private readonly List<double> _marks;
    private readonly Dictionary<string, double> _supports = new(StringComparer.OrdinalIgnoreCase);
    private bool _allSupportsStand = true;

    /// <param name="lengths">Lengths of the spans [m]; null when one of them is not known.</param>
    /// <param name="spans">How many spans there are.</param>
    /// <param name="display">The units that positions are said in.</param>
    internal Stations(ImmutableArray<double>? lengths, int spans, DisplayUnits display)
    {
        _spans = spans;
        _display = display;
        Joints = lengths is { } known ? JointsOf(known) : null;
        _marks = [.. Joints ?? []];
    }

    /// <summary>Positions of the joints [m], 0 first; null when they are not known.</summary>
    internal ImmutableArray<double>? Joints { get; }

    /// <summary>Length of the beam [m]; null when it is not known.</summary>
    internal double? Length => Joints?[^1];

    /// <summary>Names the supports; what is not known of one is null.</summary>
    internal void Name(ImmutableArray<string?> labels, ImmutableArray<double?> positions)
    {
        foreach ((string? label, double? position) in labels.Zip(positions))
        {
            if (label is not null && position is double at)
            {
                _supports.TryAdd(label, at);
            }
            else
            {
                _allSupportsStand = false;
            }
        }
    }

    /// <summary>
    /// Where a support or hinge stands: under joint or at, one of which must stand. Later places snap to it.
    /// </summary>
    internal double? Station(Row row, bool mayNameSupport)
    {
        double? position = (row.Has("joint"), row.Has("at")) switch
        {
            (true, false) => Joint(row),
            (false, true) => Place(row, "at", mayNameSupport),
            (true, true) => Refused(row, "at", ProblemText.JointAndAt),
            (false, false) => Refused(row, "joint", ProblemText.NoPlace),
        };
        if (position is double mark)
        {
            _marks.Add(mark);
        }

        return position;
    }

    /// <summary>The position of the place in a cell; null when it is none, which has been told.</summary>
    internal double? Place(Row row, string key, bool mayNameSupport = true)
    {
        if (row.Text(key) is not string text || PlaceReader.Read(text) is not Reading<Place>.Accepted accepted)
        {
            return null;
        }

        Place place = accepted.Value;
        if (place.Label is not null && !mayNameSupport)
        {
            return Refused(row, key, ReadingMessages.PlaceFromSupport);
        }

        if (Joints is not { } joints || (place.Label is string label && IsUnsettled(label)))
        {
            return null;
        }

        return place.Resolve(joints, _supports) switch
        {
            Reading<double>.Accepted found => OnBeam(row, key, Snap(Off(found.Value, row.Offset(key)))),
            Reading<double>.Refused refused => Refused(row, key, refused.Text),
            _ => throw new UnreachableException(),
        };
    }

    internal bool IsEnd(double position) => position == 0 || position == Length;

    internal int? JointAt(double position) => Joints?.IndexOf(position) is int joint and >= 0 ? joint : null;

    private static ImmutableArray<double> JointsOf(ImmutableArray<double> lengths)
    {
        // The same sums in the same order as the model's own, so that the numbers are the same to the last digit.
        ImmutableArray<double>.Builder joints = ImmutableArray.CreateBuilder<double>(lengths.Length + 1);
        joints.Add(0);
        foreach (double length in lengths)
        {
            joints.Add(joints[^1] + length);
        }

        return joints.MoveToImmutable();
    }

    private static double? Refused(Row row, string key, string text)
    {
        row.Refuse(key, text);
        return null;
    }

    private double? Joint(Row row) => row.Value("joint") switch
    {
        double joint when joint > _spans => Refused(row, "joint", ReadingMessages.NoSuchJoint((int)joint, _spans)),
        double joint => Joints?[(int)joint],
        null => null,
    };

    /// <summary>Whether a label may be that of a support whose place or letter is not known yet.</summary>
    private bool IsUnsettled(string label) => !_allSupportsStand && !_supports.ContainsKey(label);

    private double? OnBeam(Row row, string key, double position) => position >= 0 && position <= Length
        ? position
        : Refused(row, key, ProblemText.OffBeam(
            _display.Say(position, QuantityKind.Length), _display.Say(Length!.Value, QuantityKind.Length)));

    /// <summary>A place that is off by so much stays on the beam: an end is an end however it was measured.</summary>
    private double Off(double position, double offset) =>
        offset == 0 ? position : Math.Clamp(position + offset, Math.Min(0, position), Math.Max(Length!.Value, position));

    private double Snap(double position)
    {
        foreach (double mark in _marks)
        {
            if (Math.Abs(mark - position) <= SamePlace * Length)
            {
                return mark;
            }
        }

        return position;
    }
}
