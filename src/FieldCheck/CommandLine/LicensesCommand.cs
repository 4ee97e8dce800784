using System.Reflection;

namespace FieldCheck.CommandLine;

/// <summary>The licences of the program and of all that is inside it; they go where the one file goes.</summary>
internal static class LicensesCommand
{
    private const string Folder = "notices/";

    internal static int Run(Printout printout)
    {
        Assembly program = typeof(LicensesCommand).Assembly;
        printout.Result(string.Concat(program.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name => Text(program, name))).TrimEnd());
        return ExitStatus.Holds;
    }

    private static string Text(Assembly program, string name)
    {
        using StreamReader text = new(program.GetManifestResourceStream(name)!);
        return text.ReadToEnd().ReplaceLineEndings("\n");
    }
}
