using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting;

/// <summary>What a person named, in the letters that were typed where a beam's names are told so, else in plain ASCII.</summary>
internal static class TypedLetters
{
    /// <summary>A name, or a cell as typed.</summary>
    internal static string Name(BuiltBeam? beam, string? text) =>
        beam is { KeepsLetters: true } ? TextSafety.ForTerminal(OneLine(text)) : PlainAscii.Of(text);

    /// <summary>A sentence with names in it: its signs are spelled in ASCII all the same, as everywhere.</summary>
    internal static string Sentence(BuiltBeam? beam, string? text) =>
        beam is { KeepsLetters: true } ? PlainAscii.Of(TextSafety.ForTerminal(OneLine(text)), keepsLetters: true) : PlainAscii.Of(text);

    private static string OneLine(string? text) => (text ?? "").ReplaceLineEndings(" ").Replace('\t', ' ');
}
