using System.Text;

namespace FieldCheck.Sheet.Reading;

/// <summary>Finds how far a unit goes in a text: "kN/m", "kip-ft/rad", "N/mm^2".</summary>
internal static class UnitGrammar
{
    /// <summary>Steps over a unit as written; empty where none stands.</summary>
    internal static string Run(ref TextCursor cursor)
    {
        int start = cursor.Position;
        while (SkipWord(ref cursor) && IsJoint(cursor))
        {
            cursor.Position++;
        }

        return cursor.Since(start);
    }

    /// <summary>One spelling for all ways to write a unit: "kN·m", "kN-m" are "kN*m"; "m²", "m^2" are "m2".</summary>
    internal static string Plain(string run)
    {
        StringBuilder plain = new(run.Length);
        foreach (char c in run)
        {
            switch (c)
            {
                case '-' or '·':
                    plain.Append('*');
                    break;
                case '^':
                    break;
                default:
                    plain.Append(Raised(c) ?? c);
                    break;
            }
        }

        return plain.ToString();
    }

    private static bool SkipWord(ref TextCursor cursor)
    {
        int start = cursor.Position;
        while (Symbols.IsUnitLetter(cursor.Current))
        {
            cursor.Position++;
        }

        bool any = cursor.Position > start;
        cursor.Position += any ? ExponentLength(cursor) : 0;
        return any;
    }

    /// <summary>A digit is an exponent only if no number goes on after it: "7ft2in" is feet and inches.</summary>
    private static int ExponentLength(in TextCursor cursor)
    {
        if (Raised(cursor.Current) is not null)
        {
            return 1;
        }

        if (cursor.Current == '^' && char.IsAsciiDigit(cursor.After(1)))
        {
            return 2;
        }

        char next = cursor.After(1);
        bool goesOn = char.IsLetterOrDigit(next) || next is '.' or ',' || Symbols.IsInchMark(next)
            || Symbols.Vulgar(next) is not null;
        return cursor.Current is >= '2' and <= '4' && !goesOn ? 1 : 0;
    }

    private static bool IsJoint(in TextCursor cursor) =>
        cursor.Current is '/' or '*' or '·' or '-' && char.IsLetter(cursor.After(1));

    private static char? Raised(char c) => c switch { '²' => '2', '³' => '3', '⁴' => '4', _ => null };
}
