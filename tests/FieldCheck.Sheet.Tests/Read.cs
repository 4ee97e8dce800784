using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests;

/// <summary>Takes a reading apart, and fails with what was said when it is not of the expected sort.</summary>
internal static class Read
{
    internal static T Accepted<T>(Reading<T> reading)
    {
        if (reading is Reading<T>.Refused refused)
        {
            Assert.Fail($"refused at {refused.Offset}: {refused.Text}");
        }

        return Assert.IsType<Reading<T>.Accepted>(reading).Value;
    }

    internal static Reading<T>.Refused Refused<T>(Reading<T> reading) => Assert.IsType<Reading<T>.Refused>(reading);

    internal static double Value(string text, QuantityKind kind) => Accepted(QuantityReader.Read(text, kind)).Value;

    internal static void IsWithin(double relative, double expected, double actual) =>
        Assert.InRange(actual, expected - (Math.Abs(expected) * relative), expected + (Math.Abs(expected) * relative));
}
