using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Tables;

/// <summary>The input echoed: each row as typed, and what it was read as.</summary>
internal sealed class InputLines
{
    /// <summary>What stands for a cell in which nothing was typed.</summary>
    internal const string Nothing = "--";

    private readonly BeamDocument _document;
    private readonly BuiltBeam _beam;
    private readonly BeamWords _words;
    private readonly LoadWords _loads;
    private readonly Func<string, string> _letters;

    private InputLines(BeamDocument document, BuiltBeam beam, Func<string, string> letters, bool isSpoken)
    {
        _letters = letters;
        _document = document;
        _beam = beam;
        _words = new BeamWords(beam, isSpoken);
        _loads = new LoadWords(_words);
    }

    /// <summary>One sentence for each row of the sheet, in plain ASCII.</summary>
    internal static ImmutableArray<string> Of(Calculation calculation, bool isSpoken = false) =>
        Of(calculation, PlainAscii.Of, isSpoken);

    /// <summary>One sentence for each row of the sheet, in the letters that were typed.</summary>
    internal static ImmutableArray<string> AsTyped(Calculation calculation) =>
        Of(calculation, TextSafety.ForTerminal, isSpoken: false);

    /// <summary>The size of a load as typed, in plain ASCII.</summary>
    internal static string SizeTyped(LoadEntry row) => SizeTyped(row, PlainAscii.Of);

    private static ImmutableArray<string> Of(Calculation calculation, Func<string, string> letters, bool isSpoken) =>
        calculation.Beam is BuiltBeam beam ? new InputLines(calculation.Document, beam, letters, isSpoken).All() : [];

    private ImmutableArray<string> All() =>
    [
        $"length {_words.SayBothWays(_beam.Model.Length, QuantityKind.Length)}",
        .. _document.Spans.Select(Span),
        .. _beam.Supports.Select(Support),
        .. _document.Hinges.Select(Hinge),
        .. _beam.Loads.Select(Load),
        .. _document.Patterns.Select(Pattern),
        .. _document.Rolling.Select(Rolling),
        .. _beam.Model.Combinations.Select(Combination),
        .. Group("plus or minus, where a cell has none of its own", _document.Tolerance is { } tolerance ? TypedCells.Of(Fields.Tolerance, tolerance) : []),
        .. Group("held against", _document.Limits is { } limits
            ? TypedCells.Of(Fields.Limits, limits)
                .Concat(limits.DeflectionCases.Select(one => $"deflection under {one.Name} alone {one.Text}"))
                .Concat(limits.Lasting.Select(one => $"{one.Text} of {one.Name} lasts"))
            : []),
    ];

    private IEnumerable<string> Group(string name, IEnumerable<string> cells) =>
        string.Join(", ", cells) is { Length: > 0 } all ? [$"{name}: {_letters(all)}"] : [];

    private string Span(SpanEntry row, int index)
    {
        double length = _beam.Model.Spans[index].Length;
        string typed = row.Length is null ? $"to {Typed(row.To)} on the tape" : Typed(row.Length);
        string section = row.Section is null ? "" : $", section {Typed(row.Section)}";
        string material = row.Material is null ? "" : $", material {Typed(row.Material)}";
        string unbraced = row.Unbraced is null ? "" : $", unbraced {Typed(row.Unbraced)}";
        return $"span {index + 1}: {typed}, read as {_words.SayBothWays(length, QuantityKind.Length)}"
            + section + material + unbraced;
    }

    private string Support(NamedSupport support)
    {
        SupportEntry row = _document.Supports[support.Row];
        string typed = row.Joint is null ? Typed(row.At) : $"joint {Typed(row.Joint)}";
        string place = _words.SayBothWays(support.Support.Position, QuantityKind.Length);
        return $"support {support.Label}: {support.Kind} at {typed}, read as {place}"
            + Cell(", stiffness", row.Stiffness)
            + Cell(", rotational stiffness", row.RotationalStiffness)
            + Cell(", surface", row.Surface)
            + Cell(", settlement", row.Settlement)
            + (support.HasGap ? ", a gap to close first" : "")
            + Cell(", turned", row.Rotation)
            + Cell(", bearing", row.Bearing)
            + Cell(", bearing allowable", row.BearingAllowable)
            + Cell(", pad", row.Pad)
            + Cell(", allowable pressure", row.AllowablePressure)
            + Acts(support);
    }

    private static string Acts(NamedSupport support) => support switch
    {
        { Support.Action: SupportAction.PushesOnly } => ", only pushes",
        { Support.Action: SupportAction.HoldsDownOnly } => ", only holds down",
        { ActsAsWritten: true } => ", pushes and holds down",
        _ => "",
    };

    private string Hinge(HingeEntry row)
    {
        string typed = row.Joint is null ? Typed(row.At) : $"joint {Typed(row.Joint)}";
        return BeamPlaces.Find(_beam, row.Joint is null ? row.At ?? "" : $"joint {row.Joint}") is Reading<double>.Accepted place
            ? $"hinge at {typed}, read as {_words.SayBothWays(place.Value, QuantityKind.Length)}"
            : $"hinge at {typed}";
    }

    private string Load(NamedLoad named)
    {
        string place = _loads.Place(named.Load);
        string inAll = _loads.InAll(named.Load) is string total ? $", {total} in all" : "";
        string read = $"{_loads.Size(named.Load)} {place}{inAll}";
        if (named.Row is not int index)
        {
            return $"own weight ({_letters(named.Case)}): {read}";
        }

        string label = named.Label.Length == 0 ? "" : $" {_letters(named.Label)}";
        return $"load {index + 1}{label} ({_letters(named.Case)}): {SizeTyped(_document.Loads[index], _letters)}, "
            + $"read as {read}";
    }

    /// <summary>The size of a load as typed.</summary>
    internal static string SizeTyped(LoadEntry row, Func<string, string> letters)
    {
        return row switch
        {
            { Force: string force } => letters(force) + Then(" leaning", row.Angle),
            { Moment: string moment } => letters(moment),
            { Total: string total } => $"{letters(total)} in all",
            { Pressure: string pressure } =>
                $"{letters(pressure)}{Then(" to", row.PressureEnd)} on a width of {letters(row.Width ?? Nothing)}",
            _ => letters(row.Intensity ?? Nothing) + Then(" to", row.IntensityEnd),
        };

        string Then(string name, string? text) => text is null ? "" : $"{name} {letters(text)}";
    }

    private string Pattern(PatternEntry row) =>
        $"pattern: loads of case {Typed(row.Case)} stand or do not stand bay by bay";

    private string Rolling(RollingEntry row, int index)
    {
        RollingLoad read = _beam.Rolling[index];
        string label = string.IsNullOrWhiteSpace(row.Label) ? read.Label : $"rolling load {read.Label}";
        string axles = string.Join("; ", row.Axles.Select(axle => $"{Typed(axle.Force)} at {Typed(axle.Offset)}"));
        return _letters($"{label} ({_beam.Model.Cases[read.Case].Name})")
            + $": axles {axles}{Cell(", impact", row.Impact)}"
            + (_document.Rolling.Count > 1 ? ", never together with another rolling load" : "");
    }

    private string Combination(Combination combination)
    {
        string sum = string.Concat(_beam.Model.Cases
            .Zip(combination.Factors)
            .Where(pair => pair.Second != 0)
            .Select((pair, index) => Term(pair.Second, pair.First.Name, index == 0)));
        return $"combination {_letters(combination.Name)} ({BasisWords.Of(combination.Basis)}): "
            + (sum.Length == 0 ? "no loads" : sum);
    }

    private string Term(double factor, string name, bool isFirst)
    {
        string sign = isFirst ? "" : factor < 0 ? " - " : " + ";
        return $"{sign}{Figure(isFirst ? factor : Math.Abs(factor))} {_letters(name)}";
    }

    private string Figure(double factor) => _words.Number(factor, QuantityKind.Number);

    private string Cell(string name, string? text) => text is null ? "" : $"{name} {Typed(text)}";

    private string Typed(string? text) => text is null ? Nothing : _letters(text);
}
