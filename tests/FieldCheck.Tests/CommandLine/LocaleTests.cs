using System.Text;

namespace FieldCheck.Tests.CommandLine;

/// <summary>POSIX.1-2017, Base Definitions, 8.2: LC_ALL before LC_CTYPE before LANG; empty counts as not set.</summary>
public sealed class LocaleTests
{
    [Theory]
    [InlineData(null, null, "en_US.UTF-8", true)]
    [InlineData(null, null, "C.utf8", true)]
    [InlineData(null, null, "de_CH.UTF-8@euro", true)]
    [InlineData(null, null, "en_US", false)]
    [InlineData(null, null, "de_DE.ISO-8859-1", false)]
    [InlineData(null, null, null, false)]
    [InlineData("C", null, "en_US.UTF-8", false)]
    [InlineData("", "", "en_US.UTF-8", true)]
    [InlineData("", "en_US.UTF-8", "C", true)]
    [InlineData(null, "POSIX", "en_US.UTF-8", false)]
    [InlineData("en_US.UTF-8", "C", "C", true)]
    public void FirstVariableThatIsSet_Decides(string? all, string? type, string? lang, bool expected)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using Surroundings surroundings = new();
        foreach ((string name, string? value) in new[] { ("LC_ALL", all), ("LC_CTYPE", type), ("LANG", lang) })
        {
            if (value is not null)
            {
                surroundings.Variables[name] = value;
            }
        }

        Assert.Equal(expected, surroundings.Environment().IsUtf8);
    }

    [Theory]
    [InlineData("utf-8", true)]
    [InlineData("iso-8859-1", false)]
    [InlineData("us-ascii", false)]
    public void CodePageOfTheConsole_DecidesOnWindows(string encoding, bool expected)
    {
        using StreamWriter output = new(Stream.Null, Encoding.GetEncoding(encoding));
        using Surroundings surroundings = new() { Output = output };

        // Left over from a Unix shell; the console is what it is.
        surroundings.Variables["LANG"] = expected ? "C" : "en_US.UTF-8";

        Assert.Equal(expected, surroundings.Environment().ShowsUtf8(isWindows: true));
    }
}
