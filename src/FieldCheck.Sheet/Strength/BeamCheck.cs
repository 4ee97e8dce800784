using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Strength;

/// <summary>One thing that the beam is held against, with the words for it.</summary>
/// <param name="Figures">Demand, limit and verdict.</param>
/// <param name="What">What it is about, as "bending of span 2" or "deflection of the overhang".</param>
/// <param name="Where">Where the demand stands, as "x = 4.17 ft"; empty where that is not known.</param>
/// <param name="Governs">The combination and what else governs, or the case; empty where nothing does.</param>
/// <param name="Source">The clause or source of the limit.</param>
/// <param name="Why">Why it is not judged and what would mend that; null where it is judged.</param>
public sealed record BeamCheck(
    SectionCheck Figures, string What, string Where, string Governs, string Source, string? Why)
{
    /// <summary>Factors on a strength of timber that the sheet gives; others were looked up or worked out.</summary>
    public ImmutableArray<FactorKind> FactorsGiven { get; init; } = [];

    /// <summary>OK, OVER or NOT JUDGED.</summary>
    public string Verdict => Figures.Verdict switch
    {
        CheckVerdict.Ok => "OK",
        CheckVerdict.Over => "OVER",
        _ => "NOT JUDGED",
    };

    /// <summary>Demand over limit as text, as "0.74"; empty where one of them is not known.</summary>
    public string Used => Figures.Utilisation is double used ? CheckFigures.Used(used, Figures.Verdict) : "";

    /// <summary>The demand with its unit; "--" where it is not known.</summary>
    /// <param name="display">The units that results are shown in.</param>
    public string Have(DisplayUnits display) => Say(display, Figures.Demand);

    /// <summary>The limit with its unit; "--" where it is not known.</summary>
    /// <param name="display">The units that results are shown in.</param>
    public string Allow(DisplayUnits display) => Say(display, Figures.Limit);

    private string Say(DisplayUnits display, double? value) =>
        CheckFigures.Say(display, Figures, value ?? double.NaN);
}
