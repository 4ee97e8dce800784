using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Strength;

/// <summary>Questions about a beam that differs from the one typed; each is answered when it is asked.</summary>
/// <remarks>Every answer judges the beam anew, some ten to some hundred times.</remarks>
public sealed class WhatIf
{
    private readonly BeamDocument _document;
    private readonly SectionCatalogue _catalogue;
    private readonly BuiltBeam _beam;
    private readonly Lazy<NeededFigures> _needed;
    private readonly Lazy<Headroom> _live;
    private readonly Lazy<BayHeadroom> _firstBay;
    private readonly Lazy<ImmutableArray<ShapeFamily>> _families;

    internal WhatIf(
        BeamDocument document, SectionCatalogue catalogue, BuiltBeam beam, BeamChecks checks)
    {
        _document = document;
        _catalogue = catalogue;
        _beam = beam;
        Problem = StrengthRows.Of(beam, document);
        Grows = LiveCases.Of(document, beam.Model);
        _needed = new(
            () => NeededFigures.Of(Problem, [.. checks.All.Select(check => check.Figures)], new BeamSolver()));
        _live = new(() => HeadroomSearch.OfCases(Problem, Grows, new BeamSolver()));
        _families = new(() => ShapeFamilies.Of(catalogue));
        _firstBay = new(() => FirstBay.Find(document, catalogue, beam, checks));
    }

    /// <summary>The beam with all that it is held against.</summary>
    public StrengthProblem Problem { get; }

    /// <summary>What modulus and inertia would be enough.</summary>
    public NeededFigures Needed => _needed.Value;

    /// <summary>For each case of the model whether it counts as live: all but dead, permanent and that of the own weight.</summary>
    public ImmutableArray<bool> Grows { get; }

    /// <summary>The cases with loads that count as live, by name.</summary>
    public ImmutableArray<string> LiveNames =>
        [.. Enumerable.Range(0, Grows.Length).Where(HasLive).Select(index => _beam.Model.Cases[index].Name)];

    /// <summary>By what factor all live loads may grow together; null: no live load stands or rolls.</summary>
    public Headroom? Live => Enumerable.Range(0, Grows.Length).Any(HasLive) ? _live.Value : null;

    /// <summary>How long the first bay may become under these loads, all that hangs on its span moving along.</summary>
    public BayHeadroom LongestFirstBay => _firstBay.Value;

    /// <summary>How heavy one more point load may be, as a load of the case that a load without case belongs to.</summary>
    /// <remarks>Where no combination counts that case: of the live case that it may be least in.</remarks>
    /// <param name="place">Its place [m from the left end]; on the beam.</param>
    /// <returns>Null where no combination counts a live case: any load would do.</returns>
    public PointHeadroom? HeaviestAt(double place)
    {
        ImmutableArray<int> cases = LiveCases.OfOneMore(_document, _beam.Model, out BeamModel model);
        StrengthProblem problem = Problem with { Beam = _beam.Situations with { Model = model } };
        BeamSolver solver = new();
        return cases
            .Select(index => new PointHeadroom(
                HeadroomSearch.OfPointLoad(problem, place, index, solver), model.Cases[index].Name))
            .MinBy(found => found.Force.Most ?? (found.Force.End == HeadroomEnd.None ? double.PositiveInfinity : 0));
    }

    /// <summary>Where one more support that only pushes would make every judged check hold, or the first that is over.</summary>
    /// <param name="stiffness">How stiff it stands [N/m]; greater than zero. Null: rigid.</param>
    public PropAnswer Props(double? stiffness)
    {
        BeamSolver solver = new();
        if (stiffness is not null && !_beam.Model.HasAbsoluteStiffness)
        {
            return new PropAnswer(stiffness, null, [], []) { IsOpen = true };
        }

        SectionCheck? first = Judgement.Of(Problem, solver).Governing;
        ImmutableArray<PropStretch> all = PropSearch.Find(Problem, stiffness, solver);
        ImmutableArray<PropStretch> alone = all.IsEmpty && first is not null ? PropSearch.Find(Problem, stiffness, solver, first.Kind) : [];
        return new PropAnswer(stiffness, first, all, alone)
        {
            IfTied = all.IsEmpty && alone.IsEmpty && !Problem.Untied.IsEmpty
                ? PropSearch.Find(Problem with { Untied = [] }, stiffness, solver)
                : [],
        };
    }

    /// <summary>The families of the catalogue.</summary>
    public ImmutableArray<ShapeFamily> Families => _families.Value;

    /// <summary>The family of the section that would be replaced; null: it is not one of the catalogue.</summary>
    public string? Family => SectionSearch.ShapeOf(_document, _catalogue, SectionSearch.Replaced(_beam))?.Family;

    /// <summary>The grade of the section that would be replaced; null: it has none, or more than one.</summary>
    public string? Grade => SectionSearch.SticksOf(_beam, SectionSearch.Replaced(_beam))
        .Select(stick => _document.Materials.FirstOrDefault(entry => entry.Name == stick.MaterialName)?.Grade)
        .Distinct()
        .ToArray() is [string only] ? only : null;

    /// <summary>What the section that would be replaced is made of; null: not known.</summary>
    public MaterialKind? Material => ShapeFamilies.Of(SectionSearch.SticksOf(_beam, SectionSearch.Replaced(_beam)));

    /// <summary>Which sections of the catalogue would do in the place of one that stands.</summary>
    /// <param name="families">The families to look in; empty: all.</param>
    public WouldDo SectionsThatDo(ImmutableArray<string> families) =>
        SectionSearch.Find(_document, _catalogue, _beam, families);

    private bool HasLive(int index) => Grows[index]
        && (!_beam.Model.Cases[index].Loads.IsEmpty || _beam.Rolling.Any(rolling => rolling.Case == index));
}
