namespace FieldCheck.Tests.Screen;

/// <summary>What changes the result and has no column is seen in the form all the same.</summary>
public sealed class RowMoreTests
{
    [Fact]
    public void AnAngle_IsMarkedInItsRow_AndSaidWhereThereIsRoom()
    {
        Desk desk = new Desk().Press("^N 4 Enter PgDn PgDn Down 10 Tab 2 Enter Up / m -30 Space deg Enter Esc");

        Assert.Equal("-30 deg", desk.State.Document.Loads[0].Angle);
        Assert.Contains("~1", desk.Picture, StringComparison.Ordinal);
        Assert.Contains("angle -30 deg", desk.Show(160, 40).ToString(), StringComparison.Ordinal);
        Assert.Contains("/", SketchRow(desk), StringComparison.Ordinal);
    }

    [Fact]
    public void ARowWithNothingMore_HasNoMark() =>
        Assert.DoesNotContain("~1", new Desk().Press("^N 4 Enter PgDn PgDn Down 10 Tab 2 Enter").Picture, StringComparison.Ordinal);

    private static string SketchRow(Desk desk)
    {
        string[] lines = desk.Show(80, 24).ToString().Split('\n');
        return lines[Array.FindIndex(lines, line => line.Contains("=====", StringComparison.Ordinal)) - 1];
    }
}
