using Terminal.Gui.App;

#pragma warning disable CA1050 // The runtime looks for this name outside any namespace.
/// <summary>
/// Runs inside the program that a test starts: at its end it writes down what was loaded, or it breaks it on demand, so
/// that the program itself needs no way to be broken.
/// </summary>
internal static class StartupHook
{
    internal const string Variable = "FIELDCHECK_TEST_LOADED";

    /// <summary>Names a file; once it stands there, a thread of the pool fails.</summary>
    internal const string CrashElsewhere = "FIELDCHECK_TEST_CRASH_ELSEWHERE";

    /// <summary>Names a file; once it stands there, the screen's own thread fails.</summary>
    internal const string CrashScreen = "FIELDCHECK_TEST_CRASH_SCREEN";

    public static void Initialize()
    {
        // Loading this assembly has kept the toolkit off the terminal, as tests want it; the program has one of its own.
        Environment.SetEnvironmentVariable("DisableRealDriverIO", null);
        if (Environment.GetEnvironmentVariable(Variable) is string path)
        {
            AppDomain.CurrentDomain.ProcessExit += (_, _) => File.WriteAllLines(
                path, AppDomain.CurrentDomain.GetAssemblies().Select(assembly => assembly.GetName().Name!));
        }

        if (Environment.GetEnvironmentVariable(CrashElsewhere) is string elsewhere)
        {
            When(elsewhere, Fail);
        }

        if (Environment.GetEnvironmentVariable(CrashScreen) is string screen)
        {
            FailOnScreen(screen);
        }
    }

    // Apart from its caller, for it loads the toolkit.
    private static void FailOnScreen(string file) =>
        Application.InstanceCreated += (_, made) => When(file, () => made.Value.Invoke(Fail));

    private static void When(string file, Action then) => new Thread(() =>
    {
        while (!File.Exists(file))
        {
            Thread.Sleep(20);
        }

        then();
    })
    { IsBackground = true }.Start();

    private static void Fail() => throw new InvalidOperationException("broken\non demand");
}
