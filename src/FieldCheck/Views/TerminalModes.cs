using System.Runtime.InteropServices;

namespace FieldCheck.Views;

/// <summary>How the terminal treats keys and line ends, to be put back as it was. On Windows: nothing.</summary>
/// <remarks>Without it, what is written after a crash comes out in steps, and the shell gets no echo.</remarks>
internal sealed class TerminalModes
{
    // The system's structure is copied whole and never looked into; it is 60 to 72 bytes long where this runs.
    private const int Room = 256;
    private const int StandardInput = 0;
    private const int AtOnce = 0;

    private readonly byte[]? _modes;

    private TerminalModes(byte[]? modes) => _modes = modes;

    /// <summary>The modes as they are now.</summary>
    internal static TerminalModes Now()
    {
        byte[] modes = new byte[Room];
        return new TerminalModes(!OperatingSystem.IsWindows() && Get(StandardInput, modes) == 0 ? modes : null);
    }

    /// <summary>Puts them back.</summary>
    internal void Restore()
    {
        if (_modes is not null)
        {
            _ = Set(StandardInput, AtOnce, _modes);
        }
    }

    [DllImport("libc", EntryPoint = "tcgetattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern int Get(int descriptor, byte[] modes);

    [DllImport("libc", EntryPoint = "tcsetattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern int Set(int descriptor, int when, byte[] modes);
}
