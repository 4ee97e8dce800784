using System.Diagnostics;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Says what was expected at a place of a file, and what was found there.</summary>
internal static class Expectation
{
    /// <summary>What may stand somewhere, as "a length, as "12 ft 6 in"".</summary>
    internal static string Of(Schema schema, KeyPath path) => schema switch
    {
        Schema.Table when path.Steps is [KeyStep.Into named, KeyStep.Into] =>
            $"a table with a name, headed [{named.Key}.NAME]",
        Schema.Cell cell => Of(cell.Wanted),
        Schema.Texts => "a list of key paths, as [\"span[1].length\"]",
        Schema.Figures figures => $"figures by name, as {{ {Example(figures.Wanted)} }}",
        Schema.TableRows { Inline: true } => "a list of tables, as [ { offset = \"0 m\", force = \"2 kN\" } ]",
        Schema.TableRows => $"rows, each headed [[{Shown(path)}]]",
        Schema.NamedTables => $"tables with names, each headed [{Shown(path)}.NAME]",
        Schema.Table when path.Steps[^1] is KeyStep.At => "a table",
        Schema.Table => $"a table headed [{Shown(path)}]",
        _ => throw new UnreachableException(),
    };

    /// <summary>What stands somewhere.</summary>
    internal static string Found(TomlNode node) => node switch
    {
        TomlTable { Form: TomlForm.Inline } => "a table in { }",
        TomlTable { Form: TomlForm.Header } => $"[{Shown(node.Path)}]",
        TomlTable => "a table",
        TomlList { UnderHeaders: true } => $"[[{Shown(node.Path)}]]",
        TomlList => "a list in [ ]",
        TomlCell { IsBare: true } cell => Reading.Found.Clipped(cell.Text),
        _ => "a text",
    };

    private static string Shown(KeyPath path) => FileProblem.Shown(path.ToString());

    private static string Of(Wanted wanted) => wanted switch
    {
        Wanted.OneOf words => $"one of {string.Join(", ", words.Words)}",
        Wanted.Measure measure => Of(measure.Kind),
        Wanted.LengthOr length => $"{Of(QuantityKind.Length)}, or \"{length.Word}\"",
        Wanted.PlaceOnBeam => "a place, as \"A + 4 ft\"",
        Wanted.SupportLabel => "a support's label, as \"A\"",
        Wanted.Name name => $"the name of a {name.Of}",
        Wanted.Whole whole => $"a whole number, {whole.Least} or more",
        Wanted.BareNumber => "a number, as 1.25",
        Wanted.Truth => "true or false",
        Wanted.ShareOfSpan => "a share of the span, as \"L/360\"",
        Wanted.ShareOr share => $"a share, as \"2 %\", or {Of(share.Kind)}",
        Wanted.TwoLengths => "two lengths, as \"24 in x 24 in\"",
        _ => "a text",
    };

    private static string Of(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => "a length, as \"12 ft 6 in\"",
        QuantityKind.Force => "a force, as \"1850 lbf\"",
        QuantityKind.ForcePerLength => "a force per length, as \"2.5 kN/m\"",
        QuantityKind.Pressure => "a pressure or stress, as \"50 psf\"",
        QuantityKind.Moment => "a moment, as \"12 kN·m\"",
        QuantityKind.Stiffness => "a spring's stiffness, as \"2 kN/mm\"",
        QuantityKind.RotationalStiffness => "a rotational stiffness, as \"30 kNm/rad\"",
        QuantityKind.Area => "an area, as \"8.84 in2\"",
        QuantityKind.SectionModulus => "a section modulus, as \"32.4 in3\"",
        QuantityKind.Inertia => "a second moment of area, as \"170 in4\"",
        QuantityKind.UnitWeight => "a mass or weight per volume, as \"420 kg/m3\"",
        QuantityKind.Angle => "an angle, as \"10 deg\"",
        QuantityKind.Number => "a number, as 1.25",
        QuantityKind.Share => "a share, as \"30 %\"",
        _ => throw new UnreachableException(),
    };

    private static string Example(Wanted wanted) => wanted is Wanted.ShareOfSpan ? "live = \"L/360\"" : "dead = 1.2";
}
