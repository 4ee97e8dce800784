using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>The loads of a combination as single forces and couples, with the lines that find them.</summary>
internal sealed class LoadForces
{
    private readonly HandWriter _writer;
    private readonly ImmutableArray<double> _cuts;
    private readonly List<HandForce> _forces = [];
    private readonly List<HandCouple> _couples = [];

    private LoadForces(HandWriter writer, ImmutableArray<double> cuts)
    {
        _writer = writer;
        _cuts = cuts;
    }

    /// <summary>Forces across and along, in the order of the loads.</summary>
    internal ImmutableArray<HandForce> Forces => [.. _forces];

    /// <summary>Couples, in the order of the loads.</summary>
    internal ImmutableArray<HandCouple> Couples => [.. _couples];

    /// <summary>Writes every load as forces.</summary>
    /// <param name="writer">Takes the lines.</param>
    /// <param name="model">The beam.</param>
    /// <param name="factors">The factor of each case [–].</param>
    /// <param name="cuts">Where what is spread is cut in two [m], in order.</param>
    internal static LoadForces Of(
        HandWriter writer, BeamModel model, ImmutableArray<double> factors, ImmutableArray<double> cuts)
    {
        LoadForces all = new(writer, cuts);
        int index = 0;
        for (int i = 0; i < model.Cases.Length; i++)
        {
            foreach (Load load in model.Cases[i].Loads)
            {
                all.Add(load, index++, factors[i]);
            }
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

        switch (load)
        {
            case Load.Point point:
                AddPoint(point, index, factor);
                break;
            case Load.Couple couple when couple.Moment != 0:
                HandSense turn = couple.Moment * factor > 0 ? HandSense.CounterClockwise : HandSense.Clockwise;
                HandNumber size = Find(couple.Moment, factor, HandUnit.OfMoment, new(HandRole.LoadCouple, index), turn, couple.Position);
                _couples.Add(new HandCouple(index, size, turn, _writer.Place(couple.Position), couple.Side));
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
        HandName name = new(HandRole.LoadForce, index);
        HandName nameAlong = new(HandRole.LoadAlong, index);
        if (point.Down != 0 && point.Right != 0)
        {
            HandNumber whole = HandNumber.Given(double.Hypot(point.Down, point.Right), HandUnit.OfForce);
            HandNumber lean = HandNumber.Given(
                Math.Atan2(Math.Abs(point.Right), Math.Abs(point.Down)), HandUnit.OfAngle);
            _writer.Say(new HandRemark.LoadLeans(index, whole, lean, across, along));
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
            _writer.Add(new HandLine.Finds(size, sense, At: place));
            _forces.Add(new HandForce(index, 0, size, sense, place, null));
        }
    }

    private HandNumber Find(
        double value, double factor, HandUnit unit, HandName name, HandSense sense, double at)
    {
        HandNumber number = new(Times(factor, Math.Abs(value), unit), name);
        _writer.Add(new HandLine.Finds(number, sense, At: _writer.Place(at)));
        return number;
    }

    private static HandFormula Times(double factor, double value, HandUnit unit) =>
        Math.Abs(factor) == 1 ? new HandFormula.Given(value, unit) : Times(factor, HandNumber.Given(value, unit));

    private static HandFormula Times(double factor, HandNumber number) => Math.Abs(factor) == 1
        ? number
        : (HandFormula)HandNumber.Given(Math.Abs(factor), HandUnit.Ratio) * number;

    private void AddSpread(Load.Distributed spread, int index, double factor)
    {
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
        double[] stations = [spread.From, .. _cuts.Where(cut => cut > spread.From && cut < spread.To), spread.To];
        if (stations.Length > 2)
        {
            _writer.Say(new HandRemark.LoadIsCut(index, [.. stations[1..^1].Select(_writer.Place)]));
        }

        (HandNumber from, HandNumber to) = (_writer.Place(spread.From), _writer.Place(spread.To));
        HandNumber left = start;
        for (int i = 1, part = 0; i < stations.Length; i++)
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
        if (Math.Abs(factor) == 1)
        {
            return HandNumber.Given(value, HandUnit.OfIntensity, name);
        }

        return _writer.Find(
            (HandFormula)HandNumber.Given(Math.Abs(factor), HandUnit.Ratio)
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
        if (a == b)
        {
            AddPiece(index, part++, sense, HandShape.Uniform, from, to, left);
        }
        else if (a * b > 0)
        {
            bool rises = Math.Abs(b) > Math.Abs(a);
            AddPiece(index, part++, sense, HandShape.Uniform, from, to, rises ? left : right);
            AddPiece(
                index,
                part++,
                sense,
                rises ? HandShape.Rising : HandShape.Falling,
                from,
                to,
                rises ? HandNumber.Difference(right, left) : HandNumber.Difference(left, right));
        }
        else
        {
            AddPiece(index, part, sense, HandShape.Falling, from, to, left);
            part += a == 0 ? 0 : 1;
            AddPiece(index, part, sense, HandShape.Rising, from, to, right);
            part += b == 0 ? 0 : 1;
        }
    }

    /// <summary>One piece; an intensity against the load's sense turns the piece round.</summary>
    private void AddPiece(
        int index, int part, HandSense sense, HandShape shape, HandNumber from, HandNumber to, HandNumber intensity)
    {
        if (intensity.Value == 0)
        {
            return;
        }

        HandNumber width = HandNumber.Distance(from, to);
        HandFormula greatest = intensity.Value < 0 ? new HandFormula.Size(intensity) : intensity;
        HandFormula size = shape == HandShape.Uniform ? greatest * width : greatest * width / 2;
        HandSense acts = intensity.Value < 0 ? Opposite(sense) : sense;
        bool isAlong = acts is HandSense.Right or HandSense.Left;
        HandName name = new(isAlong ? HandRole.LoadAlong : HandRole.LoadForce, index, part);
        HandNumber force = _writer.Find(size, name, acts);
        HandNumber place = _writer.Find(Centre(shape, from, to, width), new HandName(HandRole.LoadPlace, index, part));
        HandNumber peak = intensity.Value < 0 ? new HandNumber(greatest) { IsInline = true } : intensity;
        _forces.Add(new HandForce(index, part, force, acts, place, new HandSpread(shape, from, to, width, peak)));
    }

    private static HandFormula Centre(HandShape shape, HandNumber from, HandNumber to, HandNumber width) => shape switch
    {
        HandShape.Uniform => ((HandFormula)from + to) / 2,
        HandShape.Rising => (HandFormula)from + (HandFormula)2 * width / 3,
        _ => (HandFormula)from + (HandFormula)width / 3,
    };

    private static HandSense Opposite(HandSense sense) => sense switch
    {
        HandSense.Down => HandSense.Up,
        HandSense.Up => HandSense.Down,
        HandSense.Right => HandSense.Left,
        _ => HandSense.Right,
    };
}
