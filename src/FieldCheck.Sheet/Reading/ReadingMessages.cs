using System.Globalization;

namespace FieldCheck.Sheet.Reading;

/// <summary>
/// Everything that is said about a text that does not read, in one place so that the tone can be read through.
/// </summary>
/// <remarks>
/// Each says what was expected. Small first letter, no full stop: the place in the file or the cell's name goes before.
/// </remarks>
internal static class ReadingMessages
{
    // Numbers

    internal const string TooLarge = "the number is too large";

    internal const string TooSmall = "the number is too small";

    internal const string DivisionByZero = "this divides by zero";

    internal const string TooManyUnits = "too many units multiplied together";

    internal static string NotANumber(string written) => $"{Found.Quoted(written)} is not a number";

    internal static string Comma(string written)
    {
        string grouped = Clean(written.Replace(",", string.Empty, StringComparison.Ordinal));
        int last = written.LastIndexOf(',');
        string decimals = Digits(written[(last + 1)..]);
        string whole = Digits(written[..last]);
        string point = (whole.Length == 0 ? "0" : whole) + "." + decimals;
        return $"a comma is not read: {Found.Clipped(written)} could be {Found.Clipped(point)} "
            + $"or {Found.Clipped(grouped)}, write the one meant";
    }

    // Feet, inches and fractions

    internal static string JoinOrSubtract(string feet, string inches) =>
        $"{feet} - {inches} in could join or subtract: "
        + $"write {feet} {inches} in to join, {feet} - ({inches} in) to subtract";

    internal static string InchesTooMany(string inches) => $"{inches} after feet: inches after feet stay below 12";

    internal static string InchesUnmarked(string number) => $"{number} after feet has no unit: write {number} in";

    internal static string FeetNotWhole(string feet) => $"feet before inches are a whole number, not {feet}";

    internal static string NotATapeFraction(string fraction, string upper, string unit) =>
        $"{fraction} is no tape fraction (halves down to 64ths): "
        + $"write {upper} {unit} / {Lower(fraction)} or a decimal";

    internal static string FractionNotBelowOne(string fraction, string whole) =>
        $"{fraction} after {whole}: a fraction after a whole number stays below 1";

    // Units

    internal static string UnitUnknown(string run, ReadOnlySpan<QuantityKind> wanted) =>
        $"unknown unit {Found.Quoted(run)}: {WrittenIn(wanted)}";

    internal static string UnitMisspelt(string run, IReadOnlyList<string> near) =>
        $"unknown unit {Found.Quoted(run)}: did you mean {KindWords.Either(near)}?";

    internal static string Ton(double number, string run) =>
        $"{Figure(number)} {run} could be {Figure(number)} t, {Figure(number * 2000)} lbf (short tons) "
        + $"or {Figure(number * 2240)} lbf (long tons): write the one meant";

    internal static string UnitElsewhere(double number, string run, double converted, string unit) =>
        $"{Found.Quoted(run)} is no unit here: {Figure(number)} {run} is {Figure(converted)} {unit}";

    internal static string Bare(string written, ReadOnlySpan<QuantityKind> wanted) =>
        $"{Found.Clipped(written)} has no unit: {WrittenIn(wanted)}";

    internal static string BareShare(string written, double value) =>
        $"{Found.Clipped(written)} could be {Figure(value * 100)} % or {Figure(value)} %: write the one meant";

    internal static string BareInSum(string written, string other) =>
        $"{Found.Clipped(written)} has no unit, and the other part of the sum is {other}";

    internal static string PerAlone(string unit) =>
        $"nothing stands before /{Found.Clipped(unit)}: write the whole unit, as in 12 kN/m";

    internal static string UnitAfterBracket(string bracket, string unit) =>
        $"a unit follows a number, not a bracket: write {Found.Clipped(bracket)} * 1 {unit}";

    // Arithmetic

    internal const string EndsTooSoon = "the text ends where a number is expected";

    internal const string BracketNotClosed = "this bracket is not closed";

    internal const string BracketNotOpened = "this bracket was not opened";

    internal static string NumberExpected(string found) => $"expected a number, found {found}";

    internal static string SignExpected(string found) => $"expected + - * / or the end, found {found}";

    internal static string SideBySide(string found) =>
        $"{found} follows without a sign: write + or * between, and a number without spaces";

    internal static string NestedTooDeep(int deepest) =>
        $"brackets are nested too deep: at most {Figure(deepest)}";

    internal static string CannotAdd(string right, string left) => $"{right} cannot be added to {left}";

    internal static string CannotSubtract(string right, string left) => $"{right} cannot be subtracted from {left}";

    // Plus or minus

    internal const string PlusSlash = "plus or minus is written ± or +-";

    internal const string SpreadNotLast = "± stands once, at the end of the text";

    internal const string SpreadNegative = "what follows ± is 0 or more";

    internal static string SpreadNotMeasured(QuantityKind kind) => $"{KindWords.Name(kind)} takes no ±";

    internal static string SpreadUnlike(string found, string value) =>
        $"after ± expected {value} or per cent, found {found}";

    // Whole texts

    internal static string Empty(ReadOnlySpan<QuantityKind> wanted) => $"empty: expected {KindWords.Expected(wanted)}";

    internal static string EmptyText(string expected) => $"empty: expected {expected}";

    internal static string TooLong(int longest) => $"too long: at most {Figure(longest)} characters";

    internal static string WrongKind(ReadOnlySpan<QuantityKind> wanted, string found) =>
        $"expected {KindWords.Expected(wanted)}, found {found}";

    // Places

    private const int MostLabels = 8;

    internal const string PlaceExpected = "a place such as \"4 ft\", \"A + 4 ft\", \"end - 6 in\" or \"mid 1\"";

    internal const string PlaceFromSupport =
        "a support's own place is not given from a support: write a distance from the left end, end, joint or mid";

    internal const string SpreadOfPlace = "± needs a measured length before it: write + 0 ft ± 1 in";

    internal const string JointNumber =
        "joint needs its number: joint 0 is the left end, joint 1 the far end of span 1";

    internal const string SpanNumber = "mid needs the number of its span: mid 1 is the middle of span 1";

    internal static string PlaceSign(string anchor, string found) =>
        $"expected + or - and a length after {anchor}, found {found}";

    internal static string NoSuchJoint(int joint, int last) =>
        $"there is no joint {Figure(joint)}: the beam has joints 0 to {Figure(last)}";

    internal static string NoSuchSpan(int span, int last) =>
        $"there is no span {Figure(span)}: the beam has spans 1 to {Figure(last)}";

    internal static string NoSuchSupport(string label, IReadOnlyList<string> near, IReadOnlyList<string> known)
    {
        string hint = (near, known) switch
        {
            ({ Count: > 0 }, _) => $": did you mean {KindWords.Either(near)}?",
            (_, { Count: > MostLabels }) => string.Empty,
            (_, { Count: > 0 }) => $": there is {string.Join(", ", known)}",
            _ => ": there is none yet",
        };
        return $"no support is called {label}{hint}";
    }

    // Labels, numbers and the other cells

    internal const string LabelExpected = "a label such as \"B2\": a letter, then letters, digits or _";

    internal static string LabelShape(string found) => $"expected {LabelExpected}, found {found}";

    internal static string LabelTooLong(int longest) => $"a label has at most {Figure(longest)} characters";

    internal static string LabelTaken(string label) => $"{label} already means a place: choose another label";

    internal static string WholeNumber(int least, int most, string found) =>
        $"expected a whole number from {Figure(least)} to {Figure(most)}, found {found}";

    internal const string LimitExpected = "a deflection limit such as \"L/360\"";

    internal static string LimitShape(string found) => $"expected {LimitExpected}, found {found}";

    internal const string LimitNotPositive = "the number below L is greater than 0";

    internal const string PadExpected = "two lengths such as \"24 in x 24 in\"";

    internal static string PadShape(string found) => $"expected {PadExpected}, found {found}";

    internal const string PadNotPositive = "both lengths are greater than 0";

    internal const string ToleranceNegative = "a tolerance is 0 or more";

    private static string WrittenIn(ReadOnlySpan<QuantityKind> wanted) =>
        wanted.Length == 1 && KindWords.Units(wanted[0]) is [_, ..] units
            ? $"{KindWords.Name(wanted[0])} is written in {KindWords.Either(units)}"
            : $"expected {KindWords.Expected(wanted)}";

    private static string Lower(string fraction) => fraction[(fraction.IndexOf('/') + 1)..];

    private static string Digits(string text) => string.Concat(text.Where(char.IsAsciiDigit));

    private static string Clean(string text) => text.StartsWith('.') ? "0" + text : text;

    private static string Figure(double value) => value.ToString("G10", CultureInfo.InvariantCulture);
}
