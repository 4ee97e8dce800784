using System.Reflection;
using System.Runtime.Loader;

namespace Mutants;

/// <summary>An assembly that holds every change behind a switch, as the mutation tool writes it, and its tests.</summary>
internal sealed class ChangedCode
{
    private readonly FieldInfo _active;

    internal ChangedCode(string folder, string assembly)
    {
        AssemblyLoadContext.Default.Resolving += (context, name) =>
            Path.Combine(folder, name.Name + ".dll") is var path && File.Exists(path) ? context.LoadFromAssemblyPath(path) : null;
        Name = assembly + ".Tests";
        Assembly changed = AssemblyLoadContext.Default.LoadFromAssemblyPath(Path.Combine(folder, assembly + ".dll"));
        Tests = AssemblyLoadContext.Default.LoadFromAssemblyPath(Path.Combine(folder, Name + ".dll"));
        _active = changed.GetTypes()
            .Single(type => type.Name == "MutantControl")
            .GetField("ActiveMutant", BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)!;
        Directory.SetCurrentDirectory(folder);
        Activate(-1);
    }

    /// <summary>Name of the assembly of the tests, which is their namespace.</summary>
    internal string Name { get; }

    internal Assembly Tests { get; }

    /// <summary>Switches one change on and all others off; -1: none.</summary>
    internal void Activate(int change) => _active.SetValue(null, change);
}
