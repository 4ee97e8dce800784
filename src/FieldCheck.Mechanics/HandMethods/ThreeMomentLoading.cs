using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Gives every load, and every force known already, to the bay, node or overhang that it acts on.</summary>
internal sealed class ThreeMomentLoading
{
    private readonly ThreeMomentGroup _group;
    private readonly HandBeam _beam;
    private readonly HandWriter _writer;
    private readonly ThreeMomentNode _first;
    private readonly ThreeMomentNode _last;
    private readonly ThreeMomentOverhang _overhang;

    private ThreeMomentLoading(ThreeMomentGroup group)
    {
        _group = group;
        _beam = group.Beam;
        _writer = group.Writer;
        _first = group.Nodes[0];
        _last = group.Nodes[^1];
        _overhang = new ThreeMomentOverhang(group.Writer);
    }

    /// <summary>Loads the group; writes the moments that overhangs bring to the outermost nodes.</summary>
    internal static void Put(ThreeMomentGroup group) => new ThreeMomentLoading(group).Put();

    private void Put()
    {
        AddEndHinges();
        AddKnownSupports();
        foreach (HandForce force in _beam.Loads.Forces.Where(one => one.IsAcross && Holds(one.To.Value)))
        {
            AddForce(force);
        }

        foreach (HandCouple couple in _beam.Loads.Couples.Where(Holds))
        {
            AddCouple(couple);
        }

        if (_overhang.Moment(_first, isLeft: true) is HandNumber left)
        {
            _first.MomentLeft = HandQuantity.Of(left);
        }

        if (_overhang.Moment(_last, isLeft: false) is HandNumber right)
        {
            _last.MomentRight = HandQuantity.Of(right);
        }
    }

    private bool Holds(double position) => ThreeMomentPlaces.Holds(_group.From, _group.To, position);

    private bool Holds(HandCouple couple)
    {
        double at = couple.Place.Value;
        return (at == _group.From && _group.From > 0 && couple.Side == Side.Right)
            || (Holds(at) && !(at == _group.To && couple.Side == Side.Right && _beam.Model.Hinges.Contains(at)));
    }

    private void AddEndHinges()
    {
        for (int i = 0; i < _beam.Model.Hinges.Length; i++)
        {
            double at = _beam.Model.Hinges[i];
            if ((at == _group.From || at == _group.To) && _beam.HingeForce[i] is HandNumber force)
            {
                bool isUp = _beam.HingeLiftsLeft[i] == (at == _group.To);
                Add(new HandName(HandRole.HingeForce, i), force, isUp, _writer.Place(at));
            }
        }
    }

    private void AddKnownSupports()
    {
        for (int i = 0; i < _beam.Model.Supports.Length; i++)
        {
            HandNumber place = _writer.Place(_beam.Model.Supports[i].Position);
            if (_beam.Touching[i] && Holds(place.Value) && _beam.Vertical[i] is HandNumber force)
            {
                Add(new HandName(HandRole.Vertical, i), force, isUp: true, place);
            }
        }
    }

    private void Add(HandName name, HandNumber force, bool isUp, HandNumber place)
    {
        HandActor actor = new HandActor.Named(name);
        if (!IsOutside(place) && BayAround(place) is ThreeMomentBay bay)
        {
            Lazy<HandNumber> left = new(() => HandNumber.Distance(bay.Left.Place, place));
            Lazy<HandNumber> right = new(() => HandNumber.Distance(place, bay.Right.Place));
            bay.Loads = bay.Loads.Add(new(actor, force, !isUp, HandShape.Point, null, false, false, left, right));
            return;
        }

        StandOn(actor, isUp ? -(HandFormula)force : force, place);
    }

    private void AddForce(HandForce force)
    {
        bool isDown = force.Sense == HandSense.Down;
        if (!IsOutside(force.Place) && BayAround(force.Place) is ThreeMomentBay bay)
        {
            HandSpread? spread = force.Spread;
            bool fills = spread?.From == bay.Left.Place && spread.To == bay.Right.Place;
            bay.Loads = bay.Loads.Add(new ThreeMomentLoad(
                force.Actor,
                force.Size,
                isDown,
                spread?.Shape ?? HandShape.Point,
                spread is null ? null : new(() => Named(spread.Width, HandRole.LoadWidth, force.Load, force.Part)),
                IsCouple: false,
                fills,
                FromLeft(bay, force.Place, force.Load, force.Part),
                FromRight(bay, force.Place, force.Load, force.Part)));
            return;
        }

        StandOn(force.Actor, isDown ? force.Size : -(HandFormula)force.Size, force.Place);
    }

    private void AddCouple(HandCouple couple)
    {
        HandNumber place = couple.Place;
        if (_group.Nodes.FirstOrDefault(node => node.Place == place) is ThreeMomentNode node)
        {
            HandFormula turn = couple.Signed;
            if (node.Hinge is null)
            {
                node.Couple = node.Couple is HandFormula other ? other + turn : turn;
            }
            else if (couple.Side == Side.Left)
            {
                node.MomentLeft = new(null, node.MomentLeft.Known is HandFormula left ? left + turn : turn);
            }
            else
            {
                node.MomentRight = new(null, node.MomentRight.Known is HandFormula right ? right - turn : -turn);
            }
        }
        else if (!IsOutside(place) && BayAround(place) is ThreeMomentBay bay)
        {
            bool isPositive = couple.Sense == HandSense.CounterClockwise;
            bay.Loads = bay.Loads.Add(new ThreeMomentLoad(
                couple.Actor,
                couple.Size,
                isPositive,
                HandShape.Point,
                null,
                IsCouple: true,
                false,
                FromLeft(bay, place, couple.Load, 0),
                FromRight(bay, place, couple.Load, 0)));
        }
        else
        {
            _overhang.Add(new ThreeMomentOverhang.Couple(couple.Actor, couple.Signed, place));
        }
    }

    private bool IsOutside(HandNumber place) => place.Value <= _first.Place.Value || place.Value >= _last.Place.Value;

    /// <summary>The bay that a place lies inside; null: it lies at a node.</summary>
    private ThreeMomentBay? BayAround(HandNumber place) => _group.Bays.FirstOrDefault(
        bay => bay.Left.Place.Value < place.Value && place.Value < bay.Right.Place.Value);

    private void StandOn(HandActor actor, HandFormula down, HandNumber place)
    {
        ThreeMomentNode node = place.Value <= _first.Place.Value ? _first
            : place.Value >= _last.Place.Value ? _last
            : _group.Nodes.First(one => one.Place.Value == place.Value);
        node.Down.Add(down);
        _overhang.Add(new ThreeMomentOverhang.Force(actor, down, place));
    }

    private Lazy<HandNumber> FromLeft(ThreeMomentBay bay, HandNumber place, int load, int part) => new(
        () => Named(HandNumber.Distance(bay.Left.Place, place), HandRole.FromBayLeft, load, part));

    private Lazy<HandNumber> FromRight(ThreeMomentBay bay, HandNumber place, int load, int part) => new(
        () => Named(HandNumber.Distance(place, bay.Right.Place), HandRole.FromBayRight, load, part));

    private HandNumber Named(HandNumber number, HandRole role, int load, int part) =>
        number.IsInline ? _writer.Find(number.Formula, new HandName(role, load, part)) : number;
}
