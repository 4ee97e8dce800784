using System.Collections.Immutable;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Presets;

/// <summary>What came of reading a beam file's text. Closed set: the cases are the nested records.</summary>
public abstract record BeamFileReading
{
    private BeamFileReading()
    {
    }

    /// <summary>Sound TOML with known keys: the form can open it, even where cells do not read.</summary>
    /// <param name="Document">The beam as typed.</param>
    /// <param name="Origin">The text it came from, which saving keeps to.</param>
    public sealed record Opened(BeamDocument Document, BeamFileText Origin) : BeamFileReading;

    /// <summary>The form cannot open it.</summary>
    /// <param name="Problems">All that is wrong, at most <see cref="FileProblem.Most"/>, in order of line.</param>
    /// <param name="Rest">
    /// What could be read all the same, so that its problems can be told together with these; null for broken TOML.
    /// It must not be saved: what was not understood is not in it.
    /// </param>
    public sealed record Refused(ImmutableArray<FileProblem> Problems, Opened? Rest = null) : BeamFileReading;
}
