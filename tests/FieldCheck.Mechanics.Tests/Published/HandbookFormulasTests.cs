namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Hicks, Fig. 2.2, and handbook beam formulas; each case names its own source, many from memory.</summary>
public sealed class HandbookFormulasTests
{
    internal const string Data = "07-handbook-formulas.toml";

    public static TheoryData<string, int, string> Values() => PublishedFile.Rows(Data);

    [Theory]
    [MemberData(nameof(Values))]
    public void Value_IsWithinThePrintedDigits(string id, int number, string what) =>
        PublishedCheck.Holds(Data, id, number, what);
}
