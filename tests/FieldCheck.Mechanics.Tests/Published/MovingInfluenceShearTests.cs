namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Moving loads, an influence line and shear deflection; each case names its own source.</summary>
public sealed class MovingInfluenceShearTests
{
    internal const string Data = "08-moving-influence-shear.toml";

    public static TheoryData<string, int, string> Values() => PublishedFile.Rows(Data);

    [Theory]
    [MemberData(nameof(Values))]
    public void Value_IsWithinThePrintedDigits(string id, int number, string what) =>
        PublishedCheck.Holds(Data, id, number, what);
}
