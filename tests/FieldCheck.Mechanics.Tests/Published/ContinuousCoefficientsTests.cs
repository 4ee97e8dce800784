namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Hicks, Table 2.1, and coefficient tables for equal spans; each case names its own source.</summary>
public sealed class ContinuousCoefficientsTests
{
    internal const string Data = "06-continuous-coefficients.toml";

    public static TheoryData<string, int, string> Values() => PublishedFile.Rows(Data);

    [Theory]
    [MemberData(nameof(Values))]
    public void Value_IsWithinThePrintedDigits(string id, int number, string what) =>
        PublishedCheck.Holds(Data, id, number, what);
}
