namespace FieldCheck.Plain;

/// <summary>Which cell is asked after the one that was just answered.</summary>
internal enum PlainWalk
{
    /// <summary>None: one cell was to be changed.</summary>
    Once,

    /// <summary>The next cell of the row.</summary>
    Row,

    /// <summary>The next one that a beam needs: lengths, supports, loads.</summary>
    Beam,

    /// <summary>The same cell of the next row: what is stated of the next support, how long the next span is unbraced.</summary>
    Down,

    /// <summary>The next one that the preset asks for.</summary>
    Asked,
}
