using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Fuzz;

/// <summary>The reader of quantities, for every kind of cell.</summary>
public sealed class QuantityTarget : FuzzTarget
{
    private const int LongestMessage = 500;

    private static readonly QuantityKind[] SizeOfLoad =
        [QuantityKind.Force, QuantityKind.ForcePerLength, QuantityKind.Pressure, QuantityKind.Moment];

    private static readonly QuantityKind[] Kinds = Enum.GetValues<QuantityKind>();

    private readonly MessageKinds _messages = MessageKinds.OfReaders();

    /// <inheritdoc/>
    public override string Name => "quantity";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Seeds { get; } =
    [
        "12 ft 6 in", "12'-6 1/2\"", "5 1/4 in", "3.81 m", "850 kg", "1.2 t", "50 psf * 4 ft", "(3 m + 250 mm) / 2",
        "12 kN ± 10 %", "2 * 1.2 kN + 300 N", "kip-ft/rad", "30 kNm/rad", "-5 kN", "7850 kg/m3", "29e6 psi", "½ m", "1/3 ft",
        "12", "1,5 m", "ton", "3 ton", "170 in4", "170 in^4", "8.84 in²", "10 deg", "30 %", "1.25", "3..6 kN/m", "",
        "((((1 m))))", "12 ft - 6 in", "1e308 m * 10", "1/0 m", "0 m ± 0 m", "12 ft 13 in",
    ];

    /// <inheritdoc/>
    public override int MostKept => 250;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Words { get; } =
    [
        "0", "1", "12", "0.5", ".5", "5.", "1e3", "1e-3", "1e999", "1e-999", "1_000", "0x1F", "NaN", "Infinity", "1/2", "1/64", "1/3",
        "5 1/4", "½", "¼", "¾", " ", "  ", "+", "-", "−", "*", "×", "·", "/", "(", ")", "±", "+-", "^2", "²", "³", "⁴", ",", ".", "'",
        "\"", "′", "″", "’", "”", "%", "m", "mm", "cm", "ft", "in", "N", "kN", "MN", "lbf", "lb", "kip", "kgf", "kg", "t", "ton",
        "plf", "klf", "kN/m", "lb/ft", "Pa", "kPa", "MPa", "GPa", "N/mm2", "psf", "ksf", "psi", "ksi", "N*m", "kNm", "kN-m",
        "kip-ft", "kip-in", "rad", "deg", "mrad", "kNm/rad", "mm4", "in4", "kg/m3", "pcf", "kN/m3",
    ];

    /// <inheritdoc/>
    public override string Change(string text, string other, Random random) => random.Next(6) switch
    {
        0 => $"({text})",
        1 => $"{text} {"+-*/±"[random.Next(5)]} {other}",
        _ => TextChange.One(text, other, Words, random),
    };

    /// <inheritdoc/>
    public override IReadOnlySet<string> Check(string text)
    {
        HashSet<string> kinds = new(StringComparer.Ordinal);
        foreach (QuantityKind kind in Kinds)
        {
            Reading<Quantity> reading = QuantityReader.Read(text, kind);
            kinds.UnionWith(Check(text, reading).Select(said => $"{kind}: {said}"));
            Promise(Equals(reading, QuantityReader.Read(text, kind)), "a text always reads alike");
            if (reading is Reading<Quantity>.Accepted accepted && text.Length < QuantityReader.LongestText - 1)
            {
                Promise(Equals(accepted, QuantityReader.Read($" {text} ", kind)), "blanks round a quantity do not count");
            }
        }

        kinds.UnionWith(Check(text, QuantityReader.Read(text, SizeOfLoad)).Select(said => "size of a load: " + said));
        kinds.UnionWith(Check(text, PlaceReader.Read(text)).Select(said => "place: " + said));
        kinds.UnionWith(Check(text, PadSizeReader.Read(text)).Select(said => "pad: " + said));
        return kinds;
    }

    private IReadOnlyList<string> Check<T>(string text, Reading<T> reading)
    {
        switch (reading)
        {
            case Reading<T>.Accepted { Value: Quantity quantity }:
                Promise(double.IsFinite(quantity.Value), "a value is finite");
                Promise(quantity.Spread is null or (>= 0 and < double.PositiveInfinity), "a spread is finite and not negative");
                Promise(double.IsFinite(quantity.HalfDigit) && quantity.HalfDigit >= 0, "half a digit is finite");
                return ["reads " + quantity.Dimension, quantity.Spread is null ? "exact" : "±", quantity.HalfDigit == 0 ? "worked out" : "written"];
            case Reading<T>.Accepted { Value: Place place }:
                return ["reads " + place.GetType().Name];
            case Reading<T>.Accepted:
                return ["reads"];
            case Reading<T>.Refused refused:
                Promise(refused.Text.Length is > 0 and <= LongestMessage, "a message is short");
                Promise(refused.Text == TextSafety.ForTerminal(refused.Text), "a message is harmless");
                Promise(refused.Offset >= 0 && refused.Offset <= text.Length, "a message names a place in the text");
                return _messages.Of(refused.Text);
            default:
                throw new BrokenPromiseException("a reading is accepted or refused");
        }
    }
}
