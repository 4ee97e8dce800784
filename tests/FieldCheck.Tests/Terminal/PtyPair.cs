using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace FieldCheck.Tests.Terminal;

/// <summary>The two ends of a pseudo-terminal: the master is ours, the slave is a program's terminal.</summary>
internal sealed class PtyPair : IDisposable
{
    private const int ReadWrite = 2;
    private const int NotControlling = 0x100;
    private const int CloseOnExec = 0x80000;
    private const uint SetWindowSize = 0x5414;

    private SafeFileHandle? _slave;

    private PtyPair(SafeFileHandle master, string slavePath)
    {
        Master = master;
        SlavePath = slavePath;

        // Held open, so that the master can be read before the program has opened it and after it has let go of it.
        _slave = new SafeFileHandle(Checked(Open(slavePath, ReadWrite | NotControlling | CloseOnExec)), ownsHandle: true);
    }

    internal static string? WhyNot { get; } = OperatingSystem.IsLinux() && File.Exists("/dev/ptmx")
        ? null
        : "needs a pseudo-terminal, which is made for Linux only";

    internal SafeFileHandle Master { get; }

    internal string SlavePath { get; }

    internal static PtyPair Open(int width, int height)
    {
        SafeFileHandle master = new(Checked(OpenMaster(ReadWrite | NotControlling | CloseOnExec)), ownsHandle: true);
        int descriptor = (int)master.DangerousGetHandle();
        Checked(Grant(descriptor));
        Checked(Unlock(descriptor));
        byte[] name = new byte[64];
        Checked(Name(descriptor, name, (nuint)name.Length));
        PtyPair pair = new(master, Encoding.ASCII.GetString(name).TrimEnd('\0'));
        pair.Resize(width, height);
        return pair;
    }

    internal void Resize(int width, int height) => Checked(
        SetSize((int)Master.DangerousGetHandle(), SetWindowSize, [(ushort)height, (ushort)width, 0, 0]));

    internal void CloseSlave()
    {
        _slave?.Dispose();
        _slave = null;
    }

    public void Dispose()
    {
        CloseSlave();
        Master.Dispose();
    }

    private static int Checked(int result) =>
        result >= 0 ? result : throw new IOException($"No pseudo-terminal: error {Marshal.GetLastPInvokeError()}.");

    [DllImport("libc", EntryPoint = "posix_openpt", SetLastError = true)]
    private static extern int OpenMaster(int flags);

    [DllImport("libc", EntryPoint = "grantpt", SetLastError = true)]
    private static extern int Grant(int master);

    [DllImport("libc", EntryPoint = "unlockpt", SetLastError = true)]
    private static extern int Unlock(int master);

    [DllImport("libc", EntryPoint = "ptsname_r", SetLastError = true)]
    private static extern int Name(int master, byte[] name, nuint length);

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    private static extern int Open([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc", EntryPoint = "ioctl", SetLastError = true)]
    private static extern int SetSize(int descriptor, uint request, ushort[] size);
}
