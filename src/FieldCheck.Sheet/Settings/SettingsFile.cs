using System.Text;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Settings;

/// <summary>A settings file on disk.</summary>
/// <param name="Path">Full path; the file need not exist.</param>
public sealed record SettingsFile(string Path)
{
    /// <summary>Reads the file; where there is none, settings in which nothing stands.</summary>
    public SettingsReading Read()
    {
        // Nothing stands in an empty file; a pipe is not waited for.
        if ((!File.Exists(Path) && !Directory.Exists(Path)) || BeamFileOnDisk.HoldsNothing(Path))
        {
            return new SettingsText(Path, "").Read();
        }

        return BeamFileOnDisk.Bytes(Path) switch
        {
            Reading<byte[]>.Accepted bytes => SettingsText.ReadBytes(Path, bytes.Value),
            Reading<byte[]>.Refused refused => new SettingsReading.Refused([FileProblem.OfWhole(Path, refused.Text)]),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>Changes the file, whatever another program wrote into it meanwhile.</summary>
    /// <param name="change">The change.</param>
    /// <returns>Why it was not changed; null when it was. A file that does not read stays as it is.</returns>
    public string? Change(Func<SettingsDocument, SettingsDocument> change)
    {
        switch (Read())
        {
            case SettingsReading.Opened opened:
                return Write(opened.Origin, opened.Origin.With(change(opened.Settings)));
            case SettingsReading.Refused refused:
                return refused.Problems[0].ToString();
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private string? Write(SettingsText before, SettingsText after)
    {
        if (before == after)
        {
            return null;
        }

        try
        {
            FileInfo file = LinkedFile.At(Path);
            if (file is { Exists: true, Length: 0 } && !LinkedFile.IsOrdinary(file))
            {
                return $"{Path}: it is no ordinary file.";
            }

            Directory.CreateDirectory(file.DirectoryName!);
            WholeFile.Write(file, Encoding.UTF8.GetBytes(after.Text));
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return DiskFault.OfWriting(fault);
        }
    }
}
