using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Works a beam on the supports that touch: along, part by part, and what is left together.</summary>
internal sealed class HandRound
{
    private readonly BeamModel _model;
    private readonly ImmutableArray<double> _factors;
    private readonly double? _about;
    private readonly HandWriter _writer;

    internal HandRound(BeamModel model, ImmutableArray<double> factors, double? about, HandWriter writer)
    {
        _model = model;
        _factors = factors;
        _about = about;
        _writer = writer;
    }

    /// <summary>Works as far as it can.</summary>
    /// <returns>What was found.</returns>
    internal (HandBeam Beam, HandReach Reach) Work(ImmutableArray<bool> touching)
    {
        _writer.Begin(new HandStep.Loads());
        LoadForces loads = LoadForces.Of(_writer, _model, _factors, CutsOf(touching), CutsAlong(touching));
        HandBeam beam = new(_model, touching, _writer, loads);
        bool isSlopeFirst = AlongStatics.GivesSlope(beam);
        bool slopesWait = Enumerable.Range(0, _model.Supports.Length).Any(beam.IsSloped) && !isSlopeFirst;
        if (isSlopeFirst)
        {
            AlongStatics.WorkSlope(beam);
        }
        else if (!slopesWait)
        {
            AlongStatics.Work(beam);
        }

        HandReach reach = WorkAcross(beam);
        if (reach == HandReach.Whole && slopesWait)
        {
            WorkSlopes(beam);
            AlongStatics.Work(beam);
        }

        return (beam, reach);
    }

    private HandReach WorkAcross(HandBeam beam)
    {
        WorkParts(beam);
        BeamPart[] left = [.. BeamPart.All(beam).Where(part => !part.Unknowns.IsEmpty)];
        if (left.Length == 0)
        {
            return HandReach.Whole;
        }

        if (AlongStatics.NeedsAll(beam))
        {
            return CoupledParts.Work(beam, left) ? HandReach.Whole : HandReach.Partial;
        }

        if (left.Any(part => part.Unknowns.Length < 2))
        {
            return HandReach.CanMove;
        }

        foreach ((double from, double to) in PartGroups.Of(beam))
        {
            if (!ThreeMomentMethod.CanWork(beam, from, to) || SlopesTie(beam, from, to))
            {
                return HandReach.Partial;
            }

            if (!ThreeMomentMethod.Work(beam, from, to))
            {
                return HandReach.CanMove;
            }
        }

        return HandReach.Whole;
    }

    /// <summary>True: a sloped surface in the stretch gives way by what another one, elsewhere, pushes along.</summary>
    private bool SlopesTie(HandBeam beam, double from, double to)
    {
        int[] sloped = [.. Enumerable.Range(0, _model.Supports.Length).Where(beam.IsSloped)];
        return sloped.Length > 1 && sloped.Any(i =>
            beam.Vertical[i] is null && _model.Supports[i].Position >= from && _model.Supports[i].Position <= to);
    }

    /// <summary>Works every part with few enough unknowns; each one found may make a neighbour workable.</summary>
    private void WorkParts(HandBeam beam)
    {
        while (BeamPart.All(beam).FirstOrDefault(PartStatics.CanWork) is BeamPart part)
        {
            PartStatics.Work(part, _about);
        }
    }

    private void WorkSlopes(HandBeam beam)
    {
        for (int i = 0; i < _model.Supports.Length; i++)
        {
            if (beam.IsSloped(i) && beam.Normal[i] is null)
            {
                _writer.Begin(new HandStep.Slope(i));
                AlongStatics.WorkSlopeFromVertical(beam, i);
            }
        }
    }

    private ImmutableArray<double> CutsOf(ImmutableArray<bool> touching) =>
    [
        .. PartGroups.LeftOver(_model, touching)
            .SelectMany(group => ThreeMomentMethod.NodesOf(_model, touching, group.From, group.To))
            .Concat(_model.Hinges)
            .Distinct()
            .Order(),
    ];

    private ImmutableArray<double> CutsAlong(ImmutableArray<bool> touching)
    {
        double[] holding =
        [
            .. _model.Supports.Where((support, i) => touching[i] && support.Along is not Restraint.None)
                .Select(support => support.Position),
        ];
        IEnumerable<double> between = holding.Length < 2 ? [] : holding.Concat(_model.JointPositions[1..^1]);
        return [.. between.Concat(ThreeMomentMethod.CutsAlong(_model, touching)).Distinct().Order()];
    }
}
