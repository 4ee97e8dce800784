namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Hibbeler, SiliconWit lessons and other worked problems; each case names its own source.</summary>
public sealed class TextbookProblemsTests
{
    internal const string Data = "04-textbook-problems.toml";

    public static TheoryData<string, int, string> Values() => PublishedFile.Rows(Data);

    [Theory]
    [MemberData(nameof(Values))]
    public void Value_IsWithinThePrintedDigits(string id, int number, string what) =>
        PublishedCheck.Holds(Data, id, number, what);
}
