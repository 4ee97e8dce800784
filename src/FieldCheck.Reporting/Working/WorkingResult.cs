using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Working;

/// <summary>What the supports give, and how the working agrees with the other method.</summary>
internal static class WorkingResult
{
    /// <summary>Of the largest reaction: far above rounding, far below what anyone can measure.</summary>
    private const double Agrees = 1e-9;

    internal static IEnumerable<string> Of(WorkingSheet sheet)
    {
        BeamWords words = new(sheet.Beam);
        for (int i = 0; i < sheet.Beam.Supports.Length; i++)
        {
            yield return $"{sheet.Beam.Supports[i].Label}: {Gives(sheet, words, i)}";
        }

        if (sheet.Working.Reach != HandReach.Whole)
        {
            yield break;
        }

        double largest = 0;
        double off = 0;
        foreach ((HandNumber? hand, double answer, QuantityKind kind) in sheet.Pairs())
        {
            // A moment is measured against forces on the beam's length.
            double scale = kind == QuantityKind.Moment ? sheet.Beam.Model.Length : 1;
            largest = Math.Max(largest, Math.Abs(answer) / scale);
            off = Math.Max(off, Math.Abs((hand?.Value ?? 0) - answer) / scale);
        }

        bool agrees = off <= Agrees * largest;
        yield return agrees
            ? "Second opinion: the stiffness method, which shares nothing with these lines but the beam, gives the same reactions (to a billionth of the largest): they agree."
            : $"Second opinion: the stiffness method DIFFERS by up to {words.Say(off, QuantityKind.Force)}. Do not use either before it is known why.";
    }

    private static string Gives(WorkingSheet sheet, BeamWords words, int index)
    {
        Support support = sheet.Beam.Supports[index].Support;
        Reaction answer = sheet.Answer.Response.Reactions[index];
        if (answer.IsLiftedOff)
        {
            string lets = BeamWords.IsSlack(support, answer) ? "goes slack" : "LIFTS";
            return $"{lets}, and gives nothing{Clear(sheet, words, index)}";
        }

        string slope = answer.Normal is double normal
            ? $" ({words.Say(Math.Abs(normal), QuantityKind.Force)} square to its surface)"
            : "";
        string held = words.IsDown(answer) ? " (must be held down)" : "";
        return string.Join(", ", words.Parts(support, answer)) + slope + held;
    }

    /// <summary>How far the beam stands clear of a support that has let go, by the other method's deflection.</summary>
    private static string Clear(WorkingSheet sheet, BeamWords words, int index)
    {
        BeamResponse response = sheet.Answer.Response;
        Support support = sheet.Beam.Supports[index].Support;
        if (!response.Reactions[index].IsLiftedOff || !response.HasDeflections || support.SurfaceSlope != 0)
        {
            return "";
        }

        double up = support.Settlement - response.At(support.Position).Left.Deflection;
        string side = support.Action == SupportAction.HoldsDownOnly ? "below" : "above";
        return $"; by the deflection of the other method the beam stands {words.MovementSize(up)} {side} it";
    }
}
