using System.Buffers;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Fuzz;

/// <summary>Tells messages of one kind by the program's own words in them, whatever they quote.</summary>
internal sealed class MessageKinds
{
    // Shorter ones are joints and signs, which any text may hold.
    private const int Shortest = 6;

    private readonly SearchValues<string> _any;
    private readonly ILookup<string, string> _words;

    /// <param name="words">What messages are put together from.</param>
    internal MessageKinds(IEnumerable<string> words)
    {
        string[] all = [.. words.Where(word => word.Length >= Shortest && word.Contains(' ', StringComparison.Ordinal)).Distinct()];
        _any = SearchValues.Create(all, StringComparison.Ordinal);
        _words = all.OrderByDescending(word => word.Length).ToLookup(word => word[..Shortest], StringComparer.Ordinal);
    }

    /// <summary>With the words that are compiled into the readers.</summary>
    internal static MessageKinds OfReaders() => new(WordsIn(typeof(QuantityReader).Assembly));

    /// <summary>The program's own words in a message, piece by piece.</summary>
    internal IReadOnlyList<string> Of(string message)
    {
        List<string> found = [];
        for (int at = 0; at < message.Length && message.AsSpan(at).IndexOfAny(_any) is >= 0 and int next;)
        {
            at += next;
            found.Add(_words[message.Substring(at, Shortest)].First(word => message.AsSpan(at).StartsWith(word, StringComparison.Ordinal)));
            at += found[^1].Length;
        }

        return found;
    }

    private static List<string> WordsIn(Assembly assembly)
    {
        using PEReader file = new(File.OpenRead(assembly.Location));
        MetadataReader metadata = file.GetMetadataReader();
        List<string> words = [];
        UserStringHandle handle = MetadataTokens.UserStringHandle(1);
        while (!handle.IsNil)
        {
            words.Add(metadata.GetUserString(handle));
            handle = metadata.GetNextHandle(handle);
        }

        return words;
    }
}
