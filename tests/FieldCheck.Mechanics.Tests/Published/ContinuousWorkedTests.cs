namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Kassimali, Singer and Pytel and other worked continuous beams; each case names its own source.</summary>
public sealed class ContinuousWorkedTests
{
    internal const string Data = "05-continuous-worked-and-settlement.toml";

    public static TheoryData<string, int, string> Values() => PublishedFile.Rows(Data);

    [Theory]
    [MemberData(nameof(Values))]
    public void Value_IsWithinThePrintedDigits(string id, int number, string what) =>
        PublishedCheck.Holds(Data, id, number, what);
}
