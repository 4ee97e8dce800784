using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>The loads of a combination as single forces and couples, with the lines that find them.</summary>
internal sealed class LoadForces
{
    private readonly HandWriter _writer;
    private readonly ImmutableArray<double> _cuts;
    private readonly ImmutableArray<double> _cutsAlong;
    private readonly List<HandForce> _forces = [];
    private readonly List<HandCouple> _couples = [];

    private LoadForces(HandWriter writer, ImmutableArray<double> cuts, ImmutableArray<double> cutsAlong)
    {
        _writer = writer;
        _cuts = cuts;
        _cutsAlong = cutsAlong;
    }

    /// <summary>Forces across and along, in the order of the loads.</summary>
    internal ImmutableArray<HandForce> Forces => [.. _forces];

    /// <summary>Couples, in the order of the loads.</summary>
    internal ImmutableArray<HandCouple> Couples => [.. _couples];

    /// <summary>No loads at all.</summary>
    internal static LoadForces None(HandWriter writer) => new(writer, [], []);

    /// <summary>Writes every load as forces.</summary>
    /// <param name="writer">Takes the lines.</param>
    /// <param name="model">The beam.</param>
    /// <param name="factors">The factor of each case [–].</param>
    /// <param name="cuts">Where what is spread across is cut in two [m], in order.</param>
    /// <param name="cutsAlong">Where what is spread along is cut in two [m], in order.</param>
    internal static LoadForces Of(
        HandWriter writer,
        BeamModel model,
        ImmutableArray<double> factors,
        ImmutableArray<double> cuts,
        ImmutableArray<double> cutsAlong)
    {
        LoadForces all = new(writer, cuts, cutsAlong);
        int index = 0;
        for (int i = 0; i < model.Cases.Length; i++)
        {
            foreach (Load load in model.Cases[i].Loads)
            {
                all.Add(load, index++, factors[i]);
            }
        }

        if (all._forces.Count + all._couples.Count == 0)
        {
            writer.Say(new HandRemark.NoLoads());
        }

        return all;
    }

    private void Add(Load load, int index, double factor)
    {
        if (factor == 0)
        {
            _writer.Say(new HandRemark.LoadLeftOut(index));
            return;
        }

        if (factor < 0)
        {
            _writer.Say(new HandRemark.LoadTurned(index));
        }

        switch (load)
        {
            case Load.Point point:
                AddPoint(point, index, factor);
                break;
            case Load.Couple couple when couple.Moment != 0:
                HandSense turn = couple.Moment * factor > 0 ? HandSense.CounterClockwise : HandSense.Clockwise;
                AddCouple(couple, index, factor, turn);
                break;
            case Load.Distributed spread:
                AddSpread(spread, index, factor);
                break;
        }
    }

    private void AddPoint(Load.Point point, int index, double factor)
    {
        HandSense across = point.Down * factor > 0 ? HandSense.Down : HandSense.Up;
        HandSense along = point.Right * factor > 0 ? HandSense.Right : HandSense.Left;
        HandNumber place = _writer.Place(point.Position);
        HandName name = new(HandRole.LoadForce, index, HandName.OnlyPart);
        HandName nameAlong = new(HandRole.LoadAlong, index, HandName.OnlyPart);
        if (point.Down != 0 && point.Right != 0)
        {
            HandNumber whole = HandNumber.Given(double.Hypot(point.Down, point.Right), HandUnit.OfForce);
            HandNumber lean = HandNumber.Given(
                Math.Atan2(Math.Abs(point.Right), Math.Abs(point.Down)), HandUnit.OfAngle);
            _writer.Say(new HandRemark.LoadLeans(index, whole, lean, along));
            AddForce(Times(factor, whole) * new HandFormula.Cosine(lean), name, across);
            AddForce(Times(factor, whole) * new HandFormula.Sine(lean), nameAlong, along);
        }
        else if (point.Right != 0)
        {
            AddForce(Times(factor, Math.Abs(point.Right), HandUnit.OfForce), nameAlong, along);
        }
        else if (point.Down != 0)
        {
            AddForce(Times(factor, Math.Abs(point.Down), HandUnit.OfForce), name, across);
        }

        void AddForce(HandFormula formula, HandName called, HandSense sense)
        {
            HandNumber size = new(formula, called);
            _writer.Add(new HandLine.Finds(size, sense, new HandActor.Whole(index), place));
            _forces.Add(new HandForce(index, HandName.OnlyPart, size, sense, place, null));
        }
    }

    private void AddCouple(Load.Couple couple, int index, double factor, HandSense turn)
    {
        HandNumber place = _writer.Place(couple.Position);
        HandNumber size = new(
            Times(factor, Math.Abs(couple.Moment), HandUnit.OfMoment), new HandName(HandRole.LoadCouple, index, HandName.OnlyPart));
        _writer.Add(new HandLine.Finds(size, turn, new HandActor.Whole(index), place));
        if (place.Name?.Role == HandRole.HingePlace)
        {
            _writer.Say(new HandRemark.TurnsSide(index, couple.Side));
        }

        _couples.Add(new HandCouple(index, size, turn, place, couple.Side));
    }

    private static HandFormula Times(double factor, double value, HandUnit unit) =>
        Math.Abs(factor) == 1 ? new HandFormula.Given(value, unit) : Times(factor, HandNumber.Given(value, unit));

    private static HandFormula Times(double factor, HandNumber number) => Math.Abs(factor) == 1
        ? number
        : (HandFormula)HandNumber.Given(Math.Abs(factor), HandUnit.Ratio) * number;

    private void AddSpread(Load.Distributed spread, int index, double factor)
    {
        _writer.Say(new HandRemark.LoadIs(index, _writer.Place(spread.From), _writer.Place(spread.To)));
        double sum = spread.StartIntensity + spread.EndIntensity;
        bool isPositive = (sum != 0 ? sum : spread.StartIntensity) * factor > 0;
        double oriented = (isPositive ? 1 : -1) * Math.Sign(factor);
        HandSense sense = spread.ActsAlong
            ? isPositive ? HandSense.Right : HandSense.Left
            : isPositive ? HandSense.Down : HandSense.Up;
        bool isEven = spread.StartIntensity == spread.EndIntensity;
        HandNumber start = Intensity(spread.StartIntensity * oriented, factor, new(HandRole.Intensity, index));
        HandNumber end = isEven
            ? start
            : Intensity(spread.EndIntensity * oriented, factor, new(HandRole.IntensityEnd, index));
        ImmutableArray<double> cuts = spread.ActsAlong ? _cutsAlong : _cuts;
        double[] stations = [spread.From, .. cuts.Where(cut => cut > spread.From && cut < spread.To), spread.To];
        if (stations.Length > 2)
        {
            _writer.Say(new HandRemark.LoadIsCut(index, [.. stations[1..^1].Select(_writer.Place)]));
        }

        (HandNumber from, HandNumber to) = (_writer.Place(spread.From), _writer.Place(spread.To));
        HandNumber left = start;
        // In one piece it needs no letter.
        bool isOne = stations.Length == 2 && (isEven || start.Value == 0 || end.Value == 0);
        int part = isOne ? HandName.OnlyPart : 0;
        for (int i = 1; i < stations.Length; i++)
        {
            HandNumber right = i == stations.Length - 1 || isEven
                ? end
                : Between(start, end, from, to, _writer.Place(stations[i]), new HandName(HandRole.IntensityEnd, index, i));
            AddStretch(index, ref part, sense, _writer.Place(stations[i - 1]), _writer.Place(stations[i]), left, right);
            left = right;
        }
    }

    private HandNumber Intensity(double value, double factor, HandName name)
    {
        if (value == 0)
        {
            return HandNumber.Given(value, HandUnit.OfIntensity, name);
        }

        return _writer.Find(
            Math.Abs(factor) == 1
                ? new HandFormula.Given(value, HandUnit.OfIntensity)
                : (HandFormula)HandNumber.Given(Math.Abs(factor), HandUnit.Ratio)
                    * HandNumber.Given(value, HandUnit.OfIntensity),
            name);
    }

    private HandNumber Between(
        HandNumber start, HandNumber end, HandNumber from, HandNumber to, HandNumber at, HandName name) =>
        _writer.Find(
            (HandFormula)start
                + (HandFormula)HandNumber.Difference(end, start) * HandNumber.Distance(from, at) / HandNumber.Distance(from, to),
            name);

    private void AddStretch(
        int index, ref int part, HandSense sense, HandNumber from, HandNumber to, HandNumber left, HandNumber right)
    {
        (double a, double b) = (left.Value, right.Value);
        if (a == 0 && b == 0)
        {
            return;
        }

        HandNumber width = HandNumber.Distance(from, to);
        width = width.IsInline ? _writer.Find(width.Formula, new HandName(HandRole.LoadWidth, index, part)) : width;
        Piece piece = new(index, sense, from, to, width);
        if (a == b)
        {
            AddPiece(piece, part++, HandShape.Uniform, left);
        }
        else if (a * b > 0)
        {
            bool rises = Math.Abs(b) > Math.Abs(a);
            HandNumber step = _writer.Find(
                rises ? (HandFormula)right - left : (HandFormula)left - right,
                new HandName(HandRole.IntensityStep, index, part));
            _writer.Say(new HandRemark.LoadIsSplit(
                index, part, [HandShape.Uniform, rises ? HandShape.Rising : HandShape.Falling]));
            AddPiece(piece, part++, HandShape.Uniform, rises ? left : right);
            AddPiece(piece, part++, rises ? HandShape.Rising : HandShape.Falling, step);
        }
        else
        {
            if (a * b < 0)
            {
                _writer.Say(new HandRemark.LoadIsSplit(index, part, [HandShape.Falling, HandShape.Rising]));
            }

            part += AddPiece(piece, part, HandShape.Falling, left);
            part += AddPiece(piece, part, HandShape.Rising, right);
        }
    }

    /// <summary>One piece; an intensity against the load's sense turns the piece round.</summary>
    /// <returns>How many pieces that made: 1, or 0 where there is no intensity.</returns>
    private int AddPiece(Piece piece, int part, HandShape shape, HandNumber intensity)
    {
        if (intensity.Value == 0)
        {
            return 0;
        }

        bool isTurned = intensity.Value < 0;
        HandFormula greatest = isTurned ? new HandFormula.Size(intensity) : intensity;
        HandFormula size = shape == HandShape.Uniform ? greatest * piece.Width : greatest * piece.Width / 2;
        HandSense acts = isTurned ? Opposite(piece.Sense) : piece.Sense;
        bool isAlong = acts is HandSense.Right or HandSense.Left;
        HandName name = new(isAlong ? HandRole.LoadAlong : HandRole.LoadForce, piece.Load, part);
        HandNumber force = _writer.Find(size, name, acts);
        HandNumber place = _writer.Find(piece.Centre(shape), new HandName(HandRole.LoadPlace, piece.Load, part));
        HandNumber peak = isTurned ? new HandNumber(greatest) { IsInline = true } : intensity;
        HandSpread spread = new(shape, piece.From, piece.To, piece.Width, peak);
        _forces.Add(new HandForce(piece.Load, part, force, acts, place, spread));
        return 1;
    }

    private static HandSense Opposite(HandSense sense) => sense switch
    {
        HandSense.Down => HandSense.Up,
        HandSense.Up => HandSense.Down,
        HandSense.Right => HandSense.Left,
        _ => HandSense.Right,
    };

    private sealed record Piece(int Load, HandSense Sense, HandNumber From, HandNumber To, HandNumber Width)
    {
        internal HandFormula Centre(HandShape shape) => shape switch
        {
            HandShape.Uniform => ((HandFormula)From + To) / 2,
            HandShape.Rising => (HandFormula)From + (HandFormula)2 * Width / 3,
            _ => (HandFormula)From + (HandFormula)Width / 3,
        };
    }
}
