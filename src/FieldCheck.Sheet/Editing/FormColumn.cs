namespace FieldCheck.Sheet.Editing;

/// <summary>The columns of the blocks.</summary>
public enum FormColumn
{
    /// <summary>Length of a span.</summary>
    Length,

    /// <summary>Tape reading of a span's far end.</summary>
    Reading,

    /// <summary>Section of a span.</summary>
    Section,

    /// <summary>Material of a span.</summary>
    Material,

    /// <summary>Where a support stands: a distance, or "joint 1".</summary>
    Place,

    /// <summary>What a support is, with its figure: "roller 30 deg", "spring 12 kip/in".</summary>
    Kind,

    /// <summary>By how much a support settles.</summary>
    Settles,

    /// <summary>Which senses of reaction a support can give.</summary>
    Acts,

    /// <summary>What a support or a rolling load is called.</summary>
    Label,

    /// <summary>Size of a load, which tells its kind; for own weight, on or off.</summary>
    Size,

    /// <summary>Where a load stands or begins.</summary>
    From,

    /// <summary>Where a load ends.</summary>
    To,

    /// <summary>Case that a load belongs to, or what a case is called.</summary>
    Case,

    /// <summary>What a load is.</summary>
    Note,

    /// <summary>Stated vertical reaction.</summary>
    Vertical,

    /// <summary>Stated horizontal reaction.</summary>
    Horizontal,

    /// <summary>Stated moment.</summary>
    Moment,

    /// <summary>Combination or case that a figure is stated for, or which extreme it is.</summary>
    Under,

    /// <summary>Whether a figure is stated as service or factored, or a combination is one of these.</summary>
    Basis,

    /// <summary>By how much a stated figure may differ.</summary>
    Allow,

    /// <summary>Where a figure is stated.</summary>
    Source,

    /// <summary>The support that a figure is stated of.</summary>
    Support,

    /// <summary>What stands in a case: follows from other cells, is never typed in.</summary>
    Holds,

    /// <summary>Whether the loads of a case may stand in some bays and not in others.</summary>
    Pattern,

    /// <summary>Whether own weight belongs to a case.</summary>
    OwnWeight,

    /// <summary>What a combination is called.</summary>
    Name,

    /// <summary>Axles of a rolling load.</summary>
    Axles,

    /// <summary>Share that is added to a rolling load for impact.</summary>
    Impact,

    /// <summary>
    /// Factor of the first case of <see cref="CaseRows"/> in a combination. Those of the other cases follow it, numbered
    /// on: <see cref="FormColumns.OfCase"/>.
    /// </summary>
    Factor,
}
