using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Configuration;

namespace FieldCheck.Views;

/// <summary>Keeps the toolkit's own configuration files out: a stranger's folder must not re-bind keys or change the driver.</summary>
/// <remarks>
/// The toolkit applies what it finds in ./.tui, ~/.tui and TUI_CONFIG when its first type loads, and has no switch for it.
/// So its first type is made to load while those three point to the program's own folder. Compiled native, its loading
/// comes before any code of ours; there the driver is named at start and every key is handled by our own view, which is
/// what holds in every build.
/// </remarks>
internal static class ToolkitIsolation
{
    internal static void LoadWithoutConfiguration()
    {
        string folder = Environment.CurrentDirectory;
        string? home = Environment.GetEnvironmentVariable("HOME");
        string? profile = Environment.GetEnvironmentVariable("USERPROFILE");
        Environment.SetEnvironmentVariable("TUI_CONFIG", null);
        Environment.CurrentDirectory = AppContext.BaseDirectory;
        Environment.SetEnvironmentVariable("HOME", AppContext.BaseDirectory);
        Environment.SetEnvironmentVariable("USERPROFILE", AppContext.BaseDirectory);
        try
        {
            LoadFirstType();
        }
        finally
        {
            Environment.CurrentDirectory = folder;
            Environment.SetEnvironmentVariable("HOME", home);
            Environment.SetEnvironmentVariable("USERPROFILE", profile);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void LoadFirstType()
    {
        _ = Application.DefaultKeyBindings;
        _ = TuiConfigurationBuilder.Shared.Configuration;
    }
}
