using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace FieldCheck.Mechanics;

/// <summary>Checks what a caller promised. A failure is a bug in the caller, never a mistake of the user's.</summary>
internal static class Require
{
    internal static double Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "Must be finite.");

    internal static double Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        Finite(value, name) > 0 ? value : throw new ArgumentOutOfRangeException(name, value, "Must be positive.");

    internal static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        Finite(value, name) >= 0 ? value : throw new ArgumentOutOfRangeException(name, value, "Must not be negative.");

    internal static double GreaterThan(
        double value, double bound, [CallerArgumentExpression(nameof(value))] string name = "") =>
        Finite(value, name) > bound
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"Must be greater than {bound}.");

    internal static double Between(
        double value, double low, double high, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value > low && value < high
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"Must lie between {low} and {high}.");

    internal static ImmutableArray<T> NotEmpty<T>(
        ImmutableArray<T> values, [CallerArgumentExpression(nameof(values))] string name = "") =>
        !values.IsDefaultOrEmpty ? values : throw new ArgumentException("Must hold at least one.", name);

    internal static void Given<T>(ImmutableArray<T> values, string name)
    {
        if (values.IsDefault)
        {
            throw new ArgumentException("Must be given, if only empty.", name);
        }
    }

    internal static void That(bool holds, string rule, string name)
    {
        if (!holds)
        {
            throw new ArgumentException(rule, name);
        }
    }
}
