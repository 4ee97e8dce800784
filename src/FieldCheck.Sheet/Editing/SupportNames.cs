using System.Collections.Immutable;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Editing;

/// <summary>
/// Keeps every place and stated figure that hangs on a support with that support, whatever it is called. Default labels
/// go by position, so a support put in, taken away or moved renames others.
/// </summary>
internal static class SupportNames
{
    /// <summary>Follows the supports from one beam to the next.</summary>
    /// <param name="before">The beam before a change.</param>
    /// <param name="after">The beam after it, its texts still as before.</param>
    /// <param name="row">The new row of a support, or null when it is gone.</param>
    internal static BeamDocument Follow(BeamDocument before, BeamDocument after, Func<int, int?> row)
    {
        if (before.Supports == after.Supports && before.Spans == after.Spans)
        {
            return after;
        }

        ImmutableArray<string?> old = FormLabels.Of(before);
        ImmutableArray<string?> now = FormLabels.Of(after);
        Dictionary<string, string> renamed = new(StringComparer.OrdinalIgnoreCase);
        bool isSure = true;
        for (int index = 0; index < old.Length; index++)
        {
            int? moved = row(index);
            string? name = moved is int there ? now[there] : null;

            // Gone, its name must go to no other; there still, it must be known what it is called.
            isSure &= old[index] is not null
                && (moved is null ? !now.Contains(old[index], StringComparer.OrdinalIgnoreCase) : name is not null);
            if (old[index] is string label && name is not null && name != label)
            {
                renamed[label] = name;
            }
        }

        return isSure ? Rename(after, renamed)
            : Hangs(after, old) ? Keep(after, old, row)
            : after;
    }

    private static BeamDocument Rename(BeamDocument document, Dictionary<string, string> renamed)
    {
        if (renamed.Count == 0)
        {
            return document;
        }

        string? Place(string? text) => text is null ? null : RenamedIn(text, renamed);
        return document with
        {
            Hinges = [.. document.Hinges.Select(hinge => hinge with { At = Place(hinge.At) })],
            Loads = [.. document.Loads.Select(load =>
                load with { At = Place(load.At), From = Place(load.From), To = Place(load.To) })],
            Stated = [.. document.Stated.Select(stated => stated with
            {
                Support = stated.Support is string label && renamed.TryGetValue(label.Trim(), out string? name)
                    ? name
                    : stated.Support,
            })],
        };
    }

    private static string RenamedIn(string text, Dictionary<string, string> renamed)
    {
        foreach ((string label, string name) in renamed)
        {
            string changed = PlaceText.Renamed(text, label, name);
            if (changed != text)
            {
                return changed;
            }
        }

        return text;
    }

    private static bool Hangs(BeamDocument document, ImmutableArray<string?> labels)
    {
        bool On(string? text) => text is not null && labels.Any(label =>
            label is not null && PlaceText.Renamed(text, label, label + "_") != text);
        return document.Hinges.Any(hinge => On(hinge.At))
            || document.Loads.Any(load => On(load.At) || On(load.From) || On(load.To))
            || document.Stated.Any(stated => stated.Support is not null);
    }

    // Where it cannot be told which support is which, the names until now are written down, so that none changes hands.
    private static BeamDocument Keep(BeamDocument document, ImmutableArray<string?> labels, Func<int, int?> row)
    {
        Rows<SupportEntry> supports = document.Supports;
        for (int index = 0; index < labels.Length; index++)
        {
            if (row(index) is int moved && labels[index] is string label)
            {
                supports = supports.SetItem(moved, supports[moved] with { Label = supports[moved].Label ?? label });
            }
        }

        return document with { Supports = supports };
    }
}
