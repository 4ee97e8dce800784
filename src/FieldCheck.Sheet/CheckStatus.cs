namespace FieldCheck.Sheet;

/// <summary>What a check comes to; the numbers are the exit statuses of the command line.</summary>
public enum CheckStatus
{
    /// <summary>All that was asked for holds.</summary>
    Holds = 0,

    /// <summary>Something does not hold or could not be judged.</summary>
    DoesNotHold = 1,

    /// <summary>The input is not usable.</summary>
    NotUsable = 2,

    /// <summary>The beam can move.</summary>
    CanMove = 3,
}
