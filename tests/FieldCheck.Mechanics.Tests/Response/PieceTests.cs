using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Response;

/// <summary>Values between the breaks, by hand, on pieces whose length is not one.</summary>
public sealed class PieceTests
{
    /// <summary>p = 100 + 100 s from 1 m to 4 m, to the right: N is what still acts beyond.</summary>
    [Theory]
    [InlineData(0.5, 750)]
    [InlineData(1.5, 750 - 62.5)]
    [InlineData(3, 750 - 400)]
    [InlineData(4.5, 0)]
    public void At_LoadAlongThatGrows_IsItsRestBeyond(double place, double expected)
    {
        BeamResponse response = Solve(5, [Support.Fixed(0)], [new Load.Distributed(1, 4, 100, 400, true)]);

        Equal(expected, response.At(place).Left.Axial, 750);
    }

    /// <summary>q = 100 + 100 s from 1 m to 4 m, down; V and M are those of what is beyond.</summary>
    [Fact]
    public void At_LoadAcrossThatGrows_IsItsRestBeyond()
    {
        BeamResponse response = Solve(5, [Support.Fixed(0)], [new Load.Distributed(1, 4, 100, 400)]);

        SectionState state = response.At(2.5).Right;

        // 1.5 m remain, 250 N/m at their left end and 400 N/m at their right.
        Equal(250 * 1.5 + 150 * 1.5 / 2, state.Shear);
        Equal(-(250 * 1.5 * 1.5 / 2 + 150 * 1.5 / 2 * (1.5 * 2 / 3)), state.Moment);
    }

    /// <summary>
    /// S. Timoshenko, "On the correction for shear of the differential equation for transverse vibrations of prismatic
    /// bars" (1921): the slope of the line is the turn of the section less V/GA. Of a determinate beam the turn is that
    /// of the beam that is stiff in shear.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2.5)]
    [InlineData(4)]
    public void At_BeamFlexibleInShear_SlopesLessByVOverGA(double place)
    {
        const double shear = 4e5;
        Load[] loads = [new Load.Distributed(0, 5, 300, 1800)];
        SectionState stiff = Solve(Beam([new Span(5, 2e6, 1e9)], [Support.Fixed(0)], loads)).At(place).Left;
        SectionState soft = Solve(Beam([new Span(5, 2e6, 1e9, shear)], [Support.Fixed(0)], loads)).At(place).Left;

        // V and M are those of the rest beyond, as above; the deflection grows by the area of V/GA.
        double rest = 5 - place;
        double here = 300 + 300 * place;
        double force = (here + 1800) / 2 * rest;
        double moment = -(here + 2 * 1800) / 6 * rest * rest;
        double momentAtTheClamp = -(300 + 2 * 1800) / 6.0 * 25;
        Equal(force, soft.Shear);
        Equal(moment, soft.Moment);
        Equal(-force / shear, soft.Slope - stiff.Slope, 1);
        Equal((moment - momentAtTheClamp) / shear, soft.Deflection - stiff.Deflection, 1);
    }
}
