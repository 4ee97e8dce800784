using System.Collections.Immutable;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>A text read as TOML.</summary>
/// <param name="Text">The text.</param>
/// <param name="Root">What stands in it; empty where the text is no TOML at all.</param>
/// <param name="Statements">Its statements, in the order of the text.</param>
/// <param name="IsSound">False: the text breaks the grammar, so that nothing of it was read.</param>
/// <param name="Problems">What is wrong, in no order.</param>
internal sealed record TomlFile(
    string Text,
    TomlTable Root,
    ImmutableArray<TomlStatement> Statements,
    bool IsSound,
    ImmutableArray<TomlProblem> Problems);
