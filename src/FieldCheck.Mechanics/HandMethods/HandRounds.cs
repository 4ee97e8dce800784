using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>
/// Works a beam with all supports, and again without each that would have to act as it cannot, until none has to.
/// </summary>
internal sealed class HandRounds
{
    // As in docs/conventions.md: below this share of the greatest force a reaction counts as nothing.
    private const double Nothing = 1e-12;

    private readonly BeamModel _model;
    private readonly ImmutableArray<double> _factors;
    private readonly double? _about;
    private readonly HandWriter _writer;

    internal HandRounds(BeamModel model, ImmutableArray<double> factors, double? about)
    {
        _model = model;
        _factors = factors;
        _about = about;
        _writer = new HandWriter(model);
    }

    internal HandWorking Work(ImmutableArray<bool> lifted)
    {
        ImmutableArray<bool> touching = lifted.IsDefault
            ? [.. _model.Supports.Select(_ => true)]
            : [.. lifted.Select(one => !one)];
        FreeBody.Write(_writer, _model, touching);
        for (int round = 1; ; round++)
        {
            (HandBeam? beam, HandReach reach) = new HandRound(_model, _factors, _about, _writer).Work(touching);
            (int worst, bool isOneOfSeveral) = beam is null || reach != HandReach.Whole || !lifted.IsDefault
                ? (-1, false)
                : Wrong(beam);
            if (worst < 0)
            {
                if (reach == HandReach.Whole)
                {
                    HandProof.Write(beam!, _about, IsFree(_about));
                    _writer.Begin(new HandStep.Reactions());
                    _writer.Say(new HandRemark.Reactions());
                    SectionForces.Write(beam!);
                }

                return new HandWorking(_writer.Lines, Reactions(beam, touching), reach);
            }

            _writer.Begin(new HandStep.LiftOff(round));
            _writer.Say(new HandRemark.LetsGo(worst, isOneOfSeveral));
            touching = touching.SetItem(worst, false);
            HandRemark.Count count = FreeBody.WriteCount(_writer, _model, touching);
            if (count.DegreeAcross < 0 || count.DegreeAlong < 0)
            {
                return new HandWorking(_writer.Lines, Reactions(null, touching), HandReach.CanMove);
            }
        }
    }

    /// <summary>The support that is pulled hardest of those that only push, and the like: one at a time; -1 for none.</summary>
    private (int Worst, bool IsOneOfSeveral) Wrong(HandBeam beam)
    {
        double scale = Enumerable.Range(0, _model.Supports.Length)
            .Select(i => Math.Abs((beam.Normal[i] ?? beam.Vertical[i])?.Value ?? 0))
            .Concat(beam.Loads.Forces.Select(force => force.Size.Value))
            .DefaultIfEmpty(0)
            .Max();
        int worst = -1;
        int count = 0;
        double worstForce = Nothing * scale;
        for (int i = 0; i < _model.Supports.Length; i++)
        {
            double force = (beam.Normal[i] ?? beam.Vertical[i])?.Value ?? 0;
            double against = _model.Supports[i].Action switch
            {
                SupportAction.PushesOnly => -force,
                SupportAction.HoldsDownOnly => force,
                _ => 0,
            };
            count += against > Nothing * scale ? 1 : 0;
            (worst, worstForce) = against > worstForce ? (i, against) : (worst, worstForce);
        }

        return (worst, count > 1);
    }

    /// <summary>True: no part of statics had moments about the point asked for.</summary>
    private bool IsFree(double? about) => !_writer.Lines
        .OfType<HandLine.Says>()
        .Any(line => line.What is HandRemark.MomentsAbout { IsAsked: true } moments && moments.Point.Value == about);

    private ImmutableArray<HandReaction> Reactions(HandBeam? beam, ImmutableArray<bool> touching) =>
    [
        .. Enumerable.Range(0, _model.Supports.Length).Select(i => new HandReaction(
            beam?.Horizontal[i], beam?.Vertical[i], beam?.Couple[i], beam?.Normal[i], !touching[i])),
    ];
}
