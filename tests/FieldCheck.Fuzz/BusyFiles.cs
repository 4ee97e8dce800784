namespace FieldCheck.Fuzz;

/// <summary>Beam files made to keep a reader busy, of any size.</summary>
public static class BusyFiles
{
    private const string Head = "format = 1\n[[span]]\nlength = \"3 m\"\n";

    private static readonly Dictionary<string, Func<int, string>> Files = new()
    {
        ["parts of a key"] = size => Many("a.", size) + "a = 1\n",
        ["parts of a header"] = size => $"[{Many("a.", size)}a]\nb\n",
        ["parts of a header, quoted"] = size => $"[{Many("\"a\".", size)}a]\nb = 1\n",
        ["lists in lists"] = size => "a = " + Many("[", size),
        ["tables in tables"] = size => "a = " + Many("{ a = ", size),
        ["digits"] = size => "format = " + Many("1", size) + "\n",
        ["digits of a factor"] = size => $"{Head}[[combination]]\nname = \"c\"\nfactors = {{ live = 1.{Many("1", size)} }}\n",
        ["digits with a comma behind"] = size => "a = {" + Many("=1", size) + ",\n",
        ["digits in braces"] = size => "a = {=" + Many("1", size) + "\n",
        ["blanks in a text that is not closed"] = size => "a = 'x" + Many(" ", size) + "y\n",
        ["blanks before an equals sign"] = size => "a" + Many(" ", size) + "b\n",
        ["blanks and points in a key"] = size => Many("a . ", size) + "!\n",
        ["braces and equals signs"] = size => "a = " + Many("{=", size) + "\n",
        ["inch marks"] = size => "a = \"" + Many("1\"", size) + "1\n",
        ["back strokes"] = size => "title = \"" + Many("\\\\", size) + "\\e\"\n",
        ["terms of a sum"] = size => $"{Head}[[load]]\nkind = \"point\"\nat = \"1 m\"\nforce = \"{Many("1 kN + ", size)}1 kN\"\n",
        ["brackets in a sum"] = size => $"{Head}[[load]]\nkind = \"point\"\nat = \"1 m\"\nforce = \"{Many("(", size)}1 kN\"\n",
        ["fractions of fractions"] = size => $"{Head}[[load]]\nkind = \"point\"\nat = \"1 m\"\nforce = \"1{Many("/2", size)} kN\"\n",
        ["letters of a title"] = size => $"title = \"{Many("x", size)}\"\n{Head}",
        ["letters of a label"] = size => $"{Head}[[support]]\nkind = \"pin\"\njoint = 0\nlabel = \"{Many("x", size)}\"\n",
        ["letters of a name"] = size => $"{Head}section = \"{Many("x", size)}\"\n",
        ["letters of a shape"] = size => $"{Head}[section.s]\nshape = \"{Many("IPE ", size)}\"\n",
        ["letters of a key"] = size => $"format = 1\n{Many("x", size)} = 1\n",
        ["letters of a table"] = size => $"format = 1\n[{Many("x", size)}]\n",
        ["steps of a cell asked for"] = size => $"format = 1\nask = [\"span{Many("[1]", size)}\"]\n[[span]]\nlength = \"3 m\"\n",
        ["keys that are not known"] = size => "format = 1\n" + string.Concat(Enumerable.Range(0, size / 8).Select(key => $"x{key} = 1\n")),
        ["keys that stand twice"] = size => "format = 1\n" + Many("x = 1\n", size),
        ["broken lines"] = size => Many("a 1\n", size),
        ["texts that are not closed"] = size => Many("a = \"\n", size),
        ["lines of a text that is not closed"] = size => "a = \"\"\"" + Many("\n", size),
        ["cells that are asked for"] = size => $"format = 1\nask = [{Many("\"title\",", Math.Min(size, 80_000))}]\n{Head[11..]}",
        ["cells of a list"] = size => "format = 1\nask = [" + Many("1,", size) + "]\n",
    };

    /// <summary>What each is made of.</summary>
    public static IReadOnlyCollection<string> Names => Files.Keys;

    /// <summary>The text of a file.</summary>
    /// <param name="name">What it is made of.</param>
    /// <param name="size">How large it is, nearly [bytes].</param>
    public static string Of(string name, int size) => Files[name](size);

    private static string Many(string part, int size) => string.Concat(Enumerable.Repeat(part, size / part.Length));
}
