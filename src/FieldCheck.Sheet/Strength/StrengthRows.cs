using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Strength;

/// <summary>What a beam is held against, from its sheet: how its spans are held sideways, what it bears by, its limits.</summary>
internal static class StrengthRows
{
    private const string Braced = "braced";

    /// <summary>The beam with all that it is held against.</summary>
    /// <param name="beam">The beam as read; its sticks may be others than those of the sheet.</param>
    /// <param name="document">The sheet, which reads.</param>
    internal static StrengthProblem Of(BuiltBeam beam, BeamDocument document) => new(
        beam.Situations,
        [.. beam.Sticks.Select((stick, span) => new Member(stick.Section, stick.Material, Lateral(document.Spans[span])))],
        [.. beam.Supports.Select(named => Seat(document.Supports[named.Row]))])
    {
        Untied =
        [
            .. Enumerable.Range(0, beam.Supports.Length)
                .Where(index => beam.Supports[index] is { ActsAsWritten: false, Support.Action: SupportAction.Both }),
        ],
        Rules = Rules(document.Limits?.Rules),
        Limits = LimitRows.Of(beam.Model, document),
    };

    /// <summary>The rules of that name.</summary>
    internal static StrengthRules Rules(string? written) => written switch
    {
        "elastic allowable" => StrengthRules.ElasticAllowable,
        "AISC 360-16 ASD" => StrengthRules.Aisc360Asd,
        "AISC 360-16 LRFD" => StrengthRules.Aisc360Lrfd,
        "EN 1993-1-1" => StrengthRules.En1993,
        "NDS" => StrengthRules.Nds,
        "EN 1995-1-1" => StrengthRules.En1995,
        _ => StrengthRules.None,
    };

    internal static LateralSupport? Lateral(SpanEntry span) => span.Unbraced switch
    {
        null => null,
        Braced => new LateralSupport.Braced(),
        string text => Length(text) is double length ? new LateralSupport.Unbraced(length) : null,
    };

    private static Seat Seat(SupportEntry support) => new(
        Length(support.Bearing),
        Pressure(support.BearingAllowable),
        PadArea(support.Pad),
        Pressure(support.AllowablePressure));

    private static double? PadArea(string? text) =>
        text is not null && PadSizeReader.Read(text) is Reading<PadSize>.Accepted { Value: PadSize pad }
            ? pad.First.Value * pad.Second.Value
            : null;

    private static double? Length(string? text) => Row.Number(text, new Wanted.Measure(QuantityKind.Length));

    private static double? Pressure(string? text) => Row.Number(text, new Wanted.Measure(QuantityKind.Pressure));
}
