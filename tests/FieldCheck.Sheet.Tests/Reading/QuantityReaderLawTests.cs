using System.Globalization;
using CsCheck;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Reading;

/// <summary>What holds for every text.</summary>
public sealed class QuantityReaderLawTests
{
    /// <summary>Pieces that the grammar knows and some that it does not: random texts go deep into it.</summary>
    private static readonly string[] Pieces =
    [
        "1", "12", "0", "6", "1/2", "1/3", "3.5", "1e3", "1e400", ".", ",", "1,5", "½", "¾", " ", " ", "  ", "(", ")",
        "+", "-", "−", "*", "×", "·", "/", "±", "+-", "^2", "²", "ft", "in", "'", "\"", "′", "″", "’", "”", "m", "mm",
        "kN", "lbf", "kip-ft", "kN/m", "psf", "%", "ton", "kg", "deg", "furlong", "#", "°", "\0", "\n", "\u202e", "é",
        "\ud83d", "end", "joint 1", "mid", "A", "B_2", "x", "L/", "..",
    ];

    private static readonly Gen<string> Text = Gen.OneOf(
        Gen.String,
        Gen.String["0123456789 .,/+-*()'\"ftinmkN±½e"],
        Gen.OneOf(Pieces).Array[0, 40].Select(string.Concat));

    private static readonly string[] Atoms =
    [
        "12 ft", "12 ft 6 in", "12'-6 1/2\"", "150\"", "5½ in", "1/2 ft", "3.81 m", "2*1.2 m", "(3 m + 250 mm) / 2",
        "6 kNm / 2 kN", "2 * (1 m)", "7ft2in", ".5e1 cm", "(((0 mm)))", "3 m * 50 %",
    ];

    private static readonly Gen<string> Length = Gen.Select(
        Gen.OneOf(Atoms), Gen.OneOf(Atoms), Gen.OneOf("{0}", "{0} + {1}", "({0})-({1})", "2*({0})", "({0} + {1}) / 3"),
        (first, second, form) => string.Format(CultureInfo.InvariantCulture, form, first, second));

    private static readonly QuantityKind[] Kinds = Enum.GetValues<QuantityKind>();

    [Fact]
    public void AnyText_ReadsOrIsRefusedInsideIt() =>
        Gen.Select(Text, Gen.OneOf(Kinds)).Sample(
            (text, kind) => IsSound(text, QuantityReader.Read(text, kind), quantity =>
                double.IsFinite(quantity.Value)
                && double.IsFinite(quantity.HalfDigit) && quantity.HalfDigit >= 0
                && quantity.Spread is null or (>= 0 and < double.PositiveInfinity)
                && quantity.Dimension == Dimension.Of(kind)),
            iter: 4_000);

    [Fact]
    public void AnyText_EveryOtherReaderReadsItOrRefusesInsideIt() =>
        Text.Sample(
            text => IsSound(text, PlaceReader.Read(text), place => place.Spread is null or >= 0)
                && IsSound(text, PlaceReader.ReadOfSupport(text), place => place.Label is null)
                && IsSound(text, LabelReader.Read(text), label => label.Length is > 0 and <= 12)
                && IsSound(text, WholeNumberReader.Read(text, 1, 9), number => number is >= 1 and <= 9)
                && IsSound(text, NumberReader.Read(text), double.IsFinite)
                && IsSound(text, ShareReader.Read(text), double.IsFinite)
                && IsSound(text, DeflectionLimitReader.Read(text), number => number > 0)
                && IsSound(text, PadSizeReader.Read(text), pad => pad.First.Value > 0 && pad.Second.Value > 0)
                && IsSound(text, ToleranceReader.Read(text), tolerance => tolerance is not null)
                && IsSound(text, FreeTextReader.Read(text), kept => kept == text),
            iter: 4_000);

    [Fact]
    public void AnyText_ExpandsToWhatStaysAsItIs() =>
        Text.Sample(
            text =>
            {
                string once = CellShorthand.Expand(text, "ft");
                string place = CellShorthand.ExpandPlace(text, "m");
                LoadText load = CellShorthand.ExpandLoad(text, UnitSystem.Si);
                string pad = CellShorthand.ExpandPad(text, "in");
                return CellShorthand.Expand(once, "ft") == once
                    && CellShorthand.ExpandPlace(place, "m") == place
                    && CellShorthand.ExpandLoad(load.Size, UnitSystem.Si).Size == load.Size
                    && CellShorthand.ExpandPad(pad, "in") == pad;
            },
            iter: 4_000);

    [Fact]
    public void TextThatReads_IsNeverExpanded() =>
        Gen.Select(Length, Gen.OneOf("", " ± 1 in", " +- 10 %")).Sample((length, spread) =>
            QuantityReader.Read(length + spread, QuantityKind.Length) is Reading<Quantity>.Accepted
            && CellShorthand.Expand(length + spread, "ft") == length + spread
            && CellShorthand.ExpandPlace("A + " + length + spread, "m") == "A + " + length + spread);

    // To a sixty-fourth of an inch, which is what a tape shows and less than anyone reads.
    [Fact]
    public void OneLengthInManyUnits_IsOneLength() =>
        Gen.Int[0, 1000 * 12 * 64].Sample(parts =>
        {
            decimal inches = parts / 64m;
            decimal metres = inches * 0.0254m;
            (int feet, int rest) = (parts / 768, parts % 768);
            string[] texts =
            [
                Plain(inches) + " in",
                Plain(metres) + " m",
                Plain(metres * 100) + " cm",
                Plain(metres * 1000) + " mm",
                $"{feet} ft {rest / 64} {rest % 64}/64 in",
                $"{feet}'-{rest / 64} {rest % 64}/64\"",
                $"{feet} ft + {Plain(rest / 64m)} in",
            ];
            double expected = (double)metres;
            return texts.All(text => Math.Abs(Read.Value(text, QuantityKind.Length) - expected) <= 1e-15 * expected);
        });

    [Fact]
    public void DecimalFeet_AreTheSameLength() =>
        Gen.Int[1, 100_000_000].Sample(thousandths =>
        {
            decimal feet = thousandths / 1000m;
            return Read.Value(Plain(feet) + " ft", QuantityKind.Length) == (double)(feet * 0.3048m);
        });

    [Fact]
    public void AnyDouble_ReadsBackToTheLastBit() =>
        Gen.Double.Where(double.IsFinite).Sample(value =>
        {
            string text = Math.Abs(value).ToString("R", CultureInfo.InvariantCulture);
            return value == 0 || Read.Value(text + " m", QuantityKind.Length) == Math.Abs(value);
        });

    [Fact]
    public void MinusBeforeABracket_TurnsTheValue() =>
        Length.Sample(text =>
            Read.Value($"-({text})", QuantityKind.Length) == -Read.Value(text, QuantityKind.Length));

    [Fact]
    public void PlaceOfALength_LiesThere() =>
        Length.Sample(text =>
        {
            Place fromLeft = Read.Accepted(PlaceReader.Read("0 m + " + text));
            Place fromEnd = Read.Accepted(PlaceReader.Read("end - (" + text + ")"));
            double length = Read.Value(text, QuantityKind.Length);
            Dictionary<string, double> none = [];
            return Read.Accepted(fromLeft.Resolve([0, 100], none)) == length
                && Read.Accepted(fromEnd.Resolve([0, 100], none)) == 100 - length;
        });

    [Fact]
    public void MachinesCulture_NeverMatters()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        commas.NumberFormat.NumberGroupSeparator = ".";
        commas.NumberFormat.NegativeSign = "~";
        try
        {
            CultureInfo.CurrentCulture = commas;

            Assert.Equal(1.5, Read.Value("1.5 m", QuantityKind.Length));
            Assert.Equal(-1.5, Read.Value("-1.5 m", QuantityKind.Length));
            Assert.Equal(
                "a comma is not read: 1,5 could be 1.5 or 15, write the one meant",
                Read.Refused(QuantityReader.Read("1,5 m", QuantityKind.Length)).Text);
            Assert.Equal(
                "1.5 ton could be 1.5 t, 3000 lbf (short tons) or 3360 lbf (long tons): write the one meant",
                Read.Refused(QuantityReader.Read("1.5 ton", QuantityKind.Force)).Text);
            Assert.Equal("-1234.50 kN", new DisplayUnits(UnitSystem.Si).Say(-1234500, QuantityKind.Force));
            Assert.Equal("12'-6 1/2\"", FeetAndInches.Write(3.8227));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static bool IsSound<T>(string text, Reading<T> reading, Func<T, bool> isSound) => reading switch
    {
        Reading<T>.Accepted accepted => isSound(accepted.Value),
        Reading<T>.Refused refused => refused.Offset >= 0 && refused.Offset <= text.Length
            && refused.Text.Length > 0 && refused.Text == TextSafety.ForTerminal(refused.Text),
        _ => false,
    };

    private static string Plain(decimal value) => value.ToString(CultureInfo.InvariantCulture);
}
