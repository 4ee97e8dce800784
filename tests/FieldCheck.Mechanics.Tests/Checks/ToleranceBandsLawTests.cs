using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;
using Xunit.Sdk;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>
/// Exact bands hold everything that can come out, and little more. FIELDCHECK_BAND_BEAMS and FIELDCHECK_BAND_POINTS ask
/// for a longer run, FIELDCHECK_BAND_SEED for one that was reported.
/// </summary>
public sealed class ToleranceBandsLawTests
{
    private const double Rounding = 1e-8;

    /// <summary>Just beside a section or support, where a figure may jump [m].</summary>
    private const double Beside = 1e-9;

    private static readonly int Beams = Asked("FIELDCHECK_BAND_BEAMS", 8);
    private static readonly int Points = Asked("FIELDCHECK_BAND_POINTS", 60);
    private static readonly int Seed = Asked("FIELDCHECK_BAND_SEED", Environment.TickCount);

    private static readonly Gen<(BeamModel Model, int Seed)> Beam =
        Gen.Select(RandomBeam.Stable, Gen.Int[0, 1_000_000]).Where((model, _) => IsHeld(model));

    [Fact]
    public void Everything_ThatCanComeOut_LiesInside() => Hold(Beams, (model, random) =>
    {
        ImmutableArray<InputSpread> inputs = UncertainBeam.Inputs(model, random);
        BeamSolver solver = new();
        ToleranceBands bands = ToleranceBands.Find(new ToleranceProblem(model, inputs), solver)!;
        double[] places = [.. Enumerable.Range(0, 4).Select(_ => random.NextDouble() * model.Length)];
        ReactionBands[] reactions = [.. model.Supports.Select((_, support) => bands.Reaction(0, support))];
        (SectionBand Left, SectionBand Right)[] sections = [.. places.Select(place => bands.At(0, place))];
        ImmutableArray<PeakBand> peaks = bands.Peaks(0);
        IEnumerable<ImmutableArray<double>> points = UncertainBeam.Vertices(inputs)
            .Concat(Enumerable.Range(0, Points).Select(_ => UncertainBeam.Offsets(inputs, random)));
        foreach (ImmutableArray<double> offsets in points)
        {
            if (UncertainBeam.Altered(model, inputs, offsets) is not BeamModel drawn)
            {
                continue;
            }

            BeamResponse answer = Answer(solver, drawn);
            double scale = Size(answer);
            for (int support = 0; support < reactions.Length; support++)
            {
                Reaction reaction = answer.Reactions[support];
                Inside(reactions[support].Horizontal, reaction.Horizontal, scale, $"horizontal {support}");
                Inside(reactions[support].Vertical, reaction.Vertical, scale, $"vertical {support}");
                Inside(reactions[support].Moment, reaction.Moment, scale, $"moment {support}");
            }

            for (int i = 0; i < places.Length; i++)
            {
                (SectionState left, SectionState right) = answer.At(places[i]);
                Inside(sections[i].Left, left, scale, answer);
                Inside(sections[i].Right, right, scale, answer);
            }

            foreach (PeakBand peak in peaks)
            {
                Extremes extremes = answer.ExtremesOf(peak.Curve);
                double size = Math.Max(Math.Abs(extremes.Max.Value), Math.Abs(extremes.Min.Value));
                Inside(peak.Greatest, extremes.Max.Value, size, $"greatest {peak.Curve}");
                Inside(peak.Least, extremes.Min.Value, size, $"least {peak.Curve}");
            }
        }
    });

    /// <summary>
    /// One load at a time by brute force: every corner of its size at 400 places of its range; both ends of a spread
    /// load on a net. Influence lines turn inside the ranges too, so this is not a corner check.
    /// </summary>
    [Fact]
    public void ExactBand_IsAtMostOneHundredthWider_ThanLoadByLoadSearch() => Hold(Beams, (model, random) =>
    {
        ImmutableArray<InputSpread> inputs =
            [.. UncertainBeam.Inputs(model, random).Where(input => input is not InputSpread.AllLoads)];
        BeamSolver solver = new();
        ToleranceBands bands = ToleranceBands.Find(new ToleranceProblem(model, inputs), solver)!;
        Assert.Equal(BandCertainty.Exact, bands.Certainty);
        double place = random.Next(1, (int)(model.Length / RandomBeam.Grid)) * RandomBeam.Grid;
        // At a hinge itself no couple is felt that stands before it; the band holds what is felt just beside.
        place += model.Hinges.Contains(place) ? RandomBeam.Grid / 2 : 0;
        BeamResponse nominal = Answer(solver, model);
        double scale = Size(nominal);
        int support = random.Next(model.Supports.Length);
        SearchedBand[] searched =
        [
            new(bands.Reaction(0, support).Vertical, one => one.Reactions[support].Vertical),
            new(bands.Reaction(0, support).Horizontal, one => one.Reactions[support].Horizontal),
            new(bands.Reaction(0, support).Moment, one => one.Reactions[support].Moment),
            new(bands.At(0, place).Left.Moment, one => one.At(place).Left.Moment),
            new(bands.At(0, place).Left.Shear, one => one.At(place).Left.Shear),
            new(bands.At(0, place).Right.Shear, one => one.At(place).Right.Shear),
            new(bands.At(0, place).Right.Axial, one => one.At(place).Right.Axial),
            new(bands.At(0, place).Right.Deflection, one => one.At(place).Right.Deflection),
        ];
        foreach (IGrouping<LoadIndex, InputSpread> load in inputs.GroupBy(UncertainBeam.IndexOf))
        {
            ImmutableArray<ImmutableArray<InputSpread>> together = load.Key.Case < 0
                ? [.. load.Select(input => ImmutableArray.Create(input))]
                : [[.. load]];
            foreach (ImmutableArray<InputSpread> group in together)
            {
                BeamResponse[] answers =
                [
                    .. Net(group, model, place)
                        .Select(offsets => UncertainBeam.Altered(model, group, offsets))
                        .OfType<BeamModel>()
                        .Select(drawn => Answer(solver, drawn)),
                ];
                foreach (SearchedBand one in searched)
                {
                    one.Take(nominal, answers);
                }
            }
        }

        foreach (SearchedBand one in searched)
        {
            one.Judge(nominal, scale);
        }
    });

    [Fact]
    public void PeakBand_IsReachedSomewhereAlongTheBeam() => Hold(Beams, (model, random) =>
    {
        ImmutableArray<InputSpread> inputs = UncertainBeam.Inputs(model, random);
        ToleranceBands bands = ToleranceBands.Find(new ToleranceProblem(model, inputs), new BeamSolver())!;
        double[] places =
        [
            .. Enumerable.Range(0, 401).Select(i => model.Length * i / 400)
                .Concat(model.Supports.Select(one => one.Position))
                .Concat(model.Hinges)
                .Concat(model.JointPositions)
                .Concat(model.Cases.SelectMany(one => one.Loads).SelectMany(Ends))
                .Concat(inputs.Where(IsOfAPlace).SelectMany(input => RangeEnds(model, input)))
                .Distinct()
                .Order(),
        ];
        SectionBand[] sections = [.. places.SelectMany((place, i) => Inner(bands.At(0, place), i, places.Length))];
        // A search ends a little farther out at each place than it need; the peak may do with less.
        double near = inputs.Any(input => IsSearched(model, input)) ? 1e-3 : 0;
        foreach (PeakBand peak in bands.Peaks(0).Where(IsExact))
        {
            double high = sections.Max(section => Inward(On(section, peak.Curve), near).High);
            double low = sections.Min(section => Inward(On(section, peak.Curve), near).Low);
            double size = Math.Max(Math.Abs(high), Math.Abs(low));

            Assert.InRange(peak.Greatest.High, high - Rounding * size, high + 0.01 * size);
            Assert.InRange(peak.Least.Low, low - 0.01 * size, low + Rounding * size);
        }
    });

    private static bool IsExact(PeakBand peak) =>
        peak.Greatest.Certainty == BandCertainty.Exact && peak.Least.Certainty == BandCertainty.Exact;

    private static (double Low, double High) Inward(Band band, double share) =>
        (band.Low + share * band.HalfWidth, band.High - share * band.HalfWidth);

    /// <summary>The ends of a load that varies, or keeps its total, have a part in each other.</summary>
    private static bool IsSearched(BeamModel model, InputSpread input)
    {
        LoadIndex at = UncertainBeam.IndexOf(input);
        return input switch
        {
            InputSpread.LoadFrom { KeepsTotal: true } or InputSpread.LoadTo { KeepsTotal: true } => true,
            InputSpread.LoadFrom or InputSpread.LoadTo => model.Cases[at.Case].Loads[at.Load]
                is Load.Distributed spread && spread.StartIntensity != spread.EndIntensity,
            _ => false,
        };
    }

    private static bool IsOfAPlace(InputSpread input) =>
        input is InputSpread.LoadPosition or InputSpread.LoadFrom or InputSpread.LoadTo;

    private static double[] RangeEnds(BeamModel model, InputSpread input)
    {
        double typed = Typed(model, input);
        return [Math.Max(0, typed - input.HalfWidth), Math.Min(model.Length, typed + input.HalfWidth)];
    }

    private static double[] Ends(Load load) => load switch
    {
        Load.Point point => [point.Position],
        Load.Couple couple => [couple.Position],
        Load.Distributed spread => [spread.From, spread.To],
        _ => [],
    };

    private static SectionBand[] Inner((SectionBand Left, SectionBand Right) both, int index, int count) =>
        index == 0 ? [both.Right] : index == count - 1 ? [both.Left] : [both.Left, both.Right];

    private static Band On(SectionBand section, Curve curve) => curve switch
    {
        Curve.Moment => section.Moment,
        Curve.Shear => section.Shear,
        _ => section.Deflection,
    };

    /// <summary>
    /// Corners of the sizes, times a net over the places: 400 of one, 25 by 25 of two, the section itself, where
    /// influence lines jump, and the supports, where they change sign, and just beside.
    /// </summary>
    private static IEnumerable<ImmutableArray<double>> Net(
        ImmutableArray<InputSpread> group, BeamModel model, double section)
    {
        int places = group.Count(IsOfAPlace);
        int steps = places > 1 ? 25 : 400;
        IEnumerable<ImmutableArray<double>> net = [[]];
        foreach (InputSpread input in group)
        {
            double[] offsets = IsOfAPlace(input)
                ? Places(input, steps, [section, .. model.Supports.Select(one => one.Position)], Typed(model, input))
                : [-input.HalfWidth, input.HalfWidth];
            net = [.. net.SelectMany(one => offsets.Select(offset => one.Add(offset)))];
        }

        return net;
    }

    private static double[] Places(InputSpread input, int steps, double[] marks, double typed) =>
    [
        .. Enumerable.Range(0, steps + 1).Select(i => input.HalfWidth * (2.0 * i / steps - 1)),
        .. marks.SelectMany(mark => new[] { mark - typed - Beside, mark - typed, mark - typed + Beside })
            .Where(offset => Math.Abs(offset) < input.HalfWidth),
    ];

    private static double Typed(BeamModel model, InputSpread input)
    {
        LoadIndex index = UncertainBeam.IndexOf(input);
        double[] ends = Ends(model.Cases[index.Case].Loads[index.Load]);
        return input is InputSpread.LoadTo ? ends[^1] : ends[0];
    }

    private static void Inside(SectionBand bands, SectionState state, double scale, BeamResponse answer)
    {
        Extremes deflection = answer.ExtremesOf(Curve.Deflection);
        double size = Math.Max(Math.Abs(deflection.Max.Value), Math.Abs(deflection.Min.Value));
        Inside(bands.Axial, state.Axial, scale, "axial");
        Inside(bands.Shear, state.Shear, scale, "shear");
        Inside(bands.Moment, state.Moment, scale, "moment");
        Inside(bands.Deflection, state.Deflection, size, "deflection");
    }

    private static void Inside(Band band, double value, double scale, string what) => Assert.True(
        value >= band.Low - Rounding * scale && value <= band.High + Rounding * scale,
        $"{what}: {value:R} is outside {band}");

    /// <summary>The scale on which rounding acts: all forces and moments, a metre taken as the arm.</summary>
    private static double Size(BeamResponse answer) =>
        answer.Reactions.Sum(one => Math.Abs(one.Horizontal) + Math.Abs(one.Vertical) + Math.Abs(one.Moment))
        + Math.Abs(answer.ExtremesOf(Curve.Moment).Max.Value) + Math.Abs(answer.ExtremesOf(Curve.Moment).Min.Value)
        + 1;

    private static BeamResponse Answer(BeamSolver solver, BeamModel model) =>
        ((BeamOutcome.Stands)solver.Solve(model)).Combinations[0].Response;

    private static int Asked(string name, int usual) => int.Parse(
        Environment.GetEnvironmentVariable(name) ?? usual.ToString(CultureInfo.InvariantCulture),
        CultureInfo.InvariantCulture);

    private static void Hold(int beams, Action<BeamModel, Random> law) => Parallel.For(0, beams, index =>
    {
        (BeamModel model, int seed) = Beam.Generate(new PCG((uint)index, (ulong)Seed), null, out _);
        try
        {
            law(model, new Random(seed));
        }
        catch (XunitException failure)
        {
            throw new XunitException($"beam {index} of seed {Seed}: {failure.Message}\n{BeamText.Of(model)}", failure);
        }
    });

    /// <summary>Nearly movable beams magnify rounding beyond any fixed tolerance.</summary>
    private static bool IsHeld(BeamModel model) =>
        new BeamSolver().Solve(model) is BeamOutcome.Stands { IsNearlyMovable: false };

    private sealed class SearchedBand(Band band, Func<BeamResponse, double> figure)
    {
        private double _down;
        private double _up;

        internal void Take(BeamResponse nominal, BeamResponse[] answers)
        {
            double typed = figure(nominal);
            _down += Math.Min(0, answers.Min(answer => figure(answer) - typed));
            _up += Math.Max(0, answers.Max(answer => figure(answer) - typed));
        }

        internal void Judge(BeamResponse nominal, double scale)
        {
            double typed = figure(nominal);
            double rounding = Rounding * (scale + Math.Abs(typed));
            double wider = 0.01 * (_up - _down) + rounding;

            Assert.True(band.Low <= typed + _down + rounding);
            Assert.True(band.High >= typed + _up - rounding);
            if (band.Certainty == BandCertainty.Exact)
            {
                Assert.InRange(band.Low, typed + _down - wider, typed + _down + rounding);
                Assert.InRange(band.High, typed + _up - rounding, typed + _up + wider);
            }
        }
    }
}
