using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>
/// Shear and moment from mark to mark, left to right: the shear by adding what acts, the moment by areas under the
/// shear.
/// </summary>
internal sealed class SectionForces
{
    private readonly HandBeam _beam;
    private readonly HandWriter _writer;
    // Below this share of the largest force a shear is nothing but rounding.
    private const double Nothing = 1e-12;

    private readonly List<HandMark> _marks = [];
    private readonly HashSet<HandStretchLoad> _told = [];
    private readonly double _nothing;
    private HandNumber _shear;
    private HandNumber _moment;

    private SectionForces(HandBeam beam)
    {
        _beam = beam;
        _writer = beam.Writer;
        _nothing = Nothing * beam.Loads.Forces.Select(force => force.Size.Value)
            .Concat(beam.Vertical.Select(reaction => Math.Abs(reaction?.Value ?? 0)))
            .DefaultIfEmpty(0)
            .Max();
        _shear = new HandNumber(HandFormula.Total([], HandUnit.OfForce), new HandName(HandRole.ShearLeft));
        _moment = new HandNumber(HandFormula.Total([], HandUnit.OfMoment), new HandName(HandRole.SectionMomentLeft));
    }

    /// <summary>Writes the step, with the table of marks at its end.</summary>
    internal static void Write(HandBeam beam) => new SectionForces(beam).Write();

    private void Write()
    {
        _writer.Begin(new HandStep.AlongTheBeam());
        HandNumber[] places = [.. Places().Distinct().Order().Select(_writer.Place)];
        Pass(places[0]);
        for (int i = 1; i < places.Length; i++)
        {
            foreach (LoadStretch stretch in LoadStretch.Between(_writer, _beam.Loads, places[i - 1], places[i], _marks.Count))
            {
                Go(stretch);
                if (stretch.To != places[i])
                {
                    Pass(stretch.To);
                }
            }

            Pass(places[i]);
        }

        _writer.Say(new HandRemark.EndsWithNothing());
        Close(_shear, _marks.SelectMany(mark => new[] { mark.ShearLeft, mark.ShearRight }));
        Close(_moment, _marks.SelectMany(mark => new[] { mark.MomentLeft, mark.MomentRight }));
        _writer.Add(new HandLine.Marks([.. _marks]));
        AxialForces.Write(_beam);
    }

    private void Close(HandNumber number, IEnumerable<HandNumber> scale) =>
        _writer.Add(new HandLine.Closes(
            new HandNumber(HandFormula.Total([number], number.Unit), number.Name),
            scale.Max(one => Math.Abs(one.Value))));

    private IEnumerable<double> Places() =>
    [
        0,
        .. Enumerable.Range(0, _beam.Model.Supports.Length)
            .Where(i => _beam.Vertical[i] is not null || _beam.Couple[i] is not null)
            .Select(i => _beam.Model.Supports[i].Position),
        .. _beam.Model.Hinges,
        .. _beam.Loads.Forces.Where(force => force.IsAcross).SelectMany(force => new[] { force.From.Value, force.To.Value }),
        .. _beam.Loads.Couples.Select(couple => couple.Place.Value),
        _beam.Model.Length,
    ];

    /// <summary>Over a mark: what stands there makes shear and moment jump.</summary>
    private void Pass(HandNumber place)
    {
        int index = _marks.Count;
        HandNumber shearLeft = _shear;
        HandNumber momentLeft = _moment;
        HandFormula[] forces = [.. ForcesAt(place.Value)];
        int hinge = _beam.Model.Hinges.IndexOf(place.Value);
        HandFormula[] before = [.. CouplesAt(place.Value, hinge >= 0 ? Side.Left : null)];
        HandFormula[] behind = hinge >= 0 ? [.. CouplesAt(place.Value, Side.Right)] : [];
        if (forces.Length + before.Length + behind.Length > 0)
        {
            _writer.Say(new HandRemark.Jumps(place, forces.Length > 0, before.Length + behind.Length > 0));
        }

        if (forces.Length > 0)
        {
            _shear = _writer.Find(
                forces.Aggregate((HandFormula)_shear, (sum, force) => sum + force), new HandName(HandRole.ShearRight, index));
        }

        Turn(before, index);
        if (hinge >= 0)
        {
            _writer.Say(new HandRemark.HingeIsFree(hinge));
            Close(_moment, _marks.SelectMany(mark => new[] { mark.MomentLeft, mark.MomentRight }).Append(momentLeft));
        }

        Turn(behind, index);
        _marks.Add(new HandMark(place, shearLeft, _shear, momentLeft, _moment));
    }

    private void Turn(HandFormula[] couples, int index)
    {
        if (couples.Length > 0)
        {
            _moment = _writer.Find(
                couples.Aggregate((HandFormula)_moment, (sum, couple) => sum - couple),
                new HandName(HandRole.SectionMomentRight, index));
        }
    }

    private IEnumerable<HandFormula> ForcesAt(double position)
    {
        for (int i = 0; i < _beam.Model.Supports.Length; i++)
        {
            if (_beam.Vertical[i] is HandNumber reaction && _beam.Model.Supports[i].Position == position)
            {
                yield return reaction;
            }
        }

        foreach (HandForce force in _beam.Loads.Forces)
        {
            if (force is { IsAcross: true, Spread: null } && force.Place.Value == position)
            {
                yield return force.Signed;
            }
        }
    }

    /// <summary>Couples at a place; of those that load a hinge, the ones on one side of it.</summary>
    private IEnumerable<HandFormula> CouplesAt(double position, Side? side)
    {
        for (int i = 0; i < _beam.Model.Supports.Length; i++)
        {
            if (_beam.Couple[i] is HandNumber couple && _beam.Model.Supports[i].Position == position)
            {
                yield return couple;
            }
        }

        foreach (HandCouple couple in _beam.Loads.Couples)
        {
            if (couple.Place.Value == position && (side is null || couple.Side == side))
            {
                yield return couple.Signed;
            }
        }
    }

    /// <summary>Over a stretch: the shear falls by the load on it, the moment grows by the area under the shear.</summary>
    private void Go(LoadStretch stretch)
    {
        _writer.Say(new HandRemark.Stretch(stretch.From, stretch.To, stretch.Load, _told.Add(stretch.Load)));
        int next = _marks.Count;
        HandNumber before = _shear;
        HandNumber width = stretch.Width();
        HandName moment = new(HandRole.SectionMomentLeft, next);
        if (stretch.Load == HandStretchLoad.Nothing)
        {
            _moment = _writer.Find((HandFormula)_moment + (HandFormula)before * width, moment);
            return;
        }

        HandNumber start = stretch.Start();
        HandNumber end = stretch.End();
        HandFormula fall = stretch.Load == HandStretchLoad.Uniform
            ? (HandFormula)start * width
            : ((HandFormula)start + end) * width / 2;
        HandNumber after = _writer.Find((HandFormula)before - fall, new HandName(HandRole.ShearLeft, next));
        HandNumber atStart = _moment;
        _moment = _writer.Find((HandFormula)_moment + AreaUnder(stretch.Load, before, after, start, end, width), moment);
        _shear = after;
        if (before.Value * after.Value < 0 && Math.Min(Math.Abs(before.Value), Math.Abs(after.Value)) > _nothing)
        {
            Peak(stretch, before, atStart, start, end);
        }
    }

    private static HandFormula AreaUnder(
        HandStretchLoad load, HandNumber before, HandNumber after, HandNumber start, HandNumber end, HandFormula width) =>
        load == HandStretchLoad.Uniform
            ? ((HandFormula)before + after) * width / 2
            : (HandFormula)before * width - ((HandFormula)2 * start + end) * new HandFormula.Power(width, 2) / 6;

    /// <summary>Where the shear goes through zero: of the uniform load V / w on; else the root of w s + k s² / 2 = V.</summary>
    private void Peak(LoadStretch stretch, HandNumber before, HandNumber atStart, HandNumber start, HandNumber end)
    {
        int index = _marks.Count - 1;
        _writer.Say(new HandRemark.ZeroShear(stretch.Load, stretch.From));
        HandName distanceName = new(HandRole.ZeroShearDistance, index);
        HandNumber distance;
        HandFormula area;
        if (stretch.Load == HandStretchLoad.Uniform)
        {
            distance = _writer.Find((HandFormula)before / start, distanceName);
            area = (HandFormula)before * distance / 2;
        }
        else
        {
            HandNumber slope = _writer.Find(
                ((HandFormula)end - start) / stretch.Width(), new HandName(HandRole.IntensitySlope, index));
            HandNumber root = _writer.Find(
                new HandFormula.Root(new HandFormula.Power(start, 2) + (HandFormula)2 * slope * before),
                new HandName(HandRole.ZeroShearRoot, index));
            HandFormula divisor = before.Value > 0 ? (HandFormula)start + root : (HandFormula)start - root;
            distance = _writer.Find((HandFormula)2 * before / divisor, distanceName);
            area = (HandFormula)before * distance
                - (HandFormula)start * new HandFormula.Power(distance, 2) / 2
                - (HandFormula)slope * new HandFormula.Power(distance, 3) / 6;
        }

        HandNumber place = stretch.From.Value == 0 && stretch.From.Formula is HandFormula.Given
            ? distance
            : _writer.Find((HandFormula)stretch.From + distance, new HandName(HandRole.ZeroShear, index));
        HandNumber peak = _writer.Find((HandFormula)atStart + area, new HandName(HandRole.PeakMoment, index));
        HandNumber none = new(HandFormula.Total([], HandUnit.OfForce));
        _marks.Add(new HandMark(place, none, none, peak, peak) { IsPeak = true });
    }
}
