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
            .. Notes(braced, sagging, whose => $"braced means that {whose} bottom is held"),
            .. Notes(between, sagging, whose => $"unbraced is taken to hold {whose} bottom"),
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

    private static IEnumerable<Message> Notes(int[] held, int[] sagging, Func<string, string> means) =>
    [
        .. Note([.. held.Intersect(sagging)],
            one => $"Span {one} sags in places and hogs in others: {means("its")} too where it hogs.",
            all => $"Spans {all} sag in places and hog in others: {means("their")} too where they hog."),
        .. Note([.. held.Except(sagging)], one => $"Span {one} hogs: {means("its")}.", all => $"Spans {all} hog: {means("their")}."),
    ];

    private static IEnumerable<Message> Note(int[] spans, Func<int, string> ofOne, Func<string, string> ofMore) => spans switch
    {
        [] => [],
        [int span] => [new(Severity.Note, MessageCodes.BottomNotHeld, ofOne(span + 1))],
        _ => [new(Severity.Note, MessageCodes.BottomNotHeld, ofMore(string.Join(", ", spans.Select(span => span + 1))))],
    };
}
