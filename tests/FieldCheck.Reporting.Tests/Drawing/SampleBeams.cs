namespace FieldCheck.Reporting.Tests.Drawing;

/// <summary>Beams that several tests draw.</summary>
internal static class SampleBeams
{
    /// <summary>
    /// 3.60 m on supports at 0.30 and 2.70, 0.25 kN/m throughout, two stacks of 12 kN/m, 1.5 kN near the tip.
    /// By hand: A 9.90 kN, B 16.50 kN, V +9.825, -13.575, +2.925 kN, M +6.805 at 1.396 m, -1.211 kNm at B.
    /// </summary>
    internal static HandBeam Trench { get; } = new(
        3.60,
        0.30,
        2.70,
        [new Spread(0, 3.60, 250), new Spread(0.60, 1.60, 12000), new Spread(1.80, 2.80, 12000)],
        [new Force(3.40, 1500)]);

    /// <summary>4 m on supports at 0 and 3; 5 kN at 1, 8 kN at 2, 2 kN at 4. By hand: A 16/3 kN, B 29/3 kN.</summary>
    internal static HandBeam PointLoads { get; } =
        new(4, 0, 3, [], [new Force(1, 5000), new Force(2, 8000), new Force(4, 2000)]);

    /// <summary>4 m on its two ends, 12 kN/m throughout.</summary>
    internal static HandBeam Simple { get; } = new(4, 0, 4, [new Spread(0, 4, 12000)], []);
}
