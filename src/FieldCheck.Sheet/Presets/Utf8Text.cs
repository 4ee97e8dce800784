using System.Buffers;
using System.Text;
using System.Text.Unicode;
using FieldCheck.Sheet.Presets.Toml;

namespace FieldCheck.Sheet.Presets;

/// <summary>Tells where bytes are no UTF-8.</summary>
internal static class Utf8Text
{
    /// <summary>The first place that is no UTF-8, or null.</summary>
    internal static TomlProblem? ProblemOf(ReadOnlySpan<byte> bytes)
    {
        if (Utf8.IsValid(bytes))
        {
            return null;
        }

        int line = 1;
        int column = 1;
        while (Rune.DecodeFromUtf8(bytes, out Rune rune, out int length) == OperationStatus.Done)
        {
            bytes = bytes[length..];
            bool isLineEnd = rune.Value == '\n';
            line += isLineEnd ? 1 : 0;
            column = isLineEnd ? 1 : column + 1;
        }

        return new TomlProblem(line, column, "", "this is not UTF-8 text; save the file as UTF-8");
    }
}
