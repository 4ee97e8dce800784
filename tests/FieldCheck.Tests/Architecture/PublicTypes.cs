using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Pages;
using FieldCheck.Sheet;
using FieldCheck.Tests.Plain;

namespace FieldCheck.Tests.Architecture;

/// <summary>The public types of the projects, by namespace, with the first sentence of what their documentation says.</summary>
internal static partial class PublicTypes
{
    private static readonly Assembly[] Projects =
        [typeof(BeamModel).Assembly, typeof(Calculation).Assembly, typeof(RecordBuilder).Assembly, typeof(Program).Assembly];

    /// <summary>All of them but those that are the cases of another.</summary>
    internal static Type[] All { get; } = [.. Projects.SelectMany(project => project.GetExportedTypes()).Where(type => !type.IsNested)];

    /// <summary>The page that lists them.</summary>
    internal static IEnumerable<string> Page()
    {
        yield return "# Public types";
        yield return "";
        yield return "Written by a test from the compiled projects and their documentation; what each folder is for stands in [architecture.md](architecture.md).";
        yield return "A type that is one of the closed cases of another stands within that one and is not listed.";
        foreach (IGrouping<string, Type> folder in All.GroupBy(type => type.Namespace!).OrderBy(Rank))
        {
            yield return "";
            yield return $"## {folder.Key}";
            yield return "";
            yield return "| type | what it is |";
            yield return "| --- | --- |";
            foreach (Type type in folder.OrderBy(type => type.Name, StringComparer.Ordinal))
            {
                yield return $"| [{Name(type)}]({Source(type)}) | {Summary(type)} |";
            }
        }
    }

    /// <summary>A type's file, from docs: the one of its name, or the one of its folder that declares it.</summary>
    internal static string Source(Type type)
    {
        string project = type.Assembly.GetName().Name!;
        string folder = $"src/{project}{type.Namespace![project.Length..].Replace('.', '/')}";
        string file = File.Exists(Path.Combine(Repository.Root, folder, Name(type) + ".cs"))
            ? Name(type) + ".cs"
            : Directory.GetFiles(Path.Combine(Repository.Root, folder), "*.cs")
                .Where(path => Regex.IsMatch(File.ReadAllText(path), $@"^public .*\b{Name(type)}\b", RegexOptions.Multiline))
                .Select(path => Path.GetFileName(path))
                .Order(StringComparer.Ordinal)
                .First();
        return $"../{folder}/{file}";
    }

    private static string Name(Type type) => type.Name.Split('`')[0];

    private static (int Project, string Namespace) Rank(IGrouping<string, Type> folder) =>
        (Array.IndexOf(Projects, folder.First().Assembly), folder.Key);

    private static string Summary(Type type)
    {
        XElement? summary = Documentation(type.Assembly)
            .FirstOrDefault(member => member.Attribute("name")!.Value == "T:" + type.FullName)?.Element("summary");
        string text = Spaces().Replace(string.Concat(summary?.Nodes().Select(Words) ?? []), " ").Trim();
        return FirstSentence().Match(text).Value.Replace("|", "\\|", StringComparison.Ordinal);
    }

    private static string Words(XNode node) => node switch
    {
        XElement { Name.LocalName: "see" } see => see.Attribute("cref")!.Value.Split('.', ':', '`')[^1],
        XElement { Name.LocalName: "c" or "paramref" or "typeparamref" } code => code.Attribute("name")?.Value ?? code.Value,
        XElement other => other.Value,
        _ => node.ToString(),
    };

    private static IEnumerable<XElement> Documentation(Assembly project) =>
        XDocument.Load(Path.ChangeExtension(project.Location, ".xml")).Descendants("member");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"^.*?[.](?= [A-Z]|$)|^.*$")]
    private static partial Regex FirstSentence();
}
