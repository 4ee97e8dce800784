namespace FieldCheck.Screen.Plotting;

/// <summary>What a place is typed for.</summary>
internal enum PlaceUse
{
    /// <summary>To read off what acts there.</summary>
    ReadOff,

    /// <summary>To draw an influence line: behind the letter of what it is of.</summary>
    Influence,

    /// <summary>To take moments about it.</summary>
    MomentsAbout,
}
