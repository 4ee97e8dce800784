namespace FieldCheck.Reporting.Paper;

/// <summary>What a part of a page is.</summary>
internal enum PaperElementKind
{
    /// <summary>The title.</summary>
    Title,

    /// <summary>A heading of a section.</summary>
    Section,

    /// <summary>A heading of a part of a section.</summary>
    Part,

    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>A list.</summary>
    List,

    /// <summary>An item of a list.</summary>
    Item,

    /// <summary>What an item says.</summary>
    ItemBody,

    /// <summary>A table.</summary>
    Table,

    /// <summary>A row of a table.</summary>
    Row,

    /// <summary>A cell that heads a column or a row.</summary>
    Head,

    /// <summary>A cell.</summary>
    Cell,

    /// <summary>A drawing.</summary>
    Figure,
}
