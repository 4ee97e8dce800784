using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A stretch of one section between two neighbouring nodes; what is asked of it is written once.</summary>
internal sealed class ThreeMomentBay
{
    private readonly HandWriter _writer;
    private readonly HashSet<(HandLoadTerm, bool)> _rules;
    private (HandNumber? Number, bool IsFound) _termLeft;
    private (HandNumber? Number, bool IsFound) _termRight;
    private (HandNumber? Number, bool IsFound) _endLeft;
    private (HandNumber? Number, bool IsFound) _endRight;

    /// <summary>Joins two nodes.</summary>
    /// <param name="writer">Takes the lines.</param>
    /// <param name="rules">Rules for load terms that are said already, with the end they were said of.</param>
    /// <param name="left">The node at its left.</param>
    /// <param name="right">The node at its right.</param>
    internal ThreeMomentBay(
        HandWriter writer, HashSet<(HandLoadTerm, bool)> rules, ThreeMomentNode left, ThreeMomentNode right)
    {
        _writer = writer;
        _rules = rules;
        Left = left;
        Right = right;
        left.BayRight = this;
        right.BayLeft = this;
        HandNumber from = left.Place;
        Length = writer.Find(
            from.Value == 0 ? right.Place : (HandFormula)right.Place - from, Name(HandRole.BayLength));
        Reduced = Length;
    }

    internal ThreeMomentNode Left { get; }

    internal ThreeMomentNode Right { get; }

    internal HandNumber Length { get; }

    /// <summary>Rigidity of comparison over that of this bay; null: one.</summary>
    internal HandNumber? Ratio { get; set; }

    /// <summary>The length times <see cref="Ratio"/>.</summary>
    internal HandNumber Reduced { get; set; }

    /// <summary>6 times the rigidity of comparison over shear rigidity and length; null: no shear deforms it.</summary>
    internal HandNumber? ShearLength { get; set; }

    internal ImmutableArray<ThreeMomentLoad> Loads { get; set; } = [];

    internal IEnumerable<ThreeMomentLoad> Couples => Loads.Where(load => load.IsCouple);

    internal HandName Name(HandRole role) => new(role, Left.Index, Right.Index);

    /// <summary>The load term of an end; null: nil.</summary>
    internal HandNumber? LoadTerm(bool atRight) => Once(ref atRight ? ref _termRight : ref _termLeft, () =>
    {
        HandName name = Name(atRight ? HandRole.LoadTermRight : HandRole.LoadTermLeft);
        ImmutableArray<HandLoadTerm> rules =
            [.. Loads.Select(load => load.Rule(atRight)).Where(rule => _rules.Add((rule, atRight)))];
        _writer.Say(new HandRemark.LoadTermOf(Left.Index, Right.Index, atRight, rules));
        return Sum(load => load.LoadTerm(Length, atRight), name, divisor: null);
    });

    /// <summary>What the left end of the bay carries up, hung as a simple span; null: nil.</summary>
    internal HandNumber? EndLeft() => Once(ref _endLeft, () =>
    {
        _writer.Say(new HandRemark.SimpleSpan(Left.Index, Right.Index));
        return Sum(load => load.AboutRightEnd(), Name(HandRole.SimpleLeft), Length);
    });

    /// <summary>What the right end of the bay carries up, hung as a simple span; null: nil.</summary>
    internal HandNumber? EndRight()
    {
        HandNumber? left = EndLeft();
        return Once(ref _endRight, () => _writer.Find(
            HandFormula.Total(
                [.. Loads.Where(load => !load.IsCouple).Select(load => load.Signed), -(HandFormula)left!],
                HandUnit.OfForce),
            Name(HandRole.SimpleRight)));
    }

    private HandNumber? Once(ref (HandNumber? Number, bool IsFound) kept, Func<HandNumber> find)
    {
        if (!kept.IsFound)
        {
            kept = (Loads.IsEmpty ? null : find(), true);
        }

        return kept.Number;
    }

    private HandNumber Sum(Func<ThreeMomentLoad, HandFormula> part, HandName name, HandNumber? divisor)
    {
        if (Loads is [ThreeMomentLoad only])
        {
            return _writer.Find(Over(part(only)), name);
        }

        HandFormula[] parts = [.. Loads.Select(load => (HandFormula)_writer.Find(part(load), load.Actor))];
        return _writer.Find(Over(HandFormula.Total(parts, parts[0].Unit)), name);

        HandFormula Over(HandFormula whole) => divisor is null ? whole : whole / divisor;
    }
}
