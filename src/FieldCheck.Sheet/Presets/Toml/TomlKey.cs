using System.Diagnostics;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>One part of a key as it is written.</summary>
/// <param name="Name">What it says, without quotation marks.</param>
/// <param name="Span">Where it stands, quotation marks included.</param>
internal readonly record struct TomlKey(string Name, TomlSpan Span)
{
    /// <summary>The parts of a key, one or more.</summary>
    internal static List<TomlKey> PartsOf(KeySyntax key) =>
        [Of(key.Key!), .. key.DotKeys.Select(dotted => Of(dotted.Key!))];

    private static TomlKey Of(BareKeyOrStringValueSyntax part) => part switch
    {
        StringValueSyntax quoted => new TomlKey(quoted.Value!, TomlSpan.Of(quoted.Token!)),
        BareKeySyntax bare => new TomlKey(bare.Key!.Text!, TomlSpan.Of(bare.Key)),
        _ => throw new UnreachableException(),
    };
}
