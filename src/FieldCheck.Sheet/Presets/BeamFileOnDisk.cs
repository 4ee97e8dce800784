using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets;

/// <summary>Gets beam files from a disk or a stream, or says why they cannot be had.</summary>
public static class BeamFileOnDisk
{
    /// <summary>Reads a file as a beam.</summary>
    /// <param name="name">The file, as it was named; stands in every problem.</param>
    /// <param name="path">Where it lies.</param>
    public static BeamFileReading Open(string name, string path) => Open(name, Bytes(path));

    /// <summary>Reads a stream to its end as a beam.</summary>
    /// <param name="name">What the stream is called; stands in every problem.</param>
    /// <param name="stream">UTF-8, with or without a byte order mark.</param>
    public static BeamFileReading Open(string name, Stream stream) => Open(name, Bytes(stream));

    /// <summary>Reads a file's bytes, but no more of a large one than shows that it is too large.</summary>
    /// <param name="path">Where it lies.</param>
    public static Reading<byte[]> Bytes(string path) => Bytes(path, OperatingSystem.IsWindows());

    internal static Reading<byte[]> Bytes(string path, bool isWindows)
    {
        // A console is read from without an end.
        if (isWindows && WindowsFileName.DeviceOf(Path.GetFileName(path)) is string device)
        {
            return Refuse($"{device} is a device, not a file.");
        }

        try
        {
            if (Directory.Exists(path))
            {
                return Refuse("it is a folder, not a file.");
            }

            using FileStream stream = File.OpenRead(path);
            return Bytes(stream);
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse("there is no such file.");
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return Refuse("it cannot be read: " + problem.Message);
        }
    }

    private static Reading<byte[]> Bytes(Stream stream)
    {
        // Some systems' own files tell no length, as 0.
        bool isKnown = stream is FileStream { CanSeek: true, Length: > 0 and < BeamFileText.MostBytes };
        byte[] bytes = new byte[isKnown ? stream.Length : BeamFileText.MostBytes + 1];
        int length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return new Reading<byte[]>.Accepted(bytes[..length]);
    }

    /// <summary>Reads bytes as a beam, or says why they could not be had.</summary>
    internal static BeamFileReading Open(string name, Reading<byte[]> content) => content switch
    {
        Reading<byte[]>.Accepted bytes => BeamFileText.ReadBytes(name, bytes.Value),
        Reading<byte[]>.Refused refused => new BeamFileReading.Refused([FileProblem.OfWhole(name, refused.Text)]),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static Reading<byte[]>.Refused Refuse(string text) => new(text, 0);
}
