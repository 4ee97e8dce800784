using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Tests;

/// <summary>Sheets with checks of given figures, so that the page can be looked at apart from the rules.</summary>
internal static class Checked
{
    internal static BeamCheck Bending { get; } = new(
        new SectionCheck
        {
            Kind = CheckKind.Bending,
            Basis = CombinationBasis.Service,
            Clause = CheckClause.Given,
            Unit = CheckUnit.Stress,
            Span = 0,
            Position = 2.1,
            Situation = new Situation(0, [null, null], null),
            Demand = 6e6,
            Limit = 8e6,
            Terms = [new(CheckSymbol.SectionModulus, 433e-6, CheckUnit.SectionModulus)],
            Factors = [new(FactorKind.Duration, 1.25)],
        },
        "bending", "x = 2.10 m", "", "allowable bending stress of softwood, as given", null);

    internal static BeamCheck Overhang { get; } = new(
        new SectionCheck
        {
            Kind = CheckKind.OverhangDeflection,
            Basis = CombinationBasis.Service,
            Clause = CheckClause.Given,
            Unit = CheckUnit.Length,
            Bay = 1,
            Position = 3.6,
            Situation = new Situation(0, [null, null], null),
            Demand = 0.0066,
            Limit = 0.005,
            Certainty = EnvelopeCertainty.Estimate,
        },
        "deflection of the right overhang", "x = 3.60 m", "", "L/180, as given", null);

    internal static BeamCheck Bearing { get; } = new(
        new SectionCheck
        {
            Kind = CheckKind.Bearing,
            Basis = CombinationBasis.Service,
            Clause = CheckClause.NdsBearing,
            Unit = CheckUnit.Stress,
            Support = 1,
            Reason = NotJudgedReason.NoBearingLength,
        },
        "bearing at B", "", "", "NDS 3.10, bearing across the grain",
        "the length of the bearing is not given; it needs at least 42.0 mm");

    internal static BeamCheck CaseAlone { get; } = Bending with
    {
        Figures = Bending.Figures with
        {
            Kind = CheckKind.Deflection,
            Unit = CheckUnit.Length,
            Bay = 0,
            Span = null,
            Case = 1,
            Situation = null,
            Demand = 0.005,
            Limit = 0.0067,
            IsBound = true,
        },
        What = "deflection of the bay under live alone",
        Governs = "live alone",
        Source = "L/360 under live alone, as given",
    };

    internal static Calculation Trench(params ImmutableArray<BeamCheck> checks) => Sheets.Run(Sheets.Trench) with
    {
        Checks = new BeamChecks(checks, checks.IsEmpty ? [] : ["strength in shear", "columns and props", "connections"]),
    };
}
