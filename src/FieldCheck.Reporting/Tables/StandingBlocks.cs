using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>The blocks of the results panel: of a beam that stands, and remarks of any.</summary>
internal static class StandingBlocks
{
    private const int WideFrom = 50;

    // Order in which blocks are given room, from the most telling on. Where the reactions do not all fit anyway, two
    // rows are kept for moment and shear.
    private const int ReactionRank = 0;
    private const int FaultRank = 1;
    private const int MomentRank = 2;
    private const int ShearRank = 3;
    private const int FurtherReactionRank = 4;
    private const int SumRank = 5;
    private const int DeflectionRank = 6;
    private const int AxialRank = 7;
    private const int CautionRank = 8;
    private const int StatedRowRank = 9;
    private const int CheckRowRank = 10;
    private const int SecondRank = 10;
    private const int KnownRank = 17;
    private const int MattersRank = 18;
    private const int KnownPeaksRank = 19;
    private const int NoteRank = 20;
    private static readonly ImmutableArray<string> KnownHeading = ["HOW WELL IT IS KNOWN"];

    /// <summary>What the header says where there is no room for the sentence.</summary>
    private const string MayTip = "MAY TIP";

    private const int OtherRows = 4;
    private const int HeaderAndCount = 2;

    internal static ImmutableArray<PanelBlock> Of(
        Calculation calculation, BuiltBeam beam, int combination, BeamResponse response, int width, int height)
    {
        BeamWords words = new(beam);
        return
        [
            .. Reactions(words, response, width, height),
            .. Varied(calculation, words, combination, width),
            Sum(words, response.Proof, width),
            .. Stated(calculation, width),
            .. Section(calculation, width),
            .. PeakTable.Curves(beam)
                .Select(curve => PeakRow.Of(beam, response, curve))
                .Where(row => !row.IsNothing)
                .SelectMany(row => Peaks(row, width)),
            .. StatedRows(calculation, beam, width),
            .. CheckRows(calculation, beam, width),
            .. Known(calculation, combination, width),
            .. Remarks(calculation, width),
        ];
    }

    /// <summary>What must be said beside the figures, gravest first.</summary>
    internal static IEnumerable<PanelBlock> Remarks(Calculation calculation, int width) =>
        MessageLines.InOrder(calculation)
            .Where(message => message.Code is not (MessageCodes.StatedLow or MessageCodes.StatedHigh or MessageCodes.Over))
            .Select(message => PanelBlock.Wrapped(PlainAscii.Of(message.Text), width, RankOf(message)) with
            {
                Brief = message.Code == MessageCodes.TipsWithin ? MayTip : null,
            });

    private static IEnumerable<PanelBlock> Reactions(
        BeamWords words, BeamResponse response, int width, int height)
    {
        ImmutableArray<NamedSupport> supports = words.Beam.Supports;
        bool allFit = supports.Length <= height - HeaderAndCount;
        int names = supports.Max(support => (int?)support.Label.Length) ?? 0;
        ImmutableArray<ImmutableArray<string>> parts = ReactionTable.AlignedParts(words, response);
        return supports.Select((support, i) => new PanelBlock(
            TextFlow.Join(
                [
                    $"{support.Label.PadRight(names)}  {parts[i][0]}",
                    .. parts[i].Skip(1),
                    .. ReactionTable.Remarks(words, support, response.Reactions[i]),
                ],
                "  ",
                width,
                indent: 4),
            allFit || i < height - OtherRows ? ReactionRank : FurtherReactionRank));
    }

    private static IEnumerable<PanelBlock> Varied(Calculation calculation, BeamWords words, int combination, int width) =>
        VariedWords.InShort(calculation, words, words.Beam.Model.Combinations[combination]) is { IsEmpty: false } said
            ? [new PanelBlock(TextFlow.Join(said, "  ", width, indent: 4), FaultRank, VariedWords.NotTheWorst)]
            : [];

    private static PanelBlock Sum(BeamWords words, EquilibriumProof proof, int width) => new(
        TextFlow.Join([ProofLines.Across(words, proof, "sum"), ProofLines.Verdict(proof)], "  ", width, indent: 4),
        SumRank);

    private static IEnumerable<PanelBlock> Stated(Calculation calculation, int width) => calculation.Stated.IsEmpty
        ? []
        :
        [
            new PanelBlock(
                TextFlow.Wrap(
                    $"Stated: {StatedWords.InShort(calculation.Stated, calculation.Unstated)}", width, indent: 4),
                FaultRank),
        ];

    private static IEnumerable<PanelBlock> Section(Calculation calculation, int width) =>
        CheckPanel.InShort(calculation) is string verdict
            ? [new PanelBlock(TextFlow.Wrap($"Section: {verdict}", width, indent: 4), FaultRank)]
            : [];

    /// <summary>What the short line sums up; this also says all that a remark on a stated figure would.</summary>
    private static IEnumerable<PanelBlock> StatedRows(Calculation calculation, BuiltBeam beam, int width) =>
        calculation.Stated.IsEmpty
            ? []
            : [new PanelBlock(StatedTable.Lines(calculation, beam, width), StatedRowRank)];

    private static IEnumerable<PanelBlock> CheckRows(Calculation calculation, BuiltBeam beam, int width) =>
        CheckTable.Lines(calculation, beam, width) is { IsEmpty: false } lines
            ? [new PanelBlock(["CHECKS", .. lines], CheckRowRank)]
            : [];

    /// <summary>How well it is known, where something is known only to plus or minus.</summary>
    private static IEnumerable<PanelBlock> Known(Calculation calculation, int combination, int width)
    {
        if (BandWords.TooMuchFor(calculation) is string tooMuch)
        {
            return [Wrapped(KnownHeading, [tooMuch], KnownRank)];
        }

        if (BandWords.For(calculation, isSpoken: false) is not BandWords words)
        {
            return [];
        }

        ImmutableArray<string> reactions = words.Reactions(combination);
        return
        [
            Wrapped(KnownHeading, [.. words.LeavesOut(combination), .. reactions, .. BandWords.Meanings(reactions)], KnownRank),
            Wrapped([], words.Peaks(combination), KnownPeaksRank),
            Wrapped([], words.Matters(combination), MattersRank),
        ];

        PanelBlock Wrapped(ImmutableArray<string> heading, ImmutableArray<string> lines, int rank) => new(
            [.. heading, .. lines.SelectMany(line => TextFlow.Wrap(line, width - 2, indent: 4)).Select(line => "  " + line)],
            rank);
    }

    /// <summary>Both values on one line where there is room; in a narrow panel of the shear only the larger.</summary>
    private static IEnumerable<PanelBlock> Peaks(PeakRow row, int width)
    {
        bool isWide = width >= WideFrom;
        string name = isWide ? row.Name.PadRight("axial force".Length) : Letter(row.Curve);
        IEnumerable<string> items = row.Items.Select(item => item + Sense(row.Curve, item));
        IEnumerable<string> shown = row.Curve is Curve.Shear && !isWide ? items.Take(1) : items;
        string one = $"{name}  {string.Join("   ", shown)}";
        return one.Length <= width
            ? [new PanelBlock([one.TrimEnd()], RankOf(row.Curve))]
            : shown.Select((item, i) => new PanelBlock(
                TextFlow.Join([$"{name}  {item}"], " ", width, indent: 3), RankOf(row.Curve) + SecondRank * i));
    }

    private static string Letter(Curve curve) => curve switch
    {
        Curve.Axial => "N",
        Curve.Shear => "V",
        Curve.Moment => "M",
        _ => "d",
    };

    private static string Sense(Curve curve, string item) =>
        curve is not Curve.Moment ? "" : item[0] == '+' ? " sag" : " hog";

    private static int RankOf(Message message) => message.Severity switch
    {
        Severity.Fault => FaultRank,
        Severity.Caution => message.Code == MessageCodes.TipsWithin ? FaultRank : CautionRank,
        _ => NoteRank,
    };

    private static int RankOf(Curve curve) => curve switch
    {
        Curve.Moment => MomentRank,
        Curve.Shear => ShearRank,
        Curve.Deflection => DeflectionRank,
        _ => AxialRank,
    };
}
