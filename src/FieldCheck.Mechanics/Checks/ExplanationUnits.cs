namespace FieldCheck.Mechanics.Checks;

/// <summary>Tries figures that stand at the wrong ends, without their sense or in wrong units, and lengths in wrong units.</summary>
internal static class ExplanationUnits
{
    private static readonly (UnitMixUp Force, UnitMixUp Moment)[] OfFigures =
    [
        (UnitMixUp.Thousand, UnitMixUp.Thousand),
        (UnitMixUp.KilonewtonAndKip, UnitMixUp.NewtonMetreAndPoundFoot),
        (UnitMixUp.NewtonAndKilogram, UnitMixUp.NewtonAndKilogram),
        (UnitMixUp.PoundAndKilogram, UnitMixUp.PoundFootAndKilogramMetre),
    ];

    internal static void Try(ExplanationBeam beam, ExplanationList found)
    {
        found.Add(new Slip.EndsSwapped(), 2, Swapped(beam));
        found.Add(new Slip.SenseLeftOut(), 2, [.. beam.Computed.Select(Math.Abs)]);
        foreach ((UnitMixUp force, UnitMixUp moment) in OfFigures)
        {
            found.Add(new Slip.FigureUnits(force, true), 2, Scaled(beam, force.Ratio(), moment.Ratio()));
            found.Add(new Slip.FigureUnits(force, false), 2, Scaled(beam, 1 / force.Ratio(), 1 / moment.Ratio()));
        }

        foreach (UnitMixUp units in ExplanationLengths.Units)
        {
            double ratio = units.Ratio();
            if (beam.Stated.Figures.Any(figure => figure.Part == ReactionPart.Moment))
            {
                found.Add(new Slip.MomentUnits(units, true), 2, Scaled(beam, 1, ratio));
                found.Add(new Slip.MomentUnits(units, false), 2, Scaled(beam, 1, 1 / ratio));
            }

            found.Add(new Slip.LengthUnits(units, true), 2, ExplanationLengths.Stretched(beam, ratio));
            found.Add(new Slip.LengthUnits(units, false), 2, ExplanationLengths.Stretched(beam, 1 / ratio));
        }
    }

    private static double[] Scaled(ExplanationBeam beam, double force, double moment) =>
    [
        .. beam.Computed.Select((figure, index) =>
            figure * (beam.Stated.Figures[index].Part == ReactionPart.Moment ? moment : force)),
    ];

    /// <summary>Seen from the other side, what pushes right pushes left and turns the other way.</summary>
    private static double[] Swapped(ExplanationBeam beam) =>
    [
        .. beam.Stated.Figures.Select(figure =>
            (figure.Part == ReactionPart.Vertical ? 1 : -1)
            * ExplanationFigures.Of(beam.Reactions[^(figure.Support + 1)], figure.Part)),
    ];
}
