using CsCheck;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Catalogue;

/// <summary>Catalogue files by chance: what is wrong is told at a place in them, and what is sound still loads.</summary>
public sealed class DamagedCatalogueTests
{
    private const string Name = "own.toml";
    private const int Entries = 3;

    private static readonly string[] Files =
        [.. ShippedFile.Texts("presets/sections/").Concat(ShippedFile.Texts("presets/materials/")).Select(Beginning)];

    private static readonly Gen<string> AnyFile = Gen.Int[0, Files.Length - 1].Select(number => Files[number]);

    private static readonly string[] Values =
        ["", "I", "round tube", "rectangle", "0 mm", "-3 in", "1e308 m", "4 kN", "12 in", "reference", "glulam", "235 N/mm2", "x"];

    // Words of such files, and texts that are none.
    private static readonly Gen<string> AnyValue =
        Gen.OneOf(Gen.Int[0, Values.Length - 1].Select(number => Values[number]), Damage.AnyBit, Gen.String);

    [Fact]
    public void DamagedFile_IsToldAtAPlaceInIt_AndWhatIsSoundOfItHasFigures() => Gen.Select(AnyFile, Damage.Some(1, 4)).Sample(
        (file, hits) =>
        {
            string text = Damage.On(file, hits);
            CatalogueFile read = CatalogueFile.Read(Name, text, "mine");
            if (!read.Problems.IsEmpty)
            {
                Damage.AssertTold(Name, text, read.Problems);
            }

            SectionCatalogue catalogue = SectionCatalogue.BuiltIn().With(read.Shapes, read.Grades);
            Assert.All(read.Shapes, shape =>
            {
                Assert.InRange(shape.Upright.Inertia!.Value, double.Epsilon, double.MaxValue);
                Assert.NotNull(catalogue.Shape(shape.Name));
            });
            Assert.All(read.Grades, grade =>
            {
                Assert.InRange(grade.Material.Modulus!.Value, double.Epsilon, double.MaxValue);
                Assert.NotNull(catalogue.Grade(grade.Name));
            });
        },
        iter: 200 * Damage.Longer);

    [Fact]
    public void CellThatDoesNotRead_IsToldInItsEntry_AndTheOthersLoad() => Gen.Select(AnyFile, Gen.Int[0, 1000], AnyValue).Sample(
        (file, number, value) =>
        {
            string[] lines = file.Split('\n');
            int[] cells = [.. Enumerable.Range(0, lines.Length).Where(line => IsCell(lines, line))];
            int cell = cells[number % cells.Length];
            int from = Array.FindLastIndex(lines, cell, IsHeader);
            int to = Array.FindIndex(lines, cell, IsHeader) is > 0 and int next ? next : lines.Length;
            string[] before = Names(CatalogueFile.Read(Name, file, "mine"));

            lines[cell] = $"{lines[cell].Split('=')[0]}= {TomlText.Quoted(value)}";
            CatalogueFile read = CatalogueFile.Read(Name, string.Join('\n', lines), "mine");

            Assert.All(read.Problems, problem => Assert.InRange(problem.Line, from + 1, to));
            Assert.Equal(Entries, before.Length);
            Assert.InRange(before.Except(Names(read)).Count(), 0, read.Problems.IsEmpty ? 0 : 1);
        },
        iter: 200 * Damage.Longer);

    private static string[] Names(CatalogueFile file) =>
        [.. file.Shapes.Select(shape => shape.Name), .. file.Grades.Select(grade => grade.Name)];

    /// <summary>A file with its first few entries.</summary>
    private static string Beginning(string text)
    {
        int end = 0;
        for (int entry = 0; entry <= Entries; entry++)
        {
            end = text.IndexOf("\n[", end + 1, StringComparison.Ordinal);
        }

        return text[..(end + 1)];
    }

    private static bool IsHeader(string line) => line.StartsWith('[');

    private static bool IsCell(string[] lines, int line) =>
        lines[line].Contains('=', StringComparison.Ordinal) && !lines[line].StartsWith('#') && Array.FindIndex(lines, IsHeader) < line;
}
