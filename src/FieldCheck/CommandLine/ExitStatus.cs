namespace FieldCheck.CommandLine;

/// <summary>What the program hands back to the shell. Ended by a signal, it is 128 + the signal's number.</summary>
internal static class ExitStatus
{
    /// <summary>All that was asked for holds.</summary>
    internal const int Holds = 0;

    /// <summary>Something does not hold or could not be judged.</summary>
    internal const int DoesNotHold = 1;

    /// <summary>The input is not usable: wrong usage, or a file that cannot be opened or does not read.</summary>
    internal const int NotUsable = 2;

    /// <summary>The beam can move: a mechanism, or it tips.</summary>
    internal const int CanMove = 3;

    /// <summary>The program itself failed.</summary>
    internal const int ProgramFailed = 4;
}
