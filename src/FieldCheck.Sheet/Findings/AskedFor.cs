using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What a sheet asks to be judged beside the reactions and what is stated of them, each in a few words.</summary>
internal sealed class AskedFor
{
    private static readonly ImmutableArray<(string Stress, CheckKind Kind)> Stresses =
    [
        ("bending", CheckKind.Bending), ("shear", CheckKind.Shear), ("bearing", CheckKind.Bearing),
    ];

    private readonly BeamDocument _document;
    private readonly BuiltBeam _beam;
    private readonly ImmutableArray<Asked> _all;

    private AskedFor(BeamDocument document, BuiltBeam beam)
    {
        _document = document;
        _beam = beam;
        _all =
        [
            .. document.Limits is LimitsEntry limits ? Limits(limits) : [],
            .. document.Materials.SelectMany(Material),
            .. beam.Supports.SelectMany((named, index) => Seat(named.Label, index, document.Supports[named.Row])),
        ];
    }

    /// <summary>True: nothing is asked of strength, bearing or deflection.</summary>
    internal bool IsNothing => _all.IsEmpty;

    internal static AskedFor Of(BeamDocument document, BuiltBeam beam) => new(document, beam);

    /// <summary>The strengths that a material asks to be held against.</summary>
    internal static ImmutableArray<string> Strengths(MaterialEntry material) =>
    [
        .. Fields.Material
            .Where(field => IsStrength(field.Key) && field.Get(material) is not null)
            .Select(field => $"{field.Key.Replace('_', ' ')} stress {field.Get(material)}"),
    ];

    /// <summary>One message for each thing asked for that no check speaks of, and one for what changes no figure yet.</summary>
    internal IEnumerable<Message> NotJudged(BeamChecks checks) =>
    [
        .. _all.Where(asked => !checks.All.Any(check => asked.IsAnsweredBy(check.Figures))).Select(asked => new Message(
            Severity.Caution, MessageCodes.NotJudged, $"NOT JUDGED: {TextSafety.ForTerminal(asked.Text)}.")),
        .. _beam.Rolling.Where((_, index) => UncertainInputs.IsUncertain(_document.Rolling[index])).Select(rolling => NotCarried(
            $"The plus or minus of {TextSafety.ForTerminal(rolling.Label)} is kept; no band takes it.")),
        .. _document.Tolerance is not null && _beam.Uncertain.IsEmpty
            ? new[] { NotCarried("The tolerances are kept; nothing measured takes them.") }
            : [],
    ];

    private IEnumerable<Asked> Limits(LimitsEntry limits) =>
    [
        .. Each(limits.Deflection, "deflection limit {0} of each bay", Is(CheckKind.Deflection)),
        .. Each(
            limits.DeflectionOverhang, "deflection limit {0} of each overhang", Is(CheckKind.OverhangDeflection)),
        .. Each(limits.DeflectionFinal, "final deflection limit {0} of each bay", Is(CheckKind.FinalDeflection)),
        .. Each(
            limits.DeflectionFinalOverhang,
            "final deflection limit {0} of each overhang",
            Is(CheckKind.FinalOverhangDeflection)),
        .. limits.DeflectionCases.Select(figure => new Asked(
            $"deflection limit {figure.Text} under case {figure.Name}{WithoutLoads(figure.Name)}",
            check => check.Case is int index && _beam.Model.Cases[index].Name == figure.Name)),
        .. Each(limits.DeflectionAbsolute, "deflection limit {0}", Is(CheckKind.AbsoluteDeflection)),
        .. Each(limits.Rules, "strength by {0}", check => check.Clause != CheckClause.Given),
    ];

    private string WithoutLoads(string name) =>
        LimitRows.IndexOf(_beam.Model, name) is null ? ": no load stands in it" : "";

    private IEnumerable<Asked> Material(MaterialEntry material) =>
        from field in Fields.Material
        where IsStrength(field.Key) && field.Get(material) is not null
        let kind = Stresses.Single(stress => field.Key.EndsWith(stress.Stress, StringComparison.Ordinal)).Kind
        let basis = field.Key.StartsWith("allowable", StringComparison.Ordinal)
            ? CombinationBasis.Service
            : CombinationBasis.Factored
        let isUsed = _beam.Sticks.Any(stick => stick.MaterialName == material.Name)
        select new Asked(
            $"{field.Key.Replace('_', ' ')} stress {field.Get(material)} of {material.Name}"
                + (isUsed ? "" : ": no span is made of it"),
            check => isUsed && IsOf(check.Kind, kind) && check.Basis == basis
                && (check.Span is not int span || _beam.Sticks[span].MaterialName == material.Name));

    private static IEnumerable<Asked> Seat(string label, int support, SupportEntry entry) =>
    [
        .. Each(
            entry.BearingAllowable, $"bearing stress {{0}} on {label}",
            check => check is { Kind: CheckKind.Bearing, Span: null } && check.Support == support),
        .. Each(
            entry.AllowablePressure, $"ground pressure {{0}} under {label}",
            check => check.Kind == CheckKind.PadPressure && check.Support == support),
    ];

    /// <summary>Bending beside a force along the beam is judged with that force in one sum.</summary>
    private static bool IsOf(CheckKind kind, CheckKind asked) =>
        kind == asked || (kind == CheckKind.BendingAndAxial && asked == CheckKind.Bending);

    private static Func<SectionCheck, bool> Is(CheckKind kind) => check => check.Kind == kind && check.Case is null;

    private static bool IsStrength(string key) =>
        key.StartsWith("allowable_", StringComparison.Ordinal) || key.StartsWith("design_", StringComparison.Ordinal);

    private static Message NotCarried(string text) => new(Severity.Note, MessageCodes.NotCarried, text);

    private static IEnumerable<Asked> Each(string? figure, string words, Func<SectionCheck, bool> isAnsweredBy) =>
        figure is null ? [] : [new(words.Replace("{0}", figure, StringComparison.Ordinal), isAnsweredBy)];

    /// <summary>One cell that asks for something.</summary>
    /// <param name="Text">What it asks for.</param>
    /// <param name="IsAnsweredBy">Whether a check speaks of it.</param>
    private sealed record Asked(string Text, Func<SectionCheck, bool> IsAnsweredBy);
}
