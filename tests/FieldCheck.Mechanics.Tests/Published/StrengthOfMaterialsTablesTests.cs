namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Lord, Richardson, Davison, Dillard: Strength of Materials (2026), Appendix B.</summary>
public sealed class StrengthOfMaterialsTablesTests
{
    internal const string Data = "01-strength-of-materials-oer-appendix-b.toml";

    public static TheoryData<string, int, string> Values() => PublishedFile.Rows(Data);

    [Theory]
    [MemberData(nameof(Values))]
    public void Value_IsWithinThePrintedDigits(string id, int number, string what) =>
        PublishedCheck.Holds(Data, id, number, what);
}
