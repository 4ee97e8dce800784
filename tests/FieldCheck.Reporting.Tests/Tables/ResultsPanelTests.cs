using FieldCheck.Reporting.Tables;

namespace FieldCheck.Reporting.Tests.Tables;

public sealed class ResultsPanelTests
{
    [Theory]
    [InlineData(38, 9)]
    [InlineData(38, 6)]
    [InlineData(60, 14)]
    public void TheTrenchBearer_IsThePicture(int width, int height) =>
        Picture.Matches($"panel-trench-{width}x{height}", ResultsPanel.Lines(Sheets.Trench(), width, height));
}
