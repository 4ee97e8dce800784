using System.Collections.Immutable;
using FieldCheck.Reporting.Pages;
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
        UnitSystem? Units) : Request
    {
        /// <summary>True: the working by hand below each check.</summary>
        internal bool HasWorking { get; init; }
    }

    /// <summary>The check of any number of files, a line of JSON each.</summary>
    /// <param name="Names">Files and folders; "-" is names on standard input and stands at most once.</param>
    /// <param name="Jobs">How many are checked at the same time; null: as many as there are processors.</param>
    /// <param name="Places">Places to read off, as typed.</param>
    /// <param name="Units">The units of texts; null for those that each file asks for.</param>
    internal sealed record Batch(
        ImmutableArray<string> Names, int? Jobs, ImmutableArray<string> Places, UnitSystem? Units) : Request;

    /// <summary>The working by hand.</summary>
    /// <param name="File">The beam file; "-" is standard input.</param>
    internal sealed record Working(string File) : Request
    {
        /// <summary>The point that moments are taken about, as typed; null for the one that leaves fewest unknowns.</summary>
        internal string? About { get; init; }

        /// <summary>The combination worked, by name or number; null for all, one after the other.</summary>
        internal string? Combination { get; init; }

        /// <summary>True: without the sentences that explain.</summary>
        internal bool IsShort { get; init; }

        /// <summary>True: every step has its name above it.</summary>
        internal bool HasStepNames { get; init; } = true;

        /// <summary>The units to show; null for those that the file asks for.</summary>
        internal UnitSystem? Units { get; init; }
    }

    /// <summary>The record of a check, written to a file.</summary>
    /// <param name="File">The beam file; "-" is standard input.</param>
    /// <param name="Output">The file to write, as it was named.</param>
    /// <param name="Format">What to write there.</param>
    internal sealed record Report(string File, string Output, RecordFormat Format) : Request
    {
        /// <summary>The date of the check, as typed; null: that of the file.</summary>
        internal string? Date { get; init; }

        /// <summary>True: a file that stands there is written over.</summary>
        internal bool IsForced { get; init; }

        /// <summary>True: of the working only equations and results.</summary>
        internal bool IsShort { get; init; }

        /// <summary>The units to show; null for those that the file asks for.</summary>
        internal UnitSystem? Units { get; init; }
    }

    /// <summary>The presets that can be found.</summary>
    internal sealed record Presets : Request;

    /// <summary>What lets a shell complete command lines of this program.</summary>
    /// <param name="Shell">Which shell.</param>
    internal sealed record Completion(string Shell) : Request;

    /// <summary>How to use the program.</summary>
    /// <param name="Command">The command asked about; null for all of it.</param>
    internal sealed record Help(string? Command) : Request;

    /// <summary>The program's version.</summary>
    internal sealed record Version : Request;

    /// <summary>The folders that the program uses.</summary>
    internal sealed record Paths : Request;

    /// <summary>The licences of the program and of what is inside it.</summary>
    internal sealed record Licenses : Request;
}
