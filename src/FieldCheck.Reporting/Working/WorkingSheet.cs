using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Working;

/// <summary>One working beside the answer that it is compared with.</summary>
/// <remarks>
/// Every number is worked out from the written ones before it, with as few decimals beyond those of the results as let
/// the results come out as every other view shows them and let every sum close.
/// </remarks>
/// <param name="Calculation">The beam and what follows from it.</param>
/// <param name="Beam">The beam.</param>
/// <param name="Answer">The combination and the solver's answer.</param>
/// <param name="Working">The working.</param>
internal sealed record WorkingSheet(
    Calculation Calculation, BuiltBeam Beam, CombinationResponse Answer, HandWorking Working)
{
    private const int LeastGuard = 2;
    private const int MostGuard = 9;

    /// <summary>The page, with as few decimals as let everything come out.</summary>
    internal ImmutableArray<WorkingLine> Lines(WorkingRequest request)
    {
        WorkingPage page = new(request);
        page.Tell(VariedWords.OfWorking(Beam, Answer.Combination));
        if (WithFactors() is string factors)
        {
            page.Say(factors);
        }

        Write(page, Working, WordsThatComeOut(), () => WorkingResult.Of(this));
        return page.Lines;
    }

    private WorkingWords WordsThatComeOut()
    {
        WorkingWords words = WordsWith(LeastGuard);
        for (int guard = LeastGuard + 1; guard <= MostGuard && !ComesOut(words); guard++)
        {
            words = WordsWith(guard);
        }

        return words;
    }

    /// <summary>
    /// True: with these figures every reaction and peak is the one that the other views show, and every sum closes.
    /// </summary>
    private bool ComesOut(WorkingWords words)
    {
        CarriedNumbers numbers = words.Numbers;
        WorkingFigures written = new(words);
        return Working.Lines.OfType<HandLine.Closes>().All(written.IsClosed)
            && Pairs().All(pair => pair.Hand is null
                || Beam.Display.Number(numbers.InSi(pair.Hand), pair.Kind) == Beam.Display.Number(pair.Answer, pair.Kind))
            && Working.Lines.OfType<HandLine.Marks>().All(marks => ComeOut(marks.All, numbers));
    }

    private bool ComeOut(ImmutableArray<HandMark> marks, CarriedNumbers numbers)
    {
        HandNumber[] shears = [.. marks.SelectMany(mark => new[] { mark.ShearLeft, mark.ShearRight })];
        HandNumber[] moments = [.. marks.SelectMany(mark => new[] { mark.MomentLeft, mark.MomentRight })];
        return ComeOut(shears, Answer.Response.ExtremesOf(Curve.Shear), QuantityKind.Force, numbers)
            && ComeOut(moments, Answer.Response.ExtremesOf(Curve.Moment), QuantityKind.Moment, numbers);
    }

    private bool ComeOut(HandNumber[] values, Extremes extremes, QuantityKind kind, CarriedNumbers numbers) =>
        Beam.Display.Number(values.Max(numbers.InSi), kind) == Beam.Display.Number(extremes.Max.Value, kind)
        && Beam.Display.Number(values.Min(numbers.InSi), kind) == Beam.Display.Number(extremes.Min.Value, kind);

    /// <summary>The count and the points that moments are about stay in the short form: they say which method it is.</summary>
    private static void Say(WorkingPage page, WorkingWords words, HandRemark remark)
    {
        if (remark is HandRemark.Count or HandRemark.MomentsAbout or HandRemark.VerticalSum or HandRemark.ThreeMomentRow
            or HandRemark.OutOfReach or HandRemark.LetsGo or HandRemark.LoadIs)
        {
            page.Tell(words.Remark(remark));
        }
        else
        {
            page.Say(words.Remark(remark));
        }
    }

    private string? WithFactors()
    {
        ImmutableArray<double> factors = Answer.Combination.Factors;
        if (factors.All(factor => factor is 0 or 1))
        {
            return null;
        }

        string terms = string.Concat(Beam.Model.Cases.Zip(factors)
            .Where(pair => pair.Second != 0)
            .Select((pair, i) => $"{Sign(pair.Second, i == 0)}"
                + $"{Beam.Display.Number(Math.Abs(pair.Second), QuantityKind.Number)} {TypedLetters.Name(Beam, pair.First.Name)}"));
        return $"Combination {TypedLetters.Name(Beam, Answer.Combination.Name)}: {terms}. Every load times its factor.";
    }

    private static string Sign(double factor, bool isFirst) => (isFirst, factor < 0) switch
    {
        (true, true) => "-",
        (true, false) => "",
        (false, true) => " - ",
        _ => " + ",
    };

    /// <summary>Writes a working that came to no reactions.</summary>
    internal static void Write(WorkingPage page, Calculation calculation, BuiltBeam beam, HandWorking working)
    {
        Write(page, working, WordsWith(calculation, beam, LeastGuard), () => []);
    }

    private static void Write(
        WorkingPage page, HandWorking working, WorkingWords words, Func<IEnumerable<string>> results)
    {
        WorkingFigures written = new(words);
        page.Tell(words.Conventions());
        HashSet<HandStep> opened = [];
        foreach (HandLine line in working.Lines)
        {
            switch (line)
            {
                case HandLine.Begins begins:
                    page.Step(words.Step(begins.Title));
                    page.Say(opened.Add(begins.Title) ? words.Opening(begins.Title) : []);
                    break;
                case HandLine.Says { What: HandRemark.Reactions }:
                    page.Results(results());
                    break;
                case HandLine.Says says:
                    Say(page, words, says.What);
                    break;
                case HandLine.Marks marks:
                    MarkTable table = new(words, marks.All);
                    page.Rows(table.Rows, table.Sentences);
                    page.Results(table.Greatest);
                    break;
                default:
                    page.Figures(written.Of(line));
                    break;
            }
        }
    }

    /// <summary>Each reaction found by hand with the solver's.</summary>
    internal IEnumerable<(HandNumber? Hand, double Answer, QuantityKind Kind)> Pairs()
    {
        for (int i = 0; i < Working.Reactions.Length; i++)
        {
            HandReaction hand = Working.Reactions[i];
            Reaction answer = Answer.Response.Reactions[i];
            yield return (hand.Horizontal, answer.Horizontal, QuantityKind.Force);
            yield return (hand.Vertical, answer.Vertical, QuantityKind.Force);
            yield return (hand.Couple, answer.Moment, QuantityKind.Moment);
        }
    }

    private WorkingWords WordsWith(int guard) => WordsWith(Calculation, Beam, guard);

    private static WorkingWords WordsWith(Calculation calculation, BuiltBeam beam, int guard) => new(
            beam,
            new WorkingNames(beam),
            new CarriedNumbers(new HandFigures(beam.Display.System, guard)),
            new PlacesTyped(calculation.Document, beam));
}
