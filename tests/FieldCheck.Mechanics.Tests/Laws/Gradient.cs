namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>A slope whose sine and cosine are fractions of whole numbers, so that rank can be found exactly.</summary>
internal readonly record struct Gradient(int Rise, int Run, int Hypotenuse)
{
    internal static readonly Gradient[] Drawn =
    [
        new(3, 4, 5), new(-3, 4, 5), new(4, 3, 5), new(-4, 3, 5), new(5, 12, 13), new(-5, 12, 13), new(-8, 15, 17),
    ];

    internal double Angle => Math.Atan2(Rise, Run);

    internal static Gradient Of(double angle) =>
        angle == 0 ? new Gradient(0, 1, 1) : Drawn.Concat(Drawn.Select(Turned)).First(one => one.Angle == angle);

    private static Gradient Turned(Gradient one) => one with { Rise = -one.Rise };
}
