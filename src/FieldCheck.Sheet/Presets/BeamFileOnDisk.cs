using System.Text;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets;

/// <summary>Gets a beam file's text from a disk or a stream, or says why it cannot be had.</summary>
public static class BeamFileOnDisk
{
    /// <summary>The longest text that is read: 1 MiB.</summary>
    public const int Longest = 1 << 20;

    /// <summary>Reads a file.</summary>
    /// <param name="name">The file, as it was named.</param>
    /// <param name="path">Where it lies.</param>
    public static Reading<string> Read(string name, string path)
    {
        try
        {
            if (Directory.Exists(path))
            {
                return Refuse("it is a folder, not a file.");
            }

            using FileStream stream = File.OpenRead(path);
            return Read(stream);
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse($"there is no file {name}.");
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return Refuse("it cannot be read: " + problem.Message);
        }
    }

    /// <summary>Reads a stream to its end.</summary>
    /// <param name="stream">UTF-8, with or without a byte order mark.</param>
    public static Reading<string> Read(Stream stream)
    {
        byte[] bytes = new byte[Longest + 1];
        int length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        if (length > Longest)
        {
            return Refuse("it is longer than 1 MiB.");
        }

        ReadOnlySpan<byte> content = bytes.AsSpan(0, length);
        ReadOnlySpan<byte> mark = Encoding.UTF8.Preamble;
        try
        {
            UTF8Encoding strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
            return new Reading<string>.Accepted(strict.GetString(content.StartsWith(mark) ? content[mark.Length..] : content));
        }
        catch (DecoderFallbackException problem)
        {
            return Refuse($"it is not UTF-8 text: byte {problem.Index + 1} does not fit.");
        }
    }

    private static Reading<string>.Refused Refuse(string text) => new(text, 0);
}
