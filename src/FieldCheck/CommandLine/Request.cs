using System.Collections.Immutable;
using FieldCheck.Sheet.Units;

namespace FieldCheck.CommandLine;

/// <summary>What the command line asks for. Closed set: the cases are the nested records.</summary>
internal abstract record Request
{
    private Request()
    {
    }

    /// <summary>The form, or the check where there is no terminal.</summary>
    /// <param name="File">The beam file, "-" for standard input; null for the built-in example.</param>
    internal sealed record Form(string? File) : Request;

    /// <summary>The check of each file.</summary>
    /// <param name="Files">One or more; "-" is standard input and stands at most once.</param>
    /// <param name="IsJson">True: JSON instead of text.</param>
    /// <param name="Places">Places to read off, as typed.</param>
    /// <param name="Units">The units to show; null for those that each file asks for.</param>
    internal sealed record Check(
        ImmutableArray<string> Files,
        bool IsJson,
        ImmutableArray<string> Places,
        UnitSystem? Units) : Request;

    /// <summary>The presets that can be found.</summary>
    internal sealed record Presets : Request;

    /// <summary>How to use the program.</summary>
    /// <param name="Command">The command asked about; null for all of it.</param>
    internal sealed record Help(string? Command) : Request;

    /// <summary>The program's version.</summary>
    internal sealed record Version : Request;

    /// <summary>The folders that the program uses.</summary>
    internal sealed record Paths : Request;
}
