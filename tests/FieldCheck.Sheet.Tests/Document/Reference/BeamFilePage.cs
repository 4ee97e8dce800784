using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>The tables of docs/beam-file.md that list every key.</summary>
internal static class BeamFilePage
{
    internal static IEnumerable<string> Lines()
    {
        foreach (IGrouping<string, (string Path, Wanted Wanted)> table in BeamFileKeys.All().GroupBy(cell => Table(cell.Path)))
        {
            yield return "";
            yield return $"### {Heading(table.Key)}";
            yield return "";
            string key = table.Key.TrimEnd('[', ']', '.', '*');
            if (KeyNotes.Tables.TryGetValue(key, out string? says))
            {
                yield return says;
                yield return "";
            }

            yield return "| key | takes | SI, US | meaning | not written | example |";
            yield return "| --- | --- | --- | --- | --- | --- |";
            if (table.Key.Length == 0)
            {
                yield return "| `format`* | the number 1 | | Version of this format. | refused | `1` |";
            }

            foreach ((string path, Wanted wanted) in table)
            {
                yield return Row(path, wanted);
            }
        }
    }

    private static string Row(string path, Wanted wanted)
    {
        KeyNote note = KeyNotes.All.Single(note => note.Path == path);
        string key = path[Table(path).Length..].TrimStart('.').Replace("[]", "", StringComparison.Ordinal);
        string shown = key.EndsWith('*') ? key[..^1] + "NAME" : key;
        string mark = Required.Marks(Table(path), key.Split('.')[0]) ? "*" : "";
        bool isList = path == "ask[]";
        return $"| `{shown}`{mark} | {(isList ? "list of texts" : Takes(wanted))} | {Units(path, wanted)} | {note.Says} | {note.Default} | `{(isList ? $"[{note.Example}]" : note.Example)}` |";
    }

    /// <summary>The table of a cell: that of the header under which it is written.</summary>
    private static string Table(string path) => path.Split('.') switch
    {
        ["rolling[]", "axles[]", ..] => "rolling[].axles[]",
        ["section" or "material", "*", ..] steps => steps[0] + ".*",
        ["ask[]"] or ["rename", ..] or [_] => "",
        string[] steps => steps[0],
    };

    private static string Heading(string table) => table switch
    {
        "" => "Top of the file",
        "rolling[].axles[]" => "`axles` of `[[rolling]]`",
        _ when table.EndsWith("[]", StringComparison.Ordinal) => $"`[[{table[..^2]}]]`",
        _ when table.EndsWith(".*", StringComparison.Ordinal) => $"`[{table[..^2]}.NAME]`",
        _ => $"`[{table}]`",
    };

    private static string Takes(Wanted wanted) => wanted switch
    {
        Wanted.FreeText => "text",
        Wanted.OneOf of => string.Join(", ", of.Words.Select(word => $"\"{word}\"")),
        Wanted.Measure of => Kind(of.Kind),
        Wanted.LengthOr of => $"length or \"{of.Word}\"",
        Wanted.PlaceOnBeam => "place",
        Wanted.SupportLabel => "label",
        Wanted.Name of => $"name of a {of.Of}",
        Wanted.Whole of => $"whole number, {of.Least} or more",
        Wanted.BareNumber => "number",
        Wanted.Truth => "true or false",
        Wanted.ShareOfSpan => "share of the span",
        Wanted.ShareOr of => $"share or {Kind(of.Kind)}",
        Wanted.TwoLengths => "two lengths",
        _ => throw new InvalidDataException(wanted.ToString()),
    };

    private static string Units(string path, Wanted wanted) => wanted switch
    {
        Wanted.Measure or Wanted.LengthOr or Wanted.PlaceOnBeam => Both(system => Typed(path, system)),
        Wanted.TwoLengths => Both(CellUnits.ShortLength),
        Wanted.ShareOr of => "%; " + Both(system => CellUnits.Of(of.Kind, system)),
        _ => "",
    };

    private static string Both(Func<UnitSystem, string> unit)
    {
        (string si, string us) = (unit(UnitSystem.Si), unit(UnitSystem.Us));
        return si == us ? si : $"{si}, {us}";
    }

    /// <summary>The unit that the form puts to a bare number typed for a key.</summary>
    private static string Typed(string path, UnitSystem system)
    {
        string key = path.Replace("[]", "[1]", StringComparison.Ordinal)
            .Replace("section.*", "section.bearer", StringComparison.Ordinal)
            .Replace("material.*", "material.timber", StringComparison.Ordinal);
        BeamDocument beam = FullBeam.Document with { Display = system == UnitSystem.Us ? "us" : "si" };
        return DocumentCells.Get(KeyEdits.Type(beam, key, "2"), key)![2..];
    }

    private static string Kind(QuantityKind kind) => kind switch
    {
        QuantityKind.ForcePerLength => "force per length",
        QuantityKind.Pressure => "pressure or stress",
        QuantityKind.RotationalStiffness => "rotational stiffness",
        QuantityKind.SectionModulus => "section modulus",
        QuantityKind.Inertia => "second moment of area",
        QuantityKind.UnitWeight => "mass or weight per volume",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
