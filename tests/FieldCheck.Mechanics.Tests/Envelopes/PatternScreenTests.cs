using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Which patterns could matter, against the answers to all of them, each by a solve of its own.</summary>
public sealed class PatternScreenTests
{
    /// <summary>Some answers are known; a pattern matters where its answer is more or less than all of these somewhere.</summary>
    [Theory]
    [InlineData("plain")]
    [InlineData("settled")]
    [InlineData("spring")]
    [InlineData("hinged")]
    public void Pattern_MattersWhereItsAnswerIsMoreOrLess(string kind)
    {
        EnvelopeProblem problem = kind switch
        {
            "plain" => LiftedBeams.Continuous(),
            "settled" => LiftedBeams.Continuous(settlement: 0.7),
            "spring" => LiftedBeams.Continuous(isOnSpring: true, factor: 1e4),
            _ => LiftedBeams.Hinged(),
        };
        Superposition sum = LiftedBeams.Sum(problem);
        BeamResponse[] answers = LiftedBeams.Answers(sum);
        (double Most, double Least)[][] figures = [.. answers.Select(answer => FiguresOf(sum, [answer]))];
        double[] sizes = SizesOf(sum, FiguresOf(sum, answers));
        Random random = new(5);
        int mattered = 0;
        for (int round = 0; round < 25; round++)
        {
            int[] known = [.. Enumerable.Range(0, answers.Length).Where(_ => random.Next(round % 6 + 1) == 0).Append(round % answers.Length)];
            LiftedRecords records = RecordsOf(sum, known.Select(i => answers[i]));
            (double Most, double Least)[] so = FiguresOf(sum, known.Select(i => answers[i]));
            PatternScreen screen = Screen(sum, records);
            for (int pattern = 0; pattern < answers.Length; pattern++)
            {
                bool isMore = figures[pattern].Where((one, i) =>
                    one.Most > so[i].Most + 1e-9 * sizes[i] || one.Least < so[i].Least - 1e-9 * sizes[i]).Any();

                Assert.Equal(isMore, screen.CouldMatter(pattern));
                mattered += isMore ? 1 : 0;
                for (int i = 0; i < problem.Model.Supports.Length; i++)
                {
                    bool letsGo = answers[pattern].Reactions[i].IsLiftedOff;
                    Assert.Equal(letsGo, problem.Model.Supports[i].Action != SupportAction.Both && screen.LetsGo(i));
                }
            }
        }

        Assert.InRange(mattered, 25, 24 * answers.Length);
    }

    /// <summary>Nothing known: all could matter.</summary>
    [Fact]
    public void WithoutRecords_EveryPatternMatters()
    {
        Superposition sum = LiftedBeams.Sum(LiftedBeams.Continuous());
        PatternScreen screen = Screen(sum, RecordsOf(sum, []));

        Assert.All(Enumerable.Range(0, 16), pattern => Assert.True(screen.CouldMatter(pattern)));
    }

    private static PatternScreen Screen(Superposition sum, LiftedRecords records) => new(
        sum, 0, new SituationTrials(sum, 0).Optional, RaisedRests.Of(sum, new BeamSolver())!, records);

    private static LiftedRecords RecordsOf(Superposition sum, IEnumerable<BeamResponse> answers)
    {
        LiftedRecords records = new(sum.Problem, sum.Imposed);
        foreach (BeamResponse answer in answers)
        {
            records.Take(answer);
        }

        return records;
    }

    private static (double Most, double Least)[] FiguresOf(Superposition sum, IEnumerable<BeamResponse> answers)
    {
        LiftedRecords records = RecordsOf(sum, answers);
        return [.. Enumerable.Range(0, CountOf(sum, records)).Select(i => (records.Most(i), records.Least(i)))];
    }

    /// <summary>How large the figures of each kind are.</summary>
    private static double[] SizesOf(Superposition sum, (double Most, double Least)[] all)
    {
        LiftedRecords records = RecordsOf(sum, []);
        int reactions = records.ElementFigure(0, 0);
        int elements = records.ElementFigure(1, 0) - reactions;
        int places = LiftedRecords.Stations * sum.Imposed.Length + 1;
        int[] kinds =
        [
            .. Enumerable.Range(0, reactions).Select(i => i % 3),
            .. Enumerable.Range(0, 4 * elements).Select(i => 3 + i / elements),
            .. Enumerable.Range(0, 4 * places).Select(i => 3 + i / places),
        ];
        double[] sizes = [.. Enumerable.Range(0, 7).Select(kind =>
            all.Where((_, i) => kinds[i] == kind).Max(one => Math.Max(one.Most, -one.Least)))];
        return [.. kinds.Select(kind => sizes[kind])];
    }

    private static int CountOf(Superposition sum, LiftedRecords records) =>
        records.PlaceFigure(Envelope.Curves.Length - 1, LiftedRecords.Stations * sum.Imposed.Length) + 1;
}
