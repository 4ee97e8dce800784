using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets;

/// <summary>The text of a beam file as it stands on disk: knows its lines and is what saving keeps to.</summary>
/// <param name="Name">The file, as it was named.</param>
/// <param name="Text">Its whole text.</param>
public sealed record BeamFileText(string Name, string Text)
{
    /// <summary>Reads a file's text.</summary>
    /// <param name="name">The file, as it was named; stands in every problem.</param>
    /// <param name="text">Its whole text.</param>
    public static BeamFileReading Read(string name, string text) => throw new NotImplementedException();

    /// <summary>Finds the line and column of a problem that a calculation told.</summary>
    /// <param name="problem">The problem, with its key path.</param>
    public FileProblem Locate(Problem problem) => throw new NotImplementedException();

    /// <summary>The text to save for a changed document: comments, order and every unchanged value as they stood.</summary>
    /// <param name="document">The beam as typed now.</param>
    public BeamFileText With(BeamDocument document) => throw new NotImplementedException();

    /// <summary>The text of a new file.</summary>
    /// <param name="name">What the file will be called.</param>
    /// <param name="document">The beam as typed.</param>
    public static BeamFileText New(string name, BeamDocument document) => throw new NotImplementedException();
}
