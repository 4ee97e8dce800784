using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Tables;

/// <summary>Places and values of one beam in words, in its units: plain ASCII.</summary>
/// <param name="Beam">The beam.</param>
/// <param name="IsSpoken">True: units are written out, for reading aloud.</param>
internal sealed record BeamWords(BuiltBeam Beam, bool IsSpoken = false)
{
    private DisplayUnits Units => Beam.Display;

    /// <summary>A place: the label of the support that stands there, the end, or its distance.</summary>
    internal string Place(double position) =>
        Beam.Supports.FirstOrDefault(support => support.Support.Position == position)?.Label
        ?? (position == 0 ? "the left end"
            : position == Beam.Model.Length ? "the right end"
            : Say(position, QuantityKind.Length));

    /// <summary>A place: always its distance, with the label of the support that stands there.</summary>
    internal string PlaceInFull(double position)
    {
        string distance = Say(position, QuantityKind.Length);
        string place = Place(position);
        return place == distance ? distance : $"{place} ({distance})";
    }

    internal string Say(double value, QuantityKind kind) => Written(Units.Say(value, kind));

    internal string SayBothWays(double value, QuantityKind kind) => Plain(Units.SayBothWays(value, kind));

    internal string Number(double value, QuantityKind kind) => Units.Number(value, kind);

    internal string Signed(double value, QuantityKind kind) => Units.SignedNumber(value, kind);

    /// <summary>A value with its sign and unit, as "+6.81 kNm".</summary>
    internal string SaySigned(double value, QuantityKind kind) =>
        Written($"{Signed(value, kind)} {Units.UnitOf(kind)}");

    internal string Unit(QuantityKind kind) => Plain(Units.UnitOf(kind));

    /// <summary>True: the value is written as zero.</summary>
    internal bool IsNothing(double value, QuantityKind kind) => Number(value, kind) == Number(0, kind);

    /// <summary>A force across the beam, as "9.90 kN up".</summary>
    internal string Vertical(double up) => Directed(up, QuantityKind.Force, "up", "down");

    /// <summary>A force along the beam, as "2.00 kN right".</summary>
    internal string Horizontal(double right) => Directed(right, QuantityKind.Force, "right", "left");

    /// <summary>A moment, as "3.10 kNm ccw".</summary>
    internal string Turning(double counterClockwise) => IsSpoken
        ? Directed(counterClockwise, QuantityKind.Moment, "counter-clockwise", "clockwise")
        : Directed(counterClockwise, QuantityKind.Moment, "ccw", "cw");

    /// <summary>A movement across the beam, as "6.2 mm down".</summary>
    internal string Movement(double down)
    {
        string size = MovementSize(down);
        return size == MovementSize(0) ? size : $"{size} {(down > 0 ? "down" : "up")}";
    }

    /// <summary>A movement's size, as "6.2 mm".</summary>
    internal string MovementSize(double down) => Written(Units.Movement(Math.Abs(down)));

    /// <summary>What a support gives, part by part, across first: what is not nothing, but one at least.</summary>
    internal ImmutableArray<string> Parts(Support support, Reaction reaction)
    {
        if (reaction.IsLiftedOff)
        {
            return [IsSlack(support, reaction) ? "slack" : "lifted off"];
        }

        string[] along = IsNothing(reaction.Horizontal, QuantityKind.Force) ? [] : [Horizontal(reaction.Horizontal)];
        string[] turning = IsNothing(reaction.Moment, QuantityKind.Moment) ? [] : [Turning(reaction.Moment)];
        bool isAcross = !IsNothing(reaction.Vertical, QuantityKind.Force) || along.Length + turning.Length == 0;
        return isAcross ? [Vertical(reaction.Vertical), .. along, .. turning] : [.. along, .. turning];
    }

    /// <summary>True: a strap, which only holds the beam down, has nothing to hold.</summary>
    internal static bool IsSlack(Support support, Reaction reaction) =>
        reaction.IsLiftedOff && support.Action == SupportAction.HoldsDownOnly;

    /// <summary>True: the reaction pulls the beam down.</summary>
    internal bool IsDown(Reaction reaction) =>
        reaction.Vertical < 0 && !IsNothing(reaction.Vertical, QuantityKind.Force);

    /// <summary>Names in a row, as "A, B and C".</summary>
    internal static string List(IReadOnlyList<string> names, string last = "and") => names.Count switch
    {
        0 => "",
        1 => names[0],
        _ => string.Join(", ", names.Take(names.Count - 1)) + $" {last} {names[^1]}",
    };

    private string Directed(double value, QuantityKind kind, string positive, string negative)
    {
        string size = Say(Math.Abs(value), kind);
        return IsNothing(value, kind) ? size : $"{size} {(value > 0 ? positive : negative)}";
    }

    /// <summary>A sentence, its units written out where it is for reading aloud.</summary>
    /// <param name="text">The sentence.</param>
    internal string Sentence(string text) => IsSpoken ? SpokenUnits.Throughout(PlainAscii.Of(text)) : TypedLetters.Sentence(Beam, text);

    private string Written(string text) => IsSpoken ? SpokenUnits.In(Plain(text)) : Plain(text);

    // Moments may be written "kN·m"; joined it is the same unit in ASCII.
    private static string Plain(string text) => PlainAscii.Of(text.Replace("·", "", StringComparison.Ordinal));
}
