using FieldCheck.CommandLine;

namespace FieldCheck.Plain;

/// <summary>
/// The form in lines: questions and answers on standard output and input, for screen readers and for terminals that
/// cannot place a cursor.
/// </summary>
internal static class PlainSession
{
    /// <summary>Talks until the person leaves, the input ends or a signal comes.</summary>
    /// <param name="start">What to open with.</param>
    /// <param name="environment">What stands around the program.</param>
    /// <param name="printout">Where everything is said.</param>
    /// <returns>The exit status.</returns>
    internal static int Run(StartRequest start, CommandEnvironment environment, Printout printout)
    {
        PlainConversation conversation = new(start, printout, isAscii: !environment.IsUtf8);
        using StreamReader reader = new(environment.OpenInput(), environment.InputEncoding);
        using PlainInput input = new(reader);
        try
        {
            conversation.Begin();
            while (!conversation.HasEnded)
            {
                conversation.Ask();
                conversation.Happen(input.Next());
            }
        }
        catch (Exception)
        {
            conversation.KeepAtOnce();
            throw;
        }

        return input.Status;
    }
}
