using System.Collections.Immutable;
using System.Text;
using CsCheck;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Tests.Building;
using FieldCheck.Sheet.Tests.Catalogue;

namespace FieldCheck.Sheet.Tests.CombinationSets;

/// <summary>Files of sets by chance: a set or what is wrong, told at a place in the file; other files are still found.</summary>
public sealed class DamagedSetsTests
{
    private const string Name = "own.toml";

    private static readonly string[] Files = [.. ShippedFile.Texts("presets/combinations/")];

    private static readonly Gen<string> AnyDamaged = Gen.Select(Gen.Int[0, Files.Length - 1], Damage.Some(1, 4))
        .Select((number, hits) => Damage.On(Files[number], hits));

    private static readonly BeamDocument Beam = CombinationSetTests.Beam("dead", "live", "roof_live", "snow", "rain", "wind", "earthquake");

    [Fact]
    public void DamagedFile_IsASetWhoseRowsRead_OrToldAtAPlaceInIt() => AnyDamaged.Sample(
        text =>
        {
            SetDocument? read = SetReader.Read(Name, text, out ImmutableArray<FileProblem> problems);
            Assert.Equal(read is null, !problems.IsEmpty);
            if (read is null)
            {
                Damage.AssertTold(Name, text, problems);
                return;
            }

            Assert.All(CombinationSet.Of("own", PresetPlace.Personal, Name, read), set =>
            {
                CombinationSetRows rows = set.For(Beam);
                Assert.Equal(
                    rows.Rows.Length, Beams.Built(Beam with { Combinations = rows.AddedTo([]) }).Model.Combinations.Length);
            });
        },
        iter: 150 * Damage.Longer);

    [Fact]
    public void DamagedFile_LeavesTheOthersToBeFound() => AnyDamaged.Sample(
        text =>
        {
            DirectoryInfo folder = Directory.CreateTempSubdirectory("fieldcheck-");
            try
            {
                string damaged = Path.Combine(folder.FullName, "damaged.toml");
                File.WriteAllBytes(damaged, Encoding.UTF8.GetBytes(text));
                File.WriteAllText(Path.Combine(folder.FullName, "sound.toml"), Files[0]);

                CombinationSearch found = new CombinationLibrary(folder.FullName, []).Search();

                Assert.Contains(found.Sets, set => set.Path == Path.Combine(folder.FullName, "sound.toml"));
                Assert.All(found.Unreadable, problem => Assert.Equal(damaged, problem.File));
                Assert.Equal(found.Unreadable.IsEmpty, found.Sets.Any(set => set.Path == damaged));
            }
            finally
            {
                folder.Delete(recursive: true);
            }
        },
        iter: 40 * Damage.Longer);
}
