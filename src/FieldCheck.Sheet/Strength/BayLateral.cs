using System.Globalization;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Strength;

/// <summary>How a bay is held sideways while its length is asked for.</summary>
/// <param name="Unbraced">Distance between its lateral supports as typed [m].</param>
/// <param name="Bay">Its length as typed [m].</param>
public sealed record BayLateral(double Unbraced, double Bay)
{
    /// <summary>An unbraced length this near to the bay's was read off as the bay's [–].</summary>
    private const double Reading = 0.01;

    /// <summary>True: it is held at its ends only, so that the distance is the bay's whatever that is.</summary>
    public bool IsWholeBay => Math.Abs(Unbraced - Bay) <= Reading * Bay;

    /// <summary>How a span is held; null where it is held all along or nothing is said of it.</summary>
    internal static BayLateral? Of(SpanEntry span, double length) =>
        StrengthRows.Lateral(span) is LateralSupport.Unbraced unbraced ? new BayLateral(unbraced.Length, length) : null;

    /// <summary>The distance in a bay of another length: with fewer supports than were typed none is held nearer.</summary>
    internal double At(double length) => IsWholeBay ? Unbraced * length / Bay
        : Unbraced > Bay ? Math.Max(Unbraced, length)
        : Math.Min(Unbraced, length);

    internal SpanEntry Put(SpanEntry span, double length) => span with
    {
        Unbraced = At(length).ToString("R", CultureInfo.InvariantCulture) + " m",
    };
}
