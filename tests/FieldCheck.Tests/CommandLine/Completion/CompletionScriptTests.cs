using FieldCheck.CommandLine;
using FieldCheck.CommandLine.Completion;

namespace FieldCheck.Tests.CommandLine.Completion;

public sealed class CompletionScriptTests
{
    public static TheoryData<string> Every => new(Shells.All);

    [Theory]
    [MemberData(nameof(Every))]
    public void Script_IsPrintedAndNamesEveryCommandAndOption(string shell)
    {
        using Surroundings around = new();

        Assert.Equal(0, around.Run("completion", shell));

        string script = around.Written;
        Assert.Contains($"made by: fieldcheck completion {shell}", script);
        Assert.All(CommandWords.All, command => Assert.Matches($@"[ ']{command}[ |')]", script));
        Assert.All(
            Option.All,
            option => Assert.Matches(shell == Shells.Fish ? $@"-l {option.Name[2..]}\b" : $@"[ '|]{option.Name}[ '|)]", script));
        Assert.All(Option.All.SelectMany(option => option.Choices), word => Assert.Contains(word, script));
        Assert.All(script, letter => Assert.True(char.IsAscii(letter) && letter != '\r'));
    }

    [Fact]
    public void ValueNamed_IsAllThatThereIs() =>
        Assert.All(
            Option.All.Where(option => !option.Choices.IsEmpty),
            option => Assert.Equal(string.Join(" or ", option.Choices), option.Value));

    [Theory]
    [InlineData("completion needs a shell: bash, zsh, fish or powershell.", "completion")]
    [InlineData("completion takes bash, zsh, fish or powershell, not 'ksh'.", "completion", "ksh")]
    [InlineData("completion takes one shell, and 'zsh' stands after it.", "completion", "bash", "zsh")]
    public void WrongUsage_IsSaid(string expected, params string[] words)
    {
        using Surroundings around = new();

        Assert.Equal(2, around.Run(words));
        Assert.StartsWith("fieldcheck: " + expected, around.Complaints, StringComparison.Ordinal);
    }
}
