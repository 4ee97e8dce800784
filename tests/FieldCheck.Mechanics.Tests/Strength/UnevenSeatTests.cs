using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Seats that the push does not press evenly, or not straight down: statics alone, worked apart.</summary>
public sealed class UnevenSeatTests
{
    private static readonly Strengths Two = new(null, null, 2e6);

    private static readonly Seat All = new(0.08, 1e6, 0.09, 50e3);

    /// <summary>A cantilever of 2 m turns its support by 2 kN·m: push over area is not the stress anywhere.</summary>
    [Fact]
    public void SupportThatTurnsTheBeam_IsNotJudged()
    {
        BeamModel model = Checked.Model([2], [Support.Fixed(0)], new Load.Point(2, 1000));

        ImmutableArray<SectionCheck> found = Checked.Problem(model, Checked.Stick(Two)).With(All).Find();

        Assert.Equal([CheckKind.Bearing, CheckKind.Bearing, CheckKind.PadPressure], found.Select(one => one.Kind));
        Assert.All(found, AssertTurned);
        AssertTurned(Assert.Single(Checked.Problem(model, Checked.Stick(Two)).Find()));

        static void AssertTurned(SectionCheck check)
        {
            Assert.Equal((null, NotJudgedReason.MomentOnSeat), (check.Demand, check.Reason));
            Assert.Equal(1000, check.Term(CheckSymbol.Reaction), 1e-9);
            Assert.DoesNotContain(check.Terms, term => term.Symbol == CheckSymbol.NeededBearingLength);
        }
    }

    [Fact]
    public void WebThatIsTurned_IsNotJudged()
    {
        BeamModel model = Checked.Model([2], [Support.Fixed(0)], new Load.Point(2, 1000));
        Member beam = Steel.Braced(WideFlange.Named("W18x50"), Steel.American(50));

        SectionCheck web = (Checked.Problem(model, beam) with { Rules = StrengthRules.Aisc360Asd }).Find()
            .Single(one => one.Support == 0);

        Assert.Equal(NotJudgedReason.MomentOnSeat, web.Reason);
        Assert.DoesNotContain(web.Terms, term => term.Symbol == CheckSymbol.NeededBearingLength);
    }

    /// <summary>A spring against turning makes the support uneven; the plain one beside it stays judged.</summary>
    [Fact]
    public void RotationalStiffness_TurnsTheBeamToo()
    {
        Support sprung = Support.Pin(0) with { Rotation = new Restraint.Spring(1e6) };
        BeamModel model = Checked.Model([4], [sprung, Support.Roller(4)], Checked.Uniform(0, 4, 2000));

        ImmutableArray<SectionCheck> found = Checked.Problem(model, Checked.Stick(Two)).With(new Seat(0.08, null, null, null)).Find();

        Assert.Equal([NotJudgedReason.MomentOnSeat, null], found.Select(one => one.Reason));
    }

    /// <summary>A load straight over a built-in end does not turn it.</summary>
    [Fact]
    public void BuiltInEndThatIsNotTurned_IsJudged()
    {
        BeamModel model = Checked.Model([4], [Support.Fixed(0), Support.Roller(4)], new Load.Point(0, 4000));

        SectionCheck bearing = Assert.Single(Checked.Problem(model, Checked.Stick(Two)).With(new Seat(0.08, null, null, null)).Find());

        Assert.Equal(1e6, bearing.Demand!.Value, 1e-4);
    }

    /// <summary>4 kN straight up are 4/cos 40° = 5.222 kN square to a surface of 40 degrees, whichever way it leans.</summary>
    [Theory]
    [InlineData(40)]
    [InlineData(-40)]
    public void SlopedSurface_IsPushedSquareToIt(double degrees)
    {
        BeamModel model = Checked.Model(
            [4], [Support.Pin(0), Support.Roller(4, degrees * Math.PI / 180)], Checked.Uniform(0, 4, 2000));

        SectionCheck[] sloped = [.. Checked.Problem(model, Checked.Stick(Two)).With(All).Find().Where(one => one.Support == 1)];

        Assert.All(sloped, one => Assert.Equal(5221.629157, one.Term(CheckSymbol.Reaction), 1e-6));
        Assert.Equal(5221.629157 / 0.05 / 0.08, sloped[0].Demand!.Value, 1e-3);
        Assert.Equal(5221.629157 / 0.09, sloped[^1].Demand!.Value, 1e-5);
    }

    /// <summary>Two sticks that meet on a seat share it, unevenly; the pad below has the sum of both.</summary>
    [Fact]
    public void HingeOverASupport_LeavesItsBearingOpen()
    {
        ImmutableArray<SectionCheck> found = Hinged(4).With(All).Find();

        Assert.Equal([null, null, NotJudgedReason.HingeOnSeat, NotJudgedReason.HingeOnSeat, null, null], found
            .Where(one => one.Kind == CheckKind.Bearing).Select(one => one.Reason));
        Assert.All(found.Where(one => one.Support == 1 && one.Kind == CheckKind.Bearing), one => Assert.Null(one.Demand));
        Assert.Equal(8000 / 0.09, found.Single(one => one.Support == 1 && one.Kind == CheckKind.PadPressure).Demand!.Value, 1e-6);
    }

    /// <summary>A hinge 100 mm beside the middle of a bearing stands on one of more than 200 mm, not on one of 200 mm.</summary>
    [Theory]
    [InlineData(0.2, null)]
    [InlineData(0.21, NotJudgedReason.HingeOnSeat)]
    public void HingeBesideASupport_CountsWhereTheBearingReachesIt(double length, NotJudgedReason? reason) => Assert.Equal(
        reason, Middle(Hinged(4.1).With(new Seat(length, null, null, null))).Reason);

    /// <summary>A length that would reach the hinge is not told as enough: 8 kN and more need 80 mm, or at 0.5 N/mm² 320 mm.</summary>
    [Theory]
    [InlineData(2e6, true)]
    [InlineData(0.5e6, false)]
    public void LengthThatWouldReachTheHinge_IsNotToldAsEnough(double allowed, bool isTold)
    {
        SectionCheck open = Middle(Hinged(4.1, new Strengths(null, null, allowed)));

        Assert.Equal(NotJudgedReason.NoBearingLength, open.Reason);
        Assert.Equal(isTold, open.Terms.Any(term => term.Symbol == CheckSymbol.NeededBearingLength));
    }

    /// <summary>Place, and from there to the nearer and farther end of the stick and to the nearest hinge; hinges at 3 and 4.1 m.</summary>
    [Theory]
    [InlineData(0, 0, 3, 3)]
    [InlineData(4, 0.1, 1, 0.1)]
    [InlineData(4.1, 0, 3.9, 0)]
    [InlineData(8, 0, 3.9, 3.9)]
    public void Stick_EndsAtHinges(double at, double toEnd, double toFarEnd, double toHinge)
    {
        BeamModel model = Checked.Model([8], [Support.Pin(0), Support.Roller(4), Support.Roller(8)]) with { Hinges = [3, 4.1] };

        SeatPlace place = SeatPlace.Of(model, Bays.Of(model), at);

        Assert.Equal(toEnd, place.ToEnd, 1e-12);
        Assert.Equal(toFarEnd, place.ToFarEnd, 1e-12);
        Assert.Equal(toHinge, place.ToHinge, 1e-12);
    }

    [Fact]
    public void WithoutHinges_AStickEndsWithTheBeam()
    {
        BeamModel model = Checked.Model([6], [Support.Pin(0), Support.Roller(4)]);

        Assert.Equal(new SeatPlace(4, 2, 4, 4), SeatPlace.Of(model, Bays.Of(model), 4));
    }

    /// <summary>A W18x50 bears 10 kN over an inner support on no length at all.</summary>
    [Fact]
    public void LengthOfNothing_IsNotTold()
    {
        BeamModel model = Checked.Model([4, 4], [Support.Pin(0), Support.Roller(4), Support.Roller(8)], Checked.Uniform(0, 8, 2000));
        Member beam = Steel.Braced(WideFlange.Named("W18x50"), Steel.American(50));

        SectionCheck web = (Checked.Problem(model, beam) with { Rules = StrengthRules.Aisc360Asd }).Find().Single(one => one.Support == 1);

        Assert.Equal(NotJudgedReason.NoBearingLength, web.Reason);
        Assert.DoesNotContain(web.Terms, term => term.Symbol == CheckSymbol.NeededBearingLength);
    }

    private static StrengthProblem Hinged(double hinge, Strengths? allowed = null) => Checked.Problem(
        Checked.Model([4, 4], [Support.Pin(0), Support.Roller(4), Support.Roller(8)], Checked.Uniform(0, 8, 2000)) with
        {
            Hinges = [hinge],
        },
        Checked.Stick(allowed ?? Two));

    private static SectionCheck Middle(StrengthProblem problem) => problem.Find().Single(one => one.Support == 1);
}
