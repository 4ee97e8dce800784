using System.Collections.Immutable;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>The shipped catalogue with the person's own files beside it.</summary>
/// <param name="Catalogue">What a beam may name.</param>
/// <param name="Problems">What of the person's own files cannot be used, with the reason.</param>
public sealed record OwnCatalogue(SectionCatalogue Catalogue, ImmutableArray<FileProblem> Problems)
{
    private const string Pattern = "*.toml";

    /// <summary>Reads the person's own files; what cannot be used is left out and told.</summary>
    /// <param name="folders">Where they lie; a folder need not exist.</param>
    public static OwnCatalogue Read(params ImmutableArray<string> folders)
    {
        var shapes = ImmutableArray.CreateBuilder<CatalogueShape>();
        var grades = ImmutableArray.CreateBuilder<CatalogueGrade>();
        var problems = ImmutableArray.CreateBuilder<FileProblem>();
        Dictionary<string, string> fileOf = new(StringComparer.Ordinal);
        foreach (string path in folders.SelectMany(folder => FilesIn(folder, problems)))
        {
            CatalogueFile file = BeamFileOnDisk.FoundBytes(path) switch
            {
                Reading<byte[]>.Accepted bytes => CatalogueFile.ReadBytes(path, bytes.Value),
                Reading<byte[]>.Refused refused => CatalogueFile.Refused(FileProblem.OfWhole(path, refused.Text)),
                _ => throw new System.Diagnostics.UnreachableException(),
            };
            problems.AddRange(file.Problems);
            shapes.AddRange(file.Shapes
                .Where(shape => IsFirst(CatalogueContent.ShapeTable, shape.Name, path))
                .Select(shape => shape with { File = path }));
            grades.AddRange(file.Grades
                .Where(grade => IsFirst(CatalogueContent.GradeTable, grade.Name, path))
                .Select(grade => grade with { File = path }));
        }

        return new(SectionCatalogue.BuiltIn().With(shapes.ToImmutable(), grades.ToImmutable()), problems.ToImmutable());

        bool IsFirst(string table, string name, string path)
        {
            string key = table + "." + CatalogueName.Plain(name);
            bool isFirst = fileOf.TryAdd(key, path);
            if (!isFirst)
            {
                problems.Add(FileProblem.OfWhole(path, CatalogueText.StandsAlready(name, fileOf[key])));
            }

            return isFirst;
        }
    }

    private static ImmutableArray<string> FilesIn(string folder, ImmutableArray<FileProblem>.Builder problems)
    {
        if (!Directory.Exists(folder))
        {
            return [];
        }

        try
        {
            return [.. Directory.GetFiles(folder, Pattern).Order(StringComparer.Ordinal)];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            problems.Add(FileProblem.OfWhole(folder, DiskFault.OfFolder(problem)));
            return [];
        }
    }
}
