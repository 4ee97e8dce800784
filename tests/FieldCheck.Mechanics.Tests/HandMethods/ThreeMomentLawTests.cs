using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>The three-moment working against the stiffness method, which shares nothing with it but the model.</summary>
public sealed class ThreeMomentLawTests
{
    private const double Agreement = 1e-9;

    [Fact]
    public void BeamOfAnyKind_HasTheReactionsOfTheStiffnessMethod() => Law.Holds(RandomBeam.Stable, model =>
    {
        HandBeam beam = ThreeMomentCase.Prepare(model);
        if (ThreeMomentMethod.CanWork(beam, 0, model.Length))
        {
            Agrees(model, beam);
        }
    });

    [Fact]
    public void ContinuousBeam_HasTheReactionsOfTheStiffnessMethod() => Law.Holds(HandBeams.Continuous, Agrees);

    [Fact]
    public void HingedBeam_HasTheReactionsOfTheStiffnessMethod() => Law.Holds(HandBeams.Hinged, Agrees);

    [Fact]
    public void SprungBeam_HasTheReactionsOfTheStiffnessMethod() => Law.Holds(HandBeams.Sprung, Agrees);

    [Fact]
    public void BeamOnASlope_HasTheReactionsOfTheStiffnessMethod() => Law.Holds(HandBeams.Sloped, Agrees);

    [Fact]
    public void StretchesBesideASuspendedSpan_HaveTheReactionsOfTheStiffnessMethod() =>
        Law.Holds(HandBeams.Suspended, model =>
        {
            HandBeam beam = ThreeMomentCase.Prepare(model);
            BeamResponse response = Answer.To(model);
            double force = LargestForce(model, response);
            double shear = response.At(model.Hinges[0]).Right.Shear;
            beam.HingeForce[0] = HandNumber.Given(shear, HandUnit.OfForce);
            beam.HingeForce[1] = HandNumber.Given(-response.At(model.Hinges[1]).Right.Shear, HandUnit.OfForce);
            beam.HingeLiftsLeft[1] = true;

            ThreeMomentMethod.Work(beam, 0, model.Hinges[0]);
            ThreeMomentMethod.Work(beam, model.Hinges[1], model.Length);

            // What stands at a hinge belongs to the part on its left: at the second one, to the suspended span.
            for (int i = 0; i < model.Supports.Length; i++)
            {
                bool isWorked = model.Supports[i].Position != model.Hinges[1];
                Assert.Equal(isWorked, beam.Vertical[i] is not null);
                Equal(isWorked ? response.Reactions[i].Vertical : 0, beam.Vertical(i), force, $"Force of support {i}");
                Equal(response.Reactions[i].Moment, beam.Couple(i), force * model.Length, $"Couple of support {i}");
            }

            Assert.Equal(shear, beam.HingeForce[0]!.Value);
        });

    [Fact]
    public void EveryNumber_IsFoundOrGivenBeforeItIsUsed() => Law.Holds(RandomBeam.Stable, model =>
    {
        HandBeam beam = ThreeMomentCase.Prepare(model);
        if (ThreeMomentMethod.CanWork(beam, 0, model.Length))
        {
            ThreeMomentMethod.Work(beam, 0, model.Length);
            FoundBeforeUse.Check(beam.Writer.Lines);
        }
    });

    private static void Agrees(BeamModel model)
    {
        HandBeam beam = ThreeMomentCase.Prepare(model);
        Assert.True(ThreeMomentMethod.CanWork(beam, 0, model.Length));
        Agrees(model, beam);
    }

    private static void Agrees(BeamModel model, HandBeam beam)
    {
        Assert.True(ThreeMomentMethod.Work(beam, 0, model.Length));
        BeamResponse response = Answer.To(model);
        double force = LargestForce(model, response);
        double moment = force * model.Length;
        for (int i = 0; i < model.Supports.Length; i++)
        {
            Equal(response.Reactions[i].Vertical, beam.Vertical(i), force, $"Force of support {i}");
            Equal(response.Reactions[i].Moment, beam.Couple(i), moment, $"Couple of support {i}");
        }

        for (int i = 0; i < model.Hinges.Length; i++)
        {
            double shear = response.At(model.Hinges[i]).Right.Shear;
            Equal(shear, beam.HingeForce[i]!.Value, force, $"Force in hinge {i}");
        }

        ImmutableArray<double> places = HandPlaces.Of(model);
        foreach ((HandRole role, Func<SectionState, SectionState, double> of) in Moments)
        {
            foreach ((int node, double value) in beam.Named(role))
            {
                (SectionState left, SectionState right) = response.At(places[node]);
                Equal(of(left, right), value, moment, $"{role} of node {node}");
            }
        }

        if (model.Spans.All(span => span.ShearRigidity is null))
        {
            MovementsAgree(model, response, beam, moment);
        }
    }

    private static readonly (HandRole Role, Func<SectionState, SectionState, double> Of)[] Moments =
    [
        (HandRole.SupportMoment, (left, right) => Math.Abs(left.Moment) > Math.Abs(right.Moment) ? left.Moment : right.Moment),
        (HandRole.MomentLeft, (left, _) => left.Moment),
        (HandRole.MomentRight, (_, right) => right.Moment),
    ];

    private static void MovementsAgree(BeamModel model, BeamResponse response, HandBeam beam, double moment)
    {
        ImmutableArray<double> places = HandPlaces.Of(model);
        double size = moment * model.Length * model.Length / model.Spans.Min(span => span.FlexuralRigidity)
            + model.Supports.Max(support => Math.Abs(support.Settlement)
                + (model.Length * Math.Abs(support.ImposedRotation))
                + (support.Across is Restraint.Spring spring ? moment / model.Length / spring.Stiffness : 0));
        foreach ((int node, double value) in beam.Named(HandRole.NodeMovement))
        {
            Equal(response.At(places[node]).Left.Deflection, value, size, $"Movement of node {node}");
        }
    }

    private static void Equal(double expected, double actual, double scale, string what) =>
        Law.Equal(expected, actual, Agreement * scale, what);

    /// <summary>
    /// The largest reaction or load; of couples and settlements, the force that they make over the whole length.
    /// </summary>
    private static double LargestForce(BeamModel model, BeamResponse response) => response.Reactions
        .SelectMany(one => new[] { Math.Abs(one.Vertical), Math.Abs(one.Moment) / model.Length })
        .Concat(model.Cases.SelectMany(one => one.Loads).Select(load => SizeOf(load, model.Length)))
        .Concat(model.Supports.Select(support => Math.Abs(support.Settlement)
            * model.Spans.Min(span => span.FlexuralRigidity) / Math.Pow(model.Length, 3)))
        .Max();

    private static double SizeOf(Load load, double length) => load switch
    {
        Load.Point point => Math.Abs(point.Down),
        Load.Couple couple => Math.Abs(couple.Moment) / length,
        Load.Distributed { ActsAlong: false } spread =>
            (spread.To - spread.From) * Math.Abs(spread.StartIntensity + spread.EndIntensity) / 2,
        _ => 0,
    };
}
