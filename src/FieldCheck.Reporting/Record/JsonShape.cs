using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace FieldCheck.Reporting.Record;

// The shape of `check --json`, in the order of its keys. docs/command-line.md describes it; keys may be added, never
// changed. Numbers are SI; one that is not finite is null.

internal sealed record JsonCheck(
    int Format,
    string File,
    string Title,
    double? LengthM,
    int DegreeOfIndeterminacy,
    int? DegreeAlong,
    int? DegreeAcross,
    ImmutableArray<JsonCombination> Combinations,
    ImmutableArray<JsonEnvelope> Envelopes,
    ImmutableArray<JsonStated> Stated,
    ImmutableArray<JsonExplanation> Explanations,
    ImmutableArray<JsonSectionCheck> Checks,
    ImmutableArray<JsonMessage> Messages,
    ImmutableArray<JsonStatedBalance> StatedBalances,
    bool EverySlipTried);

internal sealed record JsonCombination(
    string Name,
    string Basis,
    ImmutableArray<JsonReaction> Reactions,
    JsonCurves<JsonExtremes> Extremes,
    ImmutableArray<JsonPlace> At,
    double? EquilibriumResidual,
    JsonCombinationBands? Bands);

internal sealed record JsonCombinationBands(
    ImmutableArray<JsonReactionBand> Reactions, JsonPeakCurves Extremes, bool IsWhole);

internal sealed record JsonReactionBand(
    string Support,
    string Component,
    string Unit,
    double? Low,
    double? High,
    string Certainty,
    ImmutableArray<JsonInputEffect> Inputs);

internal sealed record JsonInputEffect(
    string Key, string PlusOrMinus, string Text, double? Down, double? Up);

internal sealed record JsonPeakCurves(
    [property: JsonPropertyName("shear_N")] JsonPeakBand Shear,
    [property: JsonPropertyName("moment_Nm")] JsonPeakBand Moment,
    [property: JsonPropertyName("deflection_m")] JsonPeakBand? Deflection);

internal sealed record JsonPeakBand(
    double? MaxLow, double? MaxHigh, string MaxCertainty, double? MinLow, double? MinHigh, string MinCertainty);

internal sealed record JsonReaction(
    string Support,
    int? Joint,
    [property: JsonPropertyName("x_m")] double? X,
    [property: JsonPropertyName("horizontal_N")] double? Horizontal,
    [property: JsonPropertyName("vertical_N")] double? Vertical,
    [property: JsonPropertyName("moment_Nm")] double? Moment,
    [property: JsonPropertyName("normal_N")] double? Normal,
    bool LiftedOff);

internal sealed record JsonCurves<T>(
    [property: JsonPropertyName("axial_N")] T Axial,
    [property: JsonPropertyName("shear_N")] T Shear,
    [property: JsonPropertyName("moment_Nm")] T Moment,
    [property: JsonPropertyName("deflection_m")] T? Deflection)
    where T : class;

internal sealed record JsonExtremes(
    double? Max,
    [property: JsonPropertyName("max_x_m")] double? MaxX,
    double? Min,
    [property: JsonPropertyName("min_x_m")] double? MinX);

internal sealed record JsonPlace(
    [property: JsonPropertyName("x_m")] double? X,
    [property: JsonPropertyName("axial_left_N")] double? AxialLeft,
    [property: JsonPropertyName("axial_right_N")] double? AxialRight,
    [property: JsonPropertyName("shear_left_N")] double? ShearLeft,
    [property: JsonPropertyName("shear_right_N")] double? ShearRight,
    [property: JsonPropertyName("moment_left_Nm")] double? MomentLeft,
    [property: JsonPropertyName("moment_right_Nm")] double? MomentRight,
    double? SlopeLeftRad,
    double? SlopeRightRad,
    double? DeflectionM,
    string Place);

internal sealed record JsonEnvelope(
    string Basis,
    ImmutableArray<JsonReactionEnvelope> Reactions,
    JsonCurves<JsonGovernedExtremes> Extremes);

internal sealed record JsonReactionEnvelope(
    string Support,
    string Component,
    string Unit,
    double? Max,
    JsonGoverns MaxGoverns,
    double? Min,
    JsonGoverns MinGoverns,
    string Certainty);

internal sealed record JsonGovernedExtremes(
    double? Max,
    [property: JsonPropertyName("max_x_m")] double? MaxX,
    JsonGoverns MaxGoverns,
    double? Min,
    [property: JsonPropertyName("min_x_m")] double? MinX,
    JsonGoverns MinGoverns,
    string Certainty);

// What does not apply is left out.
internal sealed record JsonGoverns(
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Combination,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] ImmutableArray<int>? Pattern,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] ImmutableArray<string>? PatternOverhangs,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    IReadOnlyDictionary<string, ImmutableArray<int>>? Patterns,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    IReadOnlyDictionary<string, ImmutableArray<string>>? PatternsOverhangs,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Rolling,
    [property: JsonPropertyName("rolling_x_m"), JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    double? RollingX,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] bool? RollingReversed);

internal sealed record JsonStated(
    string Support,
    string Component,
    string? Combination,
    string Basis,
    string Unit,
    double? Stated,
    double? Computed,
    double? Difference,
    double? DifferenceRatio,
    double? Allowed,
    double? BandLow,
    double? BandHigh,
    string Verdict,
    string Reason,
    string? Case,
    string? Extreme,
    string Text,
    string? Source,
    JsonGoverns? Governs,
    double? PlusOrMinus,
    string? BandCertainty);

internal sealed record JsonStatedBalance(
    string? Combination,
    string? Case,
    string Basis,
    string? Source,
    bool Closes,
    [property: JsonPropertyName("forces_N")] JsonBalanceSide Forces,
    string AboutSupport,
    [property: JsonPropertyName("about_x_m")] double? AboutX,
    [property: JsonPropertyName("moments_Nm")] JsonBalanceSide? Moments,
    JsonBalancingLoad? LackingLoad);

internal sealed record JsonBalanceSide(
    double? Stated, double? Loads, double? Difference, double? Allowed, bool Closes);

internal sealed record JsonBalancingLoad(
    [property: JsonPropertyName("down_N")] double? Down,
    [property: JsonPropertyName("x_m")] double? X,
    [property: JsonPropertyName("from_x_m")] double? FromX,
    [property: JsonPropertyName("to_x_m")] double? ToX);

internal sealed record JsonExplanation(
    string Kind,
    string Text,
    ImmutableArray<double> Predicted,
    ImmutableArray<string> TiedWith,
    double? FalseClaimRate,
    bool IsFitted,
    ImmutableArray<int> Stated,
    double? WorstResidual);

internal sealed record JsonSectionCheck(
    string What,
    int? Span,
    int? Bay,
    [property: JsonPropertyName("x_m")] double? X,
    string? Combination,
    string Basis,
    double? Demand,
    double? Limit,
    string Unit,
    double? Utilisation,
    string Verdict,
    string Source,
    string? Overhang,
    string? Support,
    string? Case,
    JsonGoverns? Governs,
    string Reason,
    string Certainty,
    ImmutableArray<JsonTerm> Terms,
    ImmutableArray<JsonFactor> Factors,
    int? ToBay,
    string DemandFormula,
    string LimitFormula);

internal sealed record JsonTerm(string Symbol, string Words, double? Value, string Unit, string Formula);

internal sealed record JsonFactor(string Symbol, string Words, double? Value);

internal sealed record JsonMessage(string Severity, string Code, string Text);

internal sealed record JsonRefusal(int Format, string File, JsonError Error);

internal sealed record JsonError(
    string Kind, ImmutableArray<JsonProblem> Messages, ImmutableArray<JsonMotion>? Motions);

internal sealed record JsonProblem(int? Line, int? Column, string Key, string Text);

internal sealed record JsonMotion(bool SlidesAlong, ImmutableArray<JsonMovingPart> Parts);

internal sealed record JsonMovingPart(double? FromM, double? ToM, double? CentreM);
