namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Lord, Richardson, Davison, Dillard: Strength of Materials (2026), worked examples.</summary>
public sealed class StrengthOfMaterialsExamplesTests
{
    internal const string Data = "02-strength-of-materials-oer-examples.toml";

    public static TheoryData<string, int, string> Values() => PublishedFile.Rows(Data);

    [Theory]
    [MemberData(nameof(Values))]
    public void Value_IsWithinThePrintedDigits(string id, int number, string what) =>
        PublishedCheck.Holds(Data, id, number, what);
}
