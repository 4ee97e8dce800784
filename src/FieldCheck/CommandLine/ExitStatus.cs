using FieldCheck.Sheet;

namespace FieldCheck.CommandLine;

/// <summary>What the program hands back to the shell. Ended by a signal, it is 128 + the signal's number.</summary>
internal static class ExitStatus
{
    /// <summary>All that was asked for holds.</summary>
    internal const int Holds = (int)CheckStatus.Holds;

    /// <summary>Something does not hold or could not be judged.</summary>
    internal const int DoesNotHold = (int)CheckStatus.DoesNotHold;

    /// <summary>The input is not usable: wrong usage, or a file that cannot be opened or does not read.</summary>
    internal const int NotUsable = (int)CheckStatus.NotUsable;

    /// <summary>The beam can move: a mechanism, or it tips.</summary>
    internal const int CanMove = (int)CheckStatus.CanMove;

    /// <summary>The program itself failed.</summary>
    internal const int ProgramFailed = 4;
}
