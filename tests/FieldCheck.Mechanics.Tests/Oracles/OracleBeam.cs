using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Oracles;

/// <summary>A beam and the figures that an oracle found for it.</summary>
internal sealed record OracleBeam(string Title, BeamModel Model, ImmutableArray<(string Name, double Value)> Figures)
{
    /// <summary>Holds every figure to a share of the largest figure of its kind on this beam.</summary>
    internal void HoldsWithin(double tolerance)
    {
        BeamResponse response = Answer.To(Model);
        Assert.NotEmpty(Figures);
        foreach (IGrouping<char, (string Name, double Value)> kind in Figures.GroupBy(figure => KindOf(figure.Name)))
        {
            double scale = kind.Max(figure => Math.Abs(figure.Value));
            foreach ((string name, double expected) in kind)
            {
                double actual = Computed(name, response);
                Assert.True(
                    Math.Abs(expected - actual) <= tolerance * scale,
                    string.Create(CultureInfo.InvariantCulture, $"{name}: {expected:R} against {actual:R}"));
            }
        }
    }

    // Forces along and across are of one kind: where one of them is nil, its rounding is that of the other.
    private static char KindOf(string name) => name[0] is 'H' or 'N' ? 'V' : name[0];

    private static double Computed(string name, BeamResponse response)
    {
        if (!name.Contains('@'))
        {
            Reaction reaction = response.Reactions[int.Parse(name[1..], CultureInfo.InvariantCulture)];
            return name[0] switch { 'H' => reaction.Horizontal, 'V' => reaction.Vertical, _ => reaction.Moment };
        }

        (SectionState left, SectionState right) = response.At(double.Parse(name[2..^1], CultureInfo.InvariantCulture));
        SectionState state = name[^1] == 'L' ? left : right;
        return name[0] switch
        {
            'N' => state.Axial,
            'V' => state.Shear,
            'M' => state.Moment,
            's' => state.Slope,
            'd' => state.Deflection,
            _ => throw new InvalidDataException($"Unknown figure {name}."),
        };
    }
}
