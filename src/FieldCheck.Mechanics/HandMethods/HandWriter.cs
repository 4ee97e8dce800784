using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Takes down the lines of a working, and gives every place on the beam one number for all of them.</summary>
internal sealed class HandWriter
{
    private readonly List<HandLine> _lines = [];
    private readonly Dictionary<double, HandNumber> _places = [];

    /// <summary>Begins the working of a beam.</summary>
    /// <param name="model">The beam.</param>
    internal HandWriter(BeamModel model)
    {
        for (int i = 0; i < model.Supports.Length; i++)
        {
            double at = model.Supports[i].Position;
            _places[at] = HandNumber.Given(at, HandUnit.OfLength, new HandName(HandRole.SupportPlace, i));
        }

        for (int i = 0; i < model.Hinges.Length; i++)
        {
            double at = model.Hinges[i];
            _places.TryAdd(at, HandNumber.Given(at, HandUnit.OfLength, new HandName(HandRole.HingePlace, i)));
        }
    }

    /// <summary>The lines so far.</summary>
    internal ImmutableArray<HandLine> Lines => [.. _lines];

    /// <summary>The number of a place: the same one each time.</summary>
    /// <param name="position">The place [m from the left end].</param>
    internal HandNumber Place(double position)
    {
        if (!_places.TryGetValue(position, out HandNumber? place))
        {
            place = HandNumber.Given(position, HandUnit.OfLength);
            _places.Add(position, place);
        }

        return place;
    }

    internal void Begin(HandStep step) => _lines.Add(new HandLine.Begins(step));

    internal void Say(HandRemark remark) => _lines.Add(new HandLine.Says(remark));

    internal void Add(HandLine line) => _lines.Add(line);

    /// <summary>Writes the line that finds a number.</summary>
    /// <returns>The number.</returns>
    internal HandNumber Find(HandFormula formula, HandName name, HandSense sense = HandSense.None)
    {
        HandNumber number = new(formula, name);
        _lines.Add(new HandLine.Finds(number, sense));
        return number;
    }

    /// <summary>Writes the line that finds a number without a name.</summary>
    /// <returns>The number.</returns>
    internal HandNumber Find(HandFormula formula, HandActor actor, HandSense sense = HandSense.None)
    {
        HandNumber number = new(formula);
        _lines.Add(new HandLine.Finds(number, sense, actor));
        return number;
    }
}
