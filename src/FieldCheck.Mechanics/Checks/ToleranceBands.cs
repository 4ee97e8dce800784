using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Checks;

/// <summary>How far each reaction and peak may be off, given how well the loads and the beam are known.</summary>
/// <remarks>
/// Loads and movements of supports add up, so each is taken at its worst by itself, exactly. What changes the beam
/// itself is taken at the corners of its ranges, with the exact bands of the loads there; that is an estimate. So is
/// everything on a beam with a support that acts one way only. Where the beam has no answer at a corner, the bands are
/// without that corner and say so: <see cref="Gap"/>.
/// </remarks>
public sealed class ToleranceBands
{
    private readonly ToleranceProblem _problem;
    private readonly ImmutableArray<(ImmutableArray<double> Offsets, SuperposedAnswers Answers)> _beams;
    private readonly bool _addsUp;
    private readonly bool _areCorners;
    private readonly ImmutableArray<(ImmutableArray<double> Offsets, BeamOutcome.Stands Answers)> _letGo;
    private readonly ImmutableArray<Lazy<ImmutableArray<PeakBand>>> _peaks;
    private readonly ImmutableArray<Lazy<ReactionBands>> _reactions;

    private ToleranceBands(
        ToleranceProblem problem,
        ImmutableArray<(ImmutableArray<double> Offsets, SuperposedAnswers Answers)> beams,
        bool addsUp,
        bool areCorners,
        ToleranceGap? gap,
        ImmutableArray<(ImmutableArray<double> Offsets, BeamOutcome.Stands Answers)> letGo)
    {
        _problem = problem;
        _beams = beams;
        _addsUp = addsUp;
        _areCorners = areCorners;
        Gap = gap;
        _letGo = letGo;
        int combinations = problem.Model.Combinations.Length;
        _peaks = [.. Enumerable.Range(0, combinations).Select(index =>
            new Lazy<ImmutableArray<PeakBand>>(() => FindPeaks(index)))];
        _reactions = [.. Enumerable.Range(0, combinations * SupportCount).Select(index => new Lazy<ReactionBands>(
            () => Reaction(new Loading(index / SupportCount), index % SupportCount)))];
    }

    /// <summary>What the bands can be at best.</summary>
    public BandCertainty Certainty => Gap is not null ? BandCertainty.Partial
        : _beams.Length == 1 && _addsUp ? BandCertainty.Exact
        : BandCertainty.Estimate;

    /// <summary>
    /// Where, within what was measured, the beam has no answer; null where none such was found. Of several the gravest:
    /// where it tips or can move before where no answer is found or no beam is left.
    /// </summary>
    public ToleranceGap? Gap { get; }

    private SuperposedAnswers Typed => _beams[0].Answers;

    private int SupportCount => _problem.Model.Supports.Length;

    /// <summary>Solves for what the bands are made of.</summary>
    /// <param name="problem">The beam and what is uncertain.</param>
    /// <param name="solver">The solver to use; it is not needed afterwards.</param>
    /// <returns>The bands, or null where the beam does not stand.</returns>
    /// <exception cref="ArgumentException">An input changes the beam itself and nobody says how.</exception>
    public static ToleranceBands? Find(ToleranceProblem problem, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solver);
        bool addsUp = problem.Model.Supports.All(support => support.Action == SupportAction.Both);
        Require.That(
            problem.Altered is not null || !problem.Inputs.Any(input => input is InputSpread.OfBeam),
            "An input that changes the beam itself needs the altered beam.",
            nameof(problem));
        ToleranceGaps gaps = new(problem, solver);
        ImmutableArray<double> halves =
        [
            .. problem.Inputs.Select(input => addsUp && input is not InputSpread.OfBeam ? 0 : input.HalfWidth),
        ];
        bool areCorners = ToleranceCorners.AreFew(halves, problem.Model);
        List<ImmutableArray<double>> without = [];
        var beams = ImmutableArray.CreateBuilder<(ImmutableArray<double>, SuperposedAnswers)>();
        foreach (ImmutableArray<double> offsets in areCorners
            ? ToleranceCorners.Together(halves)
            : ToleranceCorners.Alone(halves))
        {
            bool hasBands = addsUp && (areCorners || beams.Count == 0);
            SuperposedAnswers? answers = (addsUp ? gaps.OfBeam(offsets) : gaps.Altered(offsets)) is BeamModel model
                ? SuperposedAnswers.Solve(solver, model, hasBands ? problem.Inputs : [])
                : null;
            if (answers is not null)
            {
                beams.Add((offsets, answers));
            }
            else if (beams.Count == 0)
            {
                return null;
            }
            else
            {
                without.Add(offsets);
            }
        }

        var letGo = ImmutableArray.CreateBuilder<(ImmutableArray<double>, BeamOutcome.Stands)>();
        if (!addsUp)
        {
            letGo.AddRange(beams.Select(beam => (beam.Item1, beam.Item2.Nominal)));
            foreach (ImmutableArray<double> offsets in areCorners ? [] : gaps.TowardLettingGo(halves))
            {
                if (gaps.Altered(offsets) is BeamModel model && solver.Solve(model) is BeamOutcome.Stands stands)
                {
                    letGo.Add((offsets, stands));
                }
                else
                {
                    without.Add(offsets);
                }
            }
        }

        return new ToleranceBands(
            problem, beams.ToImmutable(), addsUp, areCorners, gaps.Gravest(without), letGo.ToImmutable());
    }

    /// <summary>
    /// Where, within what was measured, a support lets go that touches as typed: offsets of the inputs, in their own units,
    /// of the first corner found; null where none is, or it is loose as typed.
    /// </summary>
    /// <param name="combination">Index of the combination.</param>
    /// <param name="support">Index of the support.</param>
    public ImmutableArray<double>? LetsGo(int combination, int support)
    {
        return _letGo.IsEmpty || IsLoose(_letGo[0].Answers)
            ? null
            : _letGo.Where(beam => IsLoose(beam.Answers))
                .Select(beam => (ImmutableArray<double>?)beam.Offsets)
                .FirstOrDefault();

        bool IsLoose(BeamOutcome.Stands answers) =>
            answers.Combinations[combination].Response.Reactions[support].IsLiftedOff;
    }

    /// <summary>The bands of one support's reaction.</summary>
    /// <param name="combination">Index of the combination.</param>
    /// <param name="support">Index of the support.</param>
    public ReactionBands Reaction(int combination, int support) =>
        _reactions[combination * SupportCount + support].Value;

    /// <summary>The bands of one support's reaction to a case alone, factor 1, without imposed movements.</summary>
    /// <param name="loadCase">Index of the case; one that the beam has an answer for.</param>
    /// <param name="support">Index of the support.</param>
    /// <returns>The bands; null where a support acts one way only, so that answers do not add up.</returns>
    public ReactionBands? ReactionOfCase(int loadCase, int support) =>
        _addsUp ? Reaction(new Loading(loadCase, IsCase: true), support) : null;

    /// <summary>The bands just left and just right of a place.</summary>
    /// <param name="combination">Index of the combination.</param>
    /// <param name="position">Distance from the left end [m]; within the beam as measured.</param>
    public (SectionBand Left, SectionBand Right) At(int combination, double position)
    {
        return (On(Side.Left), On(Side.Right));

        SectionBand On(Side side) => new(
            Of(new Loading(combination), Target.At(position, side, Curve.Axial)),
            Of(new Loading(combination), Target.At(position, side, Curve.Shear)),
            Of(new Loading(combination), Target.At(position, side, Curve.Moment)),
            Of(new Loading(combination), Target.At(position, side, Curve.Deflection)));
    }

    /// <summary>Bands of the greatest and least moment, shear and, where stiffness is known, deflection.</summary>
    /// <param name="combination">Index of the combination.</param>
    public ImmutableArray<PeakBand> Peaks(int combination) => _peaks[combination].Value;

    /// <summary>What each input by itself does to a part of a reaction, the greatest first.</summary>
    /// <param name="combination">Index of the combination.</param>
    /// <param name="support">Index of the support.</param>
    /// <param name="part">The part of its reaction.</param>
    public ImmutableArray<InputEffect> Ranking(int combination, int support, ReactionPart part)
    {
        Target target = Target.Of(support, part);
        double typed = target.In(Typed.Nominal.Combinations[combination].Response);
        return
        [
            .. _problem.Inputs.Select((_, index) => Effect(combination, target, typed, index))
                .OrderByDescending(effect => effect.Size),
        ];
    }

    private ImmutableArray<PeakBand> FindPeaks(int combination)
    {
        ImmutableArray<PeakBand> typed = Peaks(Typed, combination);
        ImmutableArray<PeakBand>[] corners =
            _areCorners ? [typed, .. _beams.Skip(1).Select(beam => Peaks(beam.Answers, combination))] : [];
        return
        [
            .. typed.Select((peak, i) => peak with
            {
                Greatest = _areCorners
                    ? Around(corners.Select(one => one[i].Greatest))
                    : Moved(peak.Greatest, beam => Extremes(beam, combination, peak.Curve).Max.Value),
                Least = _areCorners
                    ? Around(corners.Select(one => one[i].Least))
                    : Moved(peak.Least, beam => Extremes(beam, combination, peak.Curve).Min.Value),
            }),
        ];
    }

    private static Extremes Extremes(SuperposedAnswers beam, int combination, Curve curve) =>
        beam.Nominal.Combinations[combination].Response.ExtremesOf(curve);

    private static ImmutableArray<PeakBand> Peaks(SuperposedAnswers beam, int combination)
    {
        SuperposedBands bands = new(beam, new Loading(combination));
        PeakBand moment = PeakSearch.Of(bands, Curve.Moment);
        PeakBand shear = PeakSearch.Of(bands, Curve.Shear);
        double size = Math.Max(Math.Abs(moment.Greatest.High), Math.Abs(moment.Least.Low));
        return bands.Model.HasAbsoluteStiffness
            ? [moment, shear, PeakSearch.Of(bands, Curve.Deflection, size)]
            : [moment, shear];
    }

    private ReactionBands Reaction(Loading loading, int support) => new(
        Of(loading, Target.Of(support, ReactionPart.Horizontal)),
        Of(loading, Target.Of(support, ReactionPart.Vertical)),
        Of(loading, Target.Of(support, ReactionPart.Moment)));

    /// <summary>Around all corners, loads at their worst at each; else moved by the effects of the inputs added up.</summary>
    private Band Of(Loading loading, Target target) => _areCorners
        ? Around(Reaching(target).Select(beam => new SuperposedBands(beam.Answers, loading).Of(target)))
        : Moved(
            new SuperposedBands(Typed, loading).Of(target),
            beam => target.In(new SuperposedBands(beam, loading).Nominal),
            target);

    private Band Around(IEnumerable<Band> corners) =>
        corners.Aggregate((one, other) => one.Around(other)).AtBest(Certainty);

    /// <summary>A band of the beam as measured, moved by what each input alone does to a figure, added up.</summary>
    private Band Moved(Band typed, Func<SuperposedAnswers, double> figure, Target? target = null)
    {
        double measured = figure(Typed);
        double down = 0;
        double up = 0;
        foreach (var ofInput in Reaching(target).Skip(1)
            .GroupBy(beam => OnlyInput(beam.Offsets), beam => figure(beam.Answers) - measured))
        {
            down += Math.Min(0, ofInput.Min());
            up += Math.Max(0, ofInput.Max());
        }

        return typed.Widened(down, up).AtBest(Certainty);
    }

    /// <summary>The beams that reach as far as a place; a shorter one has no figure there.</summary>
    private IEnumerable<(ImmutableArray<double> Offsets, SuperposedAnswers Answers)> Reaching(Target? target) =>
        _beams.Where(beam => target is not { IsReaction: false } at || at.Position <= beam.Answers.Model.Length);

    private static int OnlyInput(ImmutableArray<double> offsets) =>
        Enumerable.Range(0, offsets.Length).First(input => offsets[input] != 0);

    private InputEffect Effect(int combination, Target target, double typed, int index)
    {
        double half = _problem.Inputs[index].HalfWidth;
        Band band = _addsUp && _problem.Inputs[index] is not InputSpread.OfBeam
            ? new SuperposedBands(Typed, new Loading(combination), index).Of(target)
            : Alone(combination, target, typed, index);
        InputEffect effect = new(index, Math.Min(0, band.Low - typed), Math.Max(0, band.High - typed), 0);
        return half > 0 ? new InputEffect(index, effect.Down, effect.Up, effect.Size / half) : effect;
    }

    /// <summary>The beams in which nothing else is off.</summary>
    private Band Alone(int combination, Target target, double typed, int index)
    {
        Band band = new(typed, typed, BandCertainty.Estimate);
        foreach ((ImmutableArray<double> offsets, SuperposedAnswers answers) in _beams)
        {
            if (offsets[index] != 0 && offsets.Count(offset => offset != 0) == 1)
            {
                double value = target.In(answers.Nominal.Combinations[combination].Response);
                band = band.Around(new Band(value, value, BandCertainty.Estimate));
            }
        }

        return band;
    }
}
