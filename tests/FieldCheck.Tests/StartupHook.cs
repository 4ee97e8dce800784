#pragma warning disable CA1050 // The runtime looks for this name outside any namespace.
/// <summary>Runs inside the program that a test starts, and at its end writes down what was loaded.</summary>
internal static class StartupHook
{
    internal const string Variable = "FIELDCHECK_TEST_LOADED";

    public static void Initialize()
    {
        if (Environment.GetEnvironmentVariable(Variable) is string path)
        {
            AppDomain.CurrentDomain.ProcessExit += (_, _) => File.WriteAllLines(
                path, AppDomain.CurrentDomain.GetAssemblies().Select(assembly => assembly.GetName().Name!));
        }
    }
}
