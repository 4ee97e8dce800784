using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets;

/// <summary>Gets beam files from a disk or a stream, or says why they cannot be had.</summary>
public static class BeamFileOnDisk
{
    /// <summary>What is said of a file that holds nothing.</summary>
    public const string Nothing = "it is empty, or no ordinary file.";

    /// <summary>Reads a file as a beam.</summary>
    /// <param name="name">The file, as it was named; stands in every problem.</param>
    /// <param name="path">Where it lies.</param>
    public static BeamFileReading Open(string name, string path) => Open(name, Bytes(path));

    /// <summary>Reads a stream to its end as a beam.</summary>
    /// <param name="name">What the stream is called; stands in every problem.</param>
    /// <param name="stream">UTF-8, with or without a byte order mark.</param>
    public static BeamFileReading Open(string name, Stream stream)
    {
        try
        {
            return Open(name, Bytes(stream, BeamFileText.MostBytes));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return Open(name, Refuse(DiskFault.OfReading(problem)));
        }
    }

    /// <summary>Reads a file's bytes, but no more of a large one than shows that it is too large.</summary>
    /// <param name="path">Where it lies; a pipe that a person named is waited for.</param>
    public static Reading<byte[]> Bytes(string path) => Bytes(path, OperatingSystem.IsWindows());

    /// <summary>Reads the bytes of a file that was found, not named: a pipe or a device is left alone.</summary>
    /// <param name="path">Where it lies.</param>
    /// <param name="more">Bytes that it may have more than a beam file.</param>
    public static Reading<byte[]> FoundBytes(string path, int more = 0) =>
        HoldsNothing(path) ? Refuse(Nothing) : Bytes(path, OperatingSystem.IsWindows(), BeamFileText.MostBytes + more);

    /// <summary>Reads a file that was found, not named, as a beam: a pipe or a device is left alone.</summary>
    /// <param name="name">The file, as it was named; stands in every problem.</param>
    /// <param name="path">Where it lies.</param>
    public static BeamFileReading OpenFound(string name, string path) => Open(name, FoundBytes(path));

    /// <summary>True: what stands there has no length. Empty files, pipes and devices are told apart only by opening them.</summary>
    /// <param name="path">Where it lies.</param>
    public static bool HoldsNothing(string path)
    {
        try
        {
            return LinkedFile.At(path) is { Exists: true, Length: 0 };
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // Reading it will say what is the matter with it.
            return false;
        }
    }

    internal static Reading<byte[]> Bytes(string path, bool isWindows, int most = BeamFileText.MostBytes)
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
            return Bytes(stream, most);
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse("there is no such file.");
        }
        catch (ArgumentException)
        {
            return Refuse("this cannot be the name of a file.");
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return Refuse(DiskFault.OfReading(problem));
        }
    }

    private static Reading<byte[]> Bytes(Stream stream, int most)
    {
        // Some systems' own files tell no length, as 0.
        bool isKnown = stream is FileStream { CanSeek: true, Length: > 0 } && stream.Length < most;
        byte[] bytes = new byte[isKnown ? stream.Length : most + 1];
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
