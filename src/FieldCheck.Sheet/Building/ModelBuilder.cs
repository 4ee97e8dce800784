using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Building;

/// <summary>
/// Makes the model that the solver reads from a beam as typed: the only place where texts with units become the SI
/// numbers of a model. Every cell is read, used or not, and everything wrong is told together.
/// </summary>
public sealed class ModelBuilder
{
    private readonly BeamDocument _document;
    private readonly ProblemList _problems = new();
    private readonly LoadCases _cases;
    private readonly DisplayUnits _display;
    private readonly CellOffsets? _offsets;

    private ModelBuilder(BeamDocument document, CellOffsets? offsets)
    {
        _offsets = offsets;
        _document = document;
        _cases = new LoadCases(document);
        _display = new DisplayUnits(document.Units);
    }

    /// <summary>Builds the model of a beam.</summary>
    /// <param name="document">The beam as typed.</param>
    /// <param name="catalogue">Sections and materials it may name.</param>
    public static BuildOutcome Build(BeamDocument document, SectionCatalogue catalogue) =>
        Build(document, catalogue, offsets: null);

    /// <summary>Builds the model of a beam whose cells are off by so much; what hangs on them moves along.</summary>
    internal static BuildOutcome Build(BeamDocument document, SectionCatalogue catalogue, CellOffsets? offsets)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(catalogue);
        ModelBuilder builder = new(document, offsets);
        BuiltBeam? beam = builder.Build(catalogue);
        return beam is not null && builder._problems.IsEmpty
            ? new BuildOutcome.Built(offsets is null ? beam with
            {
                Uncertain = UncertainInputs.Of(document, beam),
                HasUncertainRolling = document.Rolling.Any(UncertainInputs.IsUncertain),
            } : beam)
            : new BuildOutcome.Refused(builder._problems.InOrder());
    }

    private BuiltBeam? Build(SectionCatalogue catalogue)
    {
        Row top = Row.Of(Fields.Top, _document, "", _problems);
        ImmutableArray<Row> spans = Rows(Fields.Span, _document.Spans, "span");
        ImmutableArray<double>? lengths = SpanLengths.Read(spans, _problems);
        Stations stations = new(lengths, spans.Length, _display);
        SupportLine supports = SupportLine.Read(Rows(Fields.Support, _document.Supports, "support"), stations);
        ImmutableArray<double>? hinges =
            HingeRows.Read(Rows(Fields.Hinge, _document.Hinges, "hinge"), stations, supports);
        ImmutableArray<Stick?> sticks = SticksOf(spans, catalogue);
        bool frameIsSound = _problems.IsEmpty;
        ImmutableArray<NamedLoad> loads = LoadsOf(sticks, stations, hinges ?? []);
        ImmutableArray<RollingRows.Draft> rolling = new RollingRows(_problems).Read(_document.Rolling);
        CheckTheRest(supports.Labels);

        return frameIsSound
            ? Assemble(
                lengths!.Value, supports.Supports!.Value, hinges!.Value, [.. sticks.OfType<Stick>()],
                top.IsTrue("shear_deformation"), loads, rolling)
            : null;
    }

    private BuiltBeam? Assemble(
        ImmutableArray<double> lengths,
        ImmutableArray<NamedSupport> supports,
        ImmutableArray<double> hinges,
        ImmutableArray<Stick> sticks,
        bool shearDeforms,
        ImmutableArray<NamedLoad> loads,
        ImmutableArray<RollingRows.Draft> rolling)
    {
        ImmutableArray<Support> held = [.. supports.Select(named => named.Support)];
        BeamModel bare = new([.. lengths.Select(length => new Span(length, 1, 1))], held, hinges, [], []);
        StiffnessRule rule = new(sticks, held, BeamSolver.DeterminacyOf(bare), shearDeforms, _problems);
        if (rule.Apply() is not Rigidities rigidities || !_problems.IsEmpty)
        {
            return null;
        }

        ImmutableArray<LoadCase> cases = LoadCases.Of(_document, loads);
        BeamModel model = new(
            [.. lengths.Select(rigidities.Span)],
            held,
            hinges,
            cases,
            CombinationRows.Of(_document.Combinations, cases),
            rigidities.AreAbsolute);
        return new BuiltBeam(model, supports, loads, _display)
        {
            Sticks = sticks,
            PatternCases = PatternCases(cases),
            Rolling = [.. rolling.Select(draft => draft.In(cases))],
            UniformStiffnessAssumed = rigidities.UniformStiffnessAssumed,
            OneModulusAssumed = rigidities.OneModulusAssumed,
            UniformAreaAssumed = rigidities.UniformAreaAssumed,
        };
    }

    /// <summary>A case without standing loads has nothing that could be left away bay by bay.</summary>
    private ImmutableArray<int> PatternCases(ImmutableArray<LoadCase> cases) =>
    [
        .. Enumerable.Range(0, cases.Length).Where(index => !cases[index].Loads.IsEmpty
            && _document.Patterns.Any(pattern => pattern.Case == cases[index].Name)),
    ];

    private ImmutableArray<Row> Rows<T>(ImmutableArray<Field<T>> fields, Rows<T> entries, string table) =>
        [.. entries.Select((entry, index) => Row.Of(fields, entry, $"{table}[{index + 1}]", _problems, _offsets))];

    private ImmutableArray<Stick?> SticksOf(ImmutableArray<Row> spans, SectionCatalogue catalogue)
    {
        Sticks sticks = new(_document, catalogue, _problems, _offsets);
        return [.. spans.Select(sticks.Of)];
    }

    private ImmutableArray<NamedLoad> LoadsOf(
        ImmutableArray<Stick?> sticks, Stations stations, ImmutableArray<double> hinges)
    {
        Row? ownWeight = _document.SelfWeight is SelfWeightEntry entry
            ? Row.Of(Fields.SelfWeight, entry, "self_weight", _problems)
            : null;
        LoadRows reader = new(stations, hinges);
        ImmutableArray<NamedLoad>.Builder loads = ImmutableArray.CreateBuilder<NamedLoad>();
        loads.AddRange(OwnWeight.Read(ownWeight, sticks, stations.Joints, _problems));
        ImmutableArray<Row> rows = Rows(Fields.Load, _document.Loads, "load");
        for (int row = 0; row < rows.Length; row++)
        {
            if (reader.Read(rows[row]) is Load load)
            {
                string name = rows[row].Text("case") ?? LoadCases.Default;
                loads.Add(new NamedLoad(load, name, rows[row].Text("label") ?? "", row));
            }
        }

        return loads.ToImmutable();
    }

    private void CheckTheRest(ImmutableArray<string>? labels)
    {
        Row.Of(Fields.Record, _document.Record, "record", _problems);
        CombinationRows.Check(
            Rows(Fields.Combination, _document.Combinations, "combination"), _document.Combinations, _cases, _problems);
        OtherTables tables = new(_document, _cases, _problems);
        tables.CheckAsk();
        tables.CheckRenames();
        tables.CheckPatterns();
        tables.CheckStated(labels);
        tables.CheckTolerance();
        tables.CheckLimits();
    }
}
