using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of spans that are held sideways and hog: their bottom is pressed there, and laths on the top hold nothing.</summary>
internal static class BracedFindings
{
    /// <summary>A moment of less than this share of the greatest one is nothing [–].</summary>
    private const double NoMoment = 1e-6;

    internal static IEnumerable<Message> Of(BuiltBeam beam, BeamDocument document, ImmutableArray<Envelope> envelopes)
    {
        int[] hogging = [.. Enumerable.Range(0, beam.Model.Spans.Length).Where(span => Bends(beam, span, envelopes, -1))];
        int[] sagging = [.. hogging.Where(span => Bends(beam, span, envelopes, 1))];
        ImmutableArray<LateralSupport?> held = [.. document.Spans.Select(StrengthRows.Lateral)];
        int[] braced = [.. hogging.Where(span => held[span] is LateralSupport.Braced)];
        int[] between =
            [.. hogging.Where(span => held[span] is LateralSupport.Unbraced one && one.Length < beam.Model.Spans[span].Length)];
        return
        [
            .. Note([.. braced.Intersect(sagging)],
                one => $"Span {one} sags in places and hogs in others: braced means that its bottom is held too where it hogs.",
                all => $"Spans {all} sag in places and hog in others: braced means that their bottom is held too where they hog."),
            .. Note([.. braced.Except(sagging)],
                one => $"Span {one} hogs: braced means that its bottom is held.",
                all => $"Spans {all} hog: braced means that their bottom is held."),
            .. Note([.. between.Intersect(sagging)],
                one => $"Span {one} sags in places and hogs in others: unbraced is taken to hold its bottom too where it hogs.",
                all => $"Spans {all} sag in places and hog in others: unbraced is taken to hold their bottom too where they hog."),
            .. Note([.. between.Except(sagging)],
                one => $"Span {one} hogs: unbraced is taken to hold its bottom.",
                all => $"Spans {all} hog: unbraced is taken to hold their bottom."),
        ];
    }

    /// <summary>True: it sags (1) or hogs (-1) somewhere, beside the greatest moment of the beam.</summary>
    private static bool Bends(BuiltBeam beam, int span, ImmutableArray<Envelope> envelopes, int sense) => envelopes.Any(envelope =>
    {
        ImmutableArray<double> joints = beam.Model.JointPositions;
        GovernedExtremes all = envelope.ExtremesOf(Curve.Moment);
        GovernedExtremes own = envelope.ExtremesOf(Curve.Moment, joints[span], joints[span + 1]);
        double nothing = NoMoment * Math.Max(Math.Abs(all.Max.Value), Math.Abs(all.Min.Value));
        return sense * (sense > 0 ? own.Max : own.Min).Value > nothing;
    });

    private static IEnumerable<Message> Note(int[] spans, Func<int, string> ofOne, Func<string, string> ofMore) => spans switch
    {
        [] => [],
        [int span] => [new(Severity.Note, MessageCodes.BottomNotHeld, ofOne(span + 1))],
        _ => [new(Severity.Note, MessageCodes.BottomNotHeld, ofMore(string.Join(", ", spans.Select(span => span + 1))))],
    };
}
