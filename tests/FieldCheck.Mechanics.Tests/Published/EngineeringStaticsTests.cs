namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Baker and Haynes: Engineering Statics, Open and Interactive, chapter 8.</summary>
public sealed class EngineeringStaticsTests
{
    internal const string Data = "03-engineering-statics-oer.toml";

    public static TheoryData<string, int, string> Values() => PublishedFile.Rows(Data);

    [Theory]
    [MemberData(nameof(Values))]
    public void Value_IsWithinThePrintedDigits(string id, int number, string what) =>
        PublishedCheck.Holds(Data, id, number, what);
}
