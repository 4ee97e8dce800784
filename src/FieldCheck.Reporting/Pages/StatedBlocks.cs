using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Pages;

/// <summary>What a supplier states beside what was computed, and what would explain a difference.</summary>
internal static class StatedBlocks
{
    internal static IEnumerable<RecordBlock> Of(Calculation calculation, BuiltBeam beam)
    {
        if (calculation.Stated.IsEmpty)
        {
            return [];
        }

        BeamWords words = new(beam);
        StatedWords stated = new(words);
        ImmutableArray<string> balances =
            [.. calculation.StatedBalances.SelectMany(balance => BalanceWords.Of(words, balance))];
        return
        [
            new RecordBlock.Heading(2, "Stated figures"),
            new RecordBlock.Table(
                "Stated figures beside the computed ones",
                [new("figure"), new("verdict"), new("stated"), new("beside it"), new("source")],
                [
                    .. calculation.Stated.Select(figure => Row(beam, stated, figure)),
                    .. calculation.Unstated.Select(one => (ImmutableArray<string>)
                    [
                        $"{one.Label} {one.Component.Name}", "not stated", "", string.Join("; ", stated.Beside(one)), "",
                    ]),
                ]),
            .. balances.IsEmpty ? Array.Empty<RecordBlock>() : [new RecordBlock.Sentences(balances)],
            .. RecordBuilder.Sentences("Why they may differ", [.. ExplanationLines.Of(calculation, beam)], level: 3),
        ];
    }

    private static ImmutableArray<string> Row(BuiltBeam beam, StatedWords words, StatedFigure figure) =>
    [
        StatedWords.Name(figure),
        VerdictWords.WithSide(figure),
        words.Stated(figure),
        figure.Comparison is ReactionComparison compared
            ? string.Join("; ", words.Beside(figure, compared))
            : TypedLetters.Sentence(beam, figure.Reason),
        TypedLetters.Name(beam, figure.Entry.Source),
    ];
}
