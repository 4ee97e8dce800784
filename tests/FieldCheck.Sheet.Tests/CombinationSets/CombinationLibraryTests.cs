using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.CombinationSets;

public sealed class CombinationLibraryTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    [Fact]
    public void OwnSet_StandsAfterTheBuiltInOnes_AndGivesItsRows()
    {
        Write("yard.toml", """
            title = "Yard rules"
            [[combination]]
            factors = { dead = 1.0, "psi0 leading" = 1.5, stack = "2 * 0.6" }
            [[psi]]
            case = "live"
            psi0 = 0.8
            """);

        CombinationSearch found = Search();

        CombinationSet set = found.Sets[^1];
        Assert.Empty(found.Unreadable);
        Assert.Equal(("yard", "Yard rules", PresetPlace.Personal), (set.Name, set.Title, set.Place));
        Assert.Equal(CombinationLibrary.BuiltIn().Length + 1, found.Sets.Length);
        Assert.Equal(
            ["dead + 1.2 live + 1.2 stack"],
            set.For(CombinationSetTests.Beam("dead", "live", "stack")).Rows.Select(row => row.Entry.Name));
    }

    // Each choice of one row for every case is a set: of 30 cases with two rows there would be a thousand million.
    [Fact]
    public void FileOfTooManySets_IsRefused()
    {
        string cases = string.Concat(Enumerable.Range(1, 30).Select(number => $"""
            [[psi]]
            case = "c{number}"
            psi0 = 0.5
            [[psi]]
            case = "c{number}"
            psi0 = 0.7

            """));
        Write("many.toml", "[[combination]]\nfactors = { dead = 1.0, others = 1.5 }\n" + cases);

        FileProblem problem = Assert.Single(Search().Unreadable);

        Assert.Equal("every choice of one row for each case is a set of its own: at most 100 sets in a file", problem.Text);
        Assert.Equal("psi[1]", problem.Key);
    }

    [Fact]
    public void RowOfTooManyChoices_IsRefused()
    {
        string factors = string.Join(", ", Enumerable.Range(1, 30).Select(number => $"\"a{number} or b{number}\" = 1.5"));
        Write("many.toml", $"[[combination]]\nfactors = {{ {factors} }}\n");

        Assert.Equal(
            "every choice among cases joined by or is a combination: at most 256 of one row",
            Assert.Single(Search().Unreadable).Text);
    }

    [Fact]
    public void NegativeFactor_IsSaidAsOne()
    {
        Write("push.toml", "[[combination]]\nfactors = { dead = 0.9, wind = -1.5, snow = -1 }\n");

        Assert.Equal(
            ["0.9 dead - 1.5 wind - snow"],
            Search().Sets[^1].For(CombinationSetTests.Beam("dead", "wind", "snow")).Rows.Select(row => row.Entry.Name));
    }

    [Theory]
    [InlineData("[[combination]]\nbasis = \"limit\"\nfactors = { dead = 1 }", 2, "combination[1].basis")]
    [InlineData("title = \"x\"\n[[combination]]\n", 2, "combination[1].factors")]
    [InlineData("[[combination]]\nfactors = { leading = 1 }", 2, "combination[1].factors.leading")]
    [InlineData("[[combination]]\nfactors = { dead = \"1 kN\" }", 2, "combination[1].factors.dead")]
    [InlineData("[[combination]]\nfactors = { dead = 1 }\n[[psi]]\npsi0 = 0.7", 3, "psi[1].case")]
    [InlineData("[[combination]]\nfactors = { dead = 1 }\n[[psi]]\ncase = \"live\"\npsi0 = \"x\"", 5, "psi[1].psi0")]
    [InlineData("[[combination]]\nfactor = { dead = 1 }", 2, "combination[1].factor")]
    [InlineData("[[combination]\n", 1, "combination[1]")]
    public void SetThatCannotBeUsed_IsToldWithItsPlace(string text, int line, string key)
    {
        string path = Write("wrong.toml", text);

        CombinationSearch found = Search();

        Assert.Equal(CombinationLibrary.BuiltIn().Length, found.Sets.Length);
        FileProblem problem = found.Unreadable[0];
        Assert.Equal((path, line, key), (problem.File, problem.Line, problem.Key));
        Assert.NotEmpty(problem.Text);
    }

    [Theory]
    [InlineData(8, true)]
    [InlineData(9, false)]
    public void EveryChoiceOfTooManyCases_IsRefused(int variable, bool isRead)
    {
        string psi = string.Concat(Enumerable.Range(1, variable).Select(number => $"[[psi]]\ncase = \"v{number}\"\npsi0 = 0.5\n"));
        Write("many.toml", "[[combination]]\nfactors = { leading = 1, \"psi0 some others\" = 1 }\n" + psi);

        CombinationSearch found = Search();

        string[] problems = isRead ? [] : ["combination[1].factors.\"psi0 some others\""];
        Assert.Equal(problems, found.Unreadable.Select(problem => problem.Key));
        Assert.Equal(isRead ? 128 : 0, found.Sets.Where(set => set.Name == "many")
            .Sum(set => set.For(CombinationSetTests.Beam([.. Enumerable.Range(1, 8).Select(number => $"v{number}")])).Rows.Length) / 8);
    }

    [Fact]
    public void BytesThatAreNoText_AreTold()
    {
        string path = Path.Combine(_folder.FullName, "bytes.toml");
        File.WriteAllBytes(path, [0x23, 0xff, 0xfe]);

        Assert.Equal("this is not UTF-8 text; save the file as UTF-8", Assert.Single(Search().Unreadable).Text);
    }

    [Fact]
    public void FoldersThatDoNotExist_HoldNothing() => Assert.Equal(
        CombinationLibrary.BuiltIn().Length,
        new CombinationLibrary(Path.Combine(_folder.FullName, "none"), []).Search().Sets.Length);

    public void Dispose() => _folder.Delete(recursive: true);

    private CombinationSearch Search() => new CombinationLibrary(_folder.FullName, []).Search();

    private string Write(string name, string text)
    {
        string path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
