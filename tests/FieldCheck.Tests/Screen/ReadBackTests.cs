using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Tests.Screen;

/// <summary>What is typed is said back in words, with its kind and in the other system. Figures by hand.</summary>
public sealed class ReadBackTests
{
    /// <summary>On a beam of 5 m with B at 3 m: what is typed in one cell of a load after another, and what is said.</summary>
    [Theory]
    [InlineData("12 Tab 3 Tab", "Load 1 from: 12 kN at 3 m = 9.843 ft")]
    [InlineData("12 Tab 3 Enter Up", "Load 1 size: point load, 12 kN = 2.698 kip at 3.00 m")]
    [InlineData("-12 Tab 3 Enter Up", "Load 1 size: point load, -12 kN = -2.698 kip at 3.00 m, upward")]
    [InlineData("12/m Enter Up", "Load 1 size: spread, 12 kN/m over 5.00 m = 60.00 kN in all")]
    [InlineData("-12/m Enter Up", "Load 1 size: spread, -12 kN/m over 5.00 m = -60.00 kN in all, upward")]
    [InlineData("3..6/m Enter Up", "Load 1 size: varies, 3 kN/m..6 kN/m over 5.00 m = 22.50 kN in all")]
    [InlineData("\"5 kNm\" Tab 1 Enter Up", "Load 1 size: couple, 5 kNm = 3.688 kip-ft at 1.00 m, counter-clockwise")]
    [InlineData("\"-5 kNm\" Tab 1 Enter Up", "Load 1 size: couple, -5 kNm = -3.688 kip-ft at 1.00 m, clockwise")]
    [InlineData("1.2t Tab 1 Enter Up", "Load 1 size: point load, weight of 1.2t = 11.77 kN at 1.00 m")]
    [InlineData("1.2t Tab 600mm Tab 1.6 Enter Up", "Load 1 size: spread, weight of 1.2t over 1.00 m = 11.77 kN in all")]
    [InlineData("1.2t Tab 600mm Tab 1.6 Enter", "Load 1 to: 1.6 m = 5.249 ft; weight of 1.2t over 1.00 m = 11.77 kN in all")]
    [InlineData("\"2 kPa * 3 m\" Enter Up", "Load 1 size: spread, 2 kPa * 3 m over 5.00 m = 30.00 kN in all")]
    [InlineData("4 Tab \"4 ft\" Tab", "Load 1 from: 4 kN at 4 ft = 1.219 m")]
    [InlineData("4 Tab \"B + 2 ft\" Tab", "Load 1 from: 4 kN at B + 2 ft = 11.843 ft = 3.61 m")]
    [InlineData("4 Tab \"joint 1\" Tab", "Load 1 from: 4 kN at joint 1 = 5 m = 16.404 ft")]
    [InlineData("4 Tab \"mid 1\" Tab", "Load 1 from: 4 kN at mid 1 = 2.5 m = 8.202 ft")]
    [InlineData("\"2 * 1.2 kN + 300 N\" Tab end Tab", "Load 1 from: 2 * 1.2 kN + 300 N at end = 5 m = 16.404 ft")]
    [InlineData("7 Tab 1 Tab 3 Enter", "Load 1 to: 7 over 2.00 m:  t = 7 kN in all   m = 7 kN on each metre")]
    [InlineData("7 Tab 1 Tab 3 Enter t", "Load 1 to: 3 m = 9.843 ft; 7 kN over 2.00 m = 7.00 kN in all")]
    public void LoadTyped_IsSaidBackWithItsKind(string keys, string said)
    {
        Desk desk = new Desk().Press("5 Enter").Press("PgDn Down 3 Enter").Press("PgDn").Press(keys);

        Assert.Equal(said, desk.Says);
    }

    [Theory]
    [InlineData("\"12.5 ft\"", "Span 1 length: 12.5 ft = 3.81 m")]
    [InlineData("3600mm", "Span 1 length: 3600mm = 3.6 m = 11.811 ft")]
    [InlineData("~12'-6 1/2\"~", "Span 1 length: 12'-6 1/2\" = 12.542 ft = 3.823 m")]
    [InlineData("\"(3 m + 250 mm) / 2\"", "Span 1 length: (3 m + 250 mm) / 2 = 1.625 m = 5.331 ft")]
    public void LengthTyped_IsSaidBackInBothSystems(string keys, string said) =>
        Assert.Equal(said, new Desk().Press(keys + " Enter").Says);

    /// <summary>What a cell takes is said in one line of 80 columns behind the longest name of a row.</summary>
    [Fact]
    public void EveryHint_FitsTheLine()
    {
        ScreenState state = new Desk(Beams.FiftyLoads, new BeamOrigin("bay")).State;
        foreach (FormBlock block in Enum.GetValues<FormBlock>())
        {
            foreach (FormColumn column in FormColumns.Of(state.Document, block))
            {
                FormPlace empty = new(block, state.Sheet.RowsOf(block), column);
                string line = $"{FormWords.Cell(state.Sheet, empty)}: {CellHints.Of(empty)}";
                Assert.True(line.Length <= 80, line);
            }
        }
    }

    /// <summary>What a paste could not place is said: nothing typed or pasted goes unseen.</summary>
    [Theory]
    [InlineData("~12 kN\t1.5\t\tdead\tpump~", "Pasted 1 row. ^Z takes them away again.")]
    [InlineData("End ~12 kN\t1.5\t\tdead\tpump\n5\n~", "Pasted 2 rows; 3 cells had no column right of here.")]
    [InlineData("End ~pump\tspare~", "Pasted 1 row; 1 cell had no column right of here.")]
    public void Paste_SaysWhatFoundNoPlace(string keys, string said) =>
        Assert.Equal(said, new Desk(Beams.Trench, new BeamOrigin("bay")).Press("PgDn PgDn " + keys).Says);

    /// <summary>The whole of a text opened for editing is seen, with the cursor behind it.</summary>
    [Fact]
    public void CellEdited_IsSeenFromItsFirstLetter()
    {
        Desk desk = new Desk(Beams.FiftyLoads, new BeamOrigin("bay")).Press("PgDn PgDn Down Down Down Down F2");

        Assert.Contains("[250 kg ]", desk.Picture, StringComparison.Ordinal);
    }

    /// <summary>Signs of any width and invisible ones leave the columns where they are.</summary>
    [Theory]
    [InlineData("梁 é 👷🏽‍♀️")]
    [InlineData("e\u0301\u0301\u200d\u202e")]
    [InlineData("👩‍👩‍👧‍👦")]
    public void AnyNote_KeepsTheBracketsInTheirColumns(string note)
    {
        Desk desk = new Desk(Beams.Trench, new BeamOrigin("bay")).Press("PgDn PgDn End").Press($"~{note}~");
        foreach (string keys in new[] { "Left", "Enter Up", "Left Left Left" })
        {
            Picture picture = desk.Show(120, 40);
            string line = picture.Lines[picture.Cursor!.Value.Y].ToString();
            Assert.Equal(1, line.Count(sign => sign == ']'));
            Assert.Equal('|', TextColumns.Cut(line, 65)[^1]);
            desk.Press(keys);
        }
    }
}
