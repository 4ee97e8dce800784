namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>How a table is written.</summary>
internal enum TomlForm
{
    /// <summary>Under a header of its own, or the top of the file.</summary>
    Header,

    /// <summary>Only by the headers of tables inside it: <c>[section.bearer]</c> implies <c>section</c>.</summary>
    Implied,

    /// <summary>By keys with dots: <c>record.job = "7"</c>.</summary>
    Dotted,

    /// <summary>In braces.</summary>
    Inline,
}
