using System.Collections.Immutable;
using System.Diagnostics;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Editing;

/// <summary>The cells of a support's row.</summary>
internal static partial class SupportCells
{
    internal static ImmutableArray<string> Kinds { get; } = ["pin", "roller", "fixed", "guide", "spring"];

    internal static ImmutableArray<string> Actions { get; } = ["both", "up", "down"];

    internal static string? TextOf(SupportEntry support, FormColumn column) => column switch
    {
        FormColumn.Place => support.Joint is string joint ? "joint " + joint : support.At,
        FormColumn.Kind => KindText(support),
        FormColumn.Settles => support.Settlement,
        FormColumn.Acts => support.Acts,
        FormColumn.Label => support.Label,
        _ => throw new UnreachableException(),
    };

    internal static SupportEntry Type(
        SupportEntry support, FormColumn column, string? text, UnitSystem system) => column switch
        {
            FormColumn.Place => TypePlace(support, text, system),
            FormColumn.Kind => TypeKind(support, text, system),
            FormColumn.Settles => support with
            {
                Settlement = text is null ? null : CellShorthand.Expand(text, CellUnits.ShortLength(system)),
            },
            FormColumn.Acts => support with { Acts = text is null ? null : Whole(text, Actions) },
            FormColumn.Label => support with { Label = text },
            _ => throw new UnreachableException(),
        };

    internal static FormColumn ColumnOf(string key) => key switch
    {
        "joint" or "at" or "" => FormColumn.Place,
        "settlement" => FormColumn.Settles,
        "acts" => FormColumn.Acts,
        "label" => FormColumn.Label,
        _ => FormColumn.Kind,
    };

    /// <summary>The one word that begins so; the text itself where none or several do.</summary>
    internal static string Whole(string text, ImmutableArray<string> words)
    {
        string[] begun = [.. words.Where(word => word.StartsWith(text, StringComparison.OrdinalIgnoreCase))];
        return begun.Length == 1 ? begun[0] : text;
    }

    private static string? KindText(SupportEntry support)
    {
        string? figure = support.Surface ?? support.Stiffness;
        return figure is null ? support.Kind : $"{support.Kind} {figure}";
    }

    private static SupportEntry TypePlace(SupportEntry support, string? text, UnitSystem system)
    {
        if (text is null)
        {
            return support with { Joint = null, At = null };
        }

        // A file may write at = "joint 1", and a place tied to a span that went becomes one: accepted again, it stays so.
        if (support.Joint is null && support.At == text)
        {
            return support;
        }

        Match joint = OneJoint().Match(text);
        return joint.Success
            ? support with { Joint = joint.Groups["number"].Value, At = null }
            : support with
            {
                Joint = null,
                At = CellShorthand.ExpandPlace(text, CellUnits.Of(QuantityKind.Length, system)),
            };
    }

    /// <summary>
    /// A kind by its first letters, with its figure: a roller's slope, a spring's stiffness. What the kind cannot have
    /// goes; a text that names no kind is kept as it is, to be mended.
    /// </summary>
    private static SupportEntry TypeKind(SupportEntry support, string? text, UnitSystem system)
    {
        string typed = text ?? "";
        int space = typed.IndexOf(' ', StringComparison.Ordinal);
        string word = Whole(space < 0 ? typed : typed[..space], Kinds);
        string figure = space < 0 ? "" : typed[space..].Trim();
        bool reads = Kinds.Contains(word) && (figure.Length == 0 || word is "roller" or "spring");
        SupportEntry kind = support with
        {
            Kind = text is null ? null : reads ? word : text,
            Surface = reads && word == "roller" ? Figure(figure, QuantityKind.Angle, system) : null,
            Stiffness = reads && word == "spring" ? Figure(figure, QuantityKind.Stiffness, system) : null,
        };
        return !reads ? kind : kind with
        {
            RotationalStiffness = word is "fixed" or "guide" ? null : support.RotationalStiffness,
            Rotation = word is "fixed" or "guide" ? support.Rotation : null,
        };
    }

    private static string? Figure(string text, QuantityKind kind, UnitSystem system) =>
        text.Length == 0 ? null : CellShorthand.Expand(text, kind, system);

    [GeneratedRegex(@"^joint\s+(?<number>[0-9]+)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex OneJoint();
}
