using System.Globalization;

namespace FieldCheck.CommandLine.Batch;

/// <summary>How far a batch has come, told now and then.</summary>
/// <param name="printout">Where it is told.</param>
/// <param name="clock">The clock.</param>
/// <param name="isTold">False: nobody wants to know.</param>
internal sealed class BatchProgress(Printout printout, TimeProvider clock, bool isTold)
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private readonly long _begun = clock.GetTimestamp();
    private long _told = clock.GetTimestamp();
    private long _files;

    /// <summary>One more file is done.</summary>
    internal void Count()
    {
        _files++;
        if (isTold && clock.GetElapsedTime(_told) >= Pause)
        {
            _told = clock.GetTimestamp();
            double perSecond = _files / clock.GetElapsedTime(_begun).TotalSeconds;
            printout.Passing(string.Create(
                CultureInfo.InvariantCulture, $"{_files} checked, {perSecond:F0} a second"));
        }
    }
}
