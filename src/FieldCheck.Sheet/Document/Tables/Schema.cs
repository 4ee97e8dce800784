using System.Collections.Immutable;

namespace FieldCheck.Sheet.Document.Tables;

/// <summary>What may stand under a key of the file. Closed set: the cases are the nested records.</summary>
internal abstract record Schema
{
    private Schema()
    {
    }

    /// <summary>One cell.</summary>
    internal sealed record Cell(Wanted Wanted) : Schema;

    /// <summary>A list of texts: <c>ask = [ … ]</c>.</summary>
    internal sealed record Texts : Schema;

    /// <summary>Figures under names of the person's own: <c>factors = { dead = 1.2 }</c>.</summary>
    internal sealed record Figures(Wanted Wanted) : Schema;

    /// <summary>A table with known keys: <c>[record]</c>.</summary>
    /// <param name="Keys">Its keys, in the order in which a new file writes them.</param>
    /// <param name="SaysByStanding">True: the table says something even when it is empty.</param>
    internal sealed record Table(ImmutableArray<SchemaKey> Keys, bool SaysByStanding) : Schema
    {
        /// <summary>What may stand under a key; null for a key that is not known.</summary>
        internal Schema? this[string key] => Keys.FirstOrDefault(known => known.Key == key)?.Schema;
    }

    /// <summary>Tables one after the other.</summary>
    /// <param name="Row">What each holds.</param>
    /// <param name="Inline">True: a new one is written inside [ … ], false: under a header [[ … ]].</param>
    internal sealed record TableRows(Table Row, bool Inline) : Schema;

    /// <summary>Tables under names of the person's own: <c>[section.NAME]</c>.</summary>
    internal sealed record NamedTables(Table Row) : Schema;
}
