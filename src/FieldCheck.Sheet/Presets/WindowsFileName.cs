using System.Buffers;
using System.Collections.Frozen;

namespace FieldCheck.Sheet.Presets;

/// <summary>What Windows does not take as the name of a file.</summary>
/// <remarks>
/// As Microsoft has it in "Naming Files, Paths, and Namespaces". There such a name is refused when it is to be written:
/// it would reach a device, a hidden stream of another file or a file of another name. Elsewhere it is a good name, and
/// the work is saved under it; but files travel, so whoever chose it is told.
/// </remarks>
public static class WindowsFileName
{
    private static readonly SearchValues<char> Refused = SearchValues.Create("<>:\"|?*/\\");

    // COM and LPT also with the three raised digits of Latin-1.
    private static readonly FrozenSet<string> Devices = FrozenSet.ToFrozenSet(
        [
            "CON", "PRN", "AUX", "NUL", "CONIN$", "CONOUT$",
            .. "0123456789\u00b9\u00b2\u00b3".SelectMany(digit => new[] { $"COM{digit}", $"LPT{digit}" }),
        ],
        StringComparer.OrdinalIgnoreCase);

    /// <summary>What is wrong with a name, as a sentence; null: nothing.</summary>
    /// <param name="name">The name of a file, without the folders before it.</param>
    public static string? ProblemOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (DeviceOf(name) is string device)
        {
            return $"Windows keeps the name {device} for a device, whatever stands behind its dot.";
        }

        int at = name.AsSpan().IndexOfAny(Refused);
        return at >= 0 ? $"Windows takes no {name[at]} in the name of a file."
            : name.Any(letter => letter < ' ') ? "Windows takes no control character in the name of a file."
            : name.EndsWith('.') || name.EndsWith(' ') ? "Windows drops a dot or a blank at the end of a name."
            : null;
    }

    /// <summary>The device that a name reaches on Windows, as it is written there; null: none.</summary>
    /// <param name="name">The name of a file, without the folders before it.</param>
    public static string? DeviceOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string stem = name.Split('.')[0].TrimEnd(' ');
        return Devices.Contains(stem) ? stem : null;
    }
}
