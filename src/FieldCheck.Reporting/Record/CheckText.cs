using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Tables;
using FieldCheck.Reporting.Working;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Record;

/// <summary>The whole check as text: what one would pin to a wall. Plain ASCII, but for what the heading has from the file.</summary>
public static class CheckText
{
    private const int PlotRows = 9;

    /// <summary>Up to so many combinations are all drawn.</summary>
    private const int MostDrawn = 4;

    /// <summary>The check of one beam.</summary>
    /// <param name="calculation">What came of it.</param>
    /// <param name="request">What to show.</param>
    /// <returns>Lines, none longer than the width asked for.</returns>
    public static ImmutableArray<string> Lines(Calculation calculation, CheckRequest request)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(request);
        int width = request.Width;
        IEnumerable<string> result = calculation is { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome }
            ?
            [
                .. Section("INPUT AS READ", [.. InputLines.Of(calculation), .. StickLines.AsRead(calculation.Document, beam)], width),
                .. Section("STATICS", [DeterminacyWords.Of(outcome)], width),
                .. Answers(calculation, beam, outcome, request),
                .. EnvelopePanel.Lines(calculation, width) is { IsEmpty: false } lines ? lines.Prepend("") : [],
                .. Section("HOW WELL IT IS KNOWN", BandWords.Of(calculation), width),
                .. calculation.Stated.IsEmpty
                    ? (string[])[]
                    : ["", "STATED FIGURES", .. StatedTable.Lines(calculation, beam, width)],
                .. Section("WHY THEY MAY DIFFER", [.. ExplanationLines.Of(calculation, beam)], width),
                .. CheckTable.Lines(calculation, beam, width) is { IsEmpty: false } checks
                    ? ["", "CHECKS", .. checks]
                    : (string[])[],
            ]
            : Section("TO MEND", ProblemLines.Of(calculation), width);
        return
        [
            .. CheckHeading.Lines(calculation, request).SelectMany(line => TextFlow.Wrap(line, width, indent: 2)),
            .. result,
            .. Section("REMARKS", MessageLines.Of(calculation), width),
            .. Section("BEFORE YOU USE THESE FIGURES", Cautions.For(calculation), width),
            .. request.HasWorking ? (string[])["", "WORKING BY HAND", .. Working(calculation, width)] : [],
        ];
    }

    private static IEnumerable<string> Section(string title, IReadOnlyCollection<string> lines, int width) =>
        lines.Count == 0 ? [] : ["", title, .. lines.SelectMany(line => Row(line, width))];

    private static IEnumerable<string> Working(Calculation calculation, int width) =>
        PrintedWorking.Pages(calculation, null, new WorkingRequest(width)).Select(line => line.Text);

    private static IEnumerable<string> Row(string line, int width) =>
        TextFlow.Wrap(line, width - 2, indent: 4).Select(part => "  " + part);

    private static IEnumerable<string> Answers(
        Calculation calculation, BuiltBeam beam, BeamOutcome outcome, CheckRequest request) =>
        outcome is BeamOutcome.Stands stands
            ? stands.Combinations.SelectMany((answer, index) =>
                Answer(beam, answer, request, IsDrawn(calculation, beam, index)))
            : ["", .. BeamSketch.Draw(calculation, 0, request.Width, new SketchStyle())];

    /// <summary>Of many combinations only those that govern something are drawn.</summary>
    internal static bool IsDrawn(Calculation calculation, BuiltBeam beam, int combination) =>
        beam.Model.Combinations.Length <= MostDrawn
        || calculation.Envelopes.Any(envelope => EnvelopeTable.Governs(envelope, beam, combination));

    private static IEnumerable<string> Answer(
        BuiltBeam beam, CombinationResponse answer, CheckRequest request, bool isDrawn)
    {
        string basis = BasisWords.Of(answer.Combination.Basis);
        string title = $"UNDER {PlainAscii.Of(answer.Combination.Name)} ({Cautions.Basis(basis)})";
        BeamWords words = new(beam);
        ImmutableArray<string> asked =
            [.. request.At.Select(place => AskedWords.Sentence(beam, answer.Response, place))];
        return
        [
            "",
            .. TextFlow.Wrap(title, request.Width, indent: 2),
            .. VariedWords.Warning(beam, answer.Combination).SelectMany(line => Row(line, request.Width)),
            "",
            .. isDrawn ? [.. BeamSketch.Draw(beam, answer, request.Width, new SketchStyle()), ""] : Array.Empty<string>(),
            "Reactions",
            .. ReactionTable.Lines(beam, answer.Response, request.Width),
            .. ProofLines.Of(words, answer.Response.Proof).SelectMany(line => Row(line, request.Width)),
            "",
            "Peaks",
            .. PeakTable.Lines(beam, answer.Response, request.Width),
            .. Section("Places asked for", asked, request.Width),
            .. isDrawn
                ? PeakTable.Curves(beam).SelectMany(curve => Plot(beam, answer.Response, curve, request.Width))
                : TextFlow.Wrap("Not drawn: it governs nothing over all, see the envelope.", request.Width, indent: 2),
        ];
    }

    private static IEnumerable<string> Plot(BuiltBeam beam, BeamResponse response, Curve curve, int width)
    {
        PlotCurve plot = PlotCurve.Of(beam, response, curve);
        bool isLeftOut = curve is Curve.Axial && plot.Peaks.All(peak => Math.Abs(peak.Value) <= plot.Negligible);
        return isLeftOut
            ? []
            :
            [
                "",
                .. TextFlow.Wrap(plot.Heading, width, indent: 2),
                .. DiagramPlot.Draw(plot, width, PlotRows, new PlotStyle()),
                .. DiagramPlot.PeakLines(plot, width),
            ];
    }
}
