using System.Collections;
using System.Globalization;
using System.Text;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Writes a drawn beam in full, so that a failing draw can be kept as a fixed case.</summary>
internal static class BeamText
{
    internal static string Of(BeamModel model)
    {
        StringBuilder text = new();
        Append(text, "spans", model.Spans);
        Append(text, "supports", model.Supports);
        Append(text, "hinges", model.Hinges);
        foreach (LoadCase one in model.Cases)
        {
            Append(text, one.Name, one.Loads);
        }

        foreach (Combination one in model.Combinations)
        {
            Append(text, one.Name, one.Factors);
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, string name, IEnumerable rows)
    {
        text.Append('\n').Append(name).Append(':');
        foreach (object row in rows)
        {
            text.Append("\n  ").Append(Convert.ToString(row, CultureInfo.InvariantCulture));
        }
    }
}
