using CsCheck;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Tests.Screen;

public sealed class LineTextTests
{
    [Theory]
    [InlineData("Left", "ab|c")]
    [InlineData("Left Left", "a|bc")]
    [InlineData("Home", "|abc")]
    [InlineData("Home Left", "|abc")]
    [InlineData("Home Right", "a|bc")]
    [InlineData("End Right", "abc|")]
    [InlineData("Backspace", "ab|")]
    [InlineData("Home Backspace", "|abc")]
    [InlineData("Home Delete", "|bc")]
    [InlineData("Delete", "abc|")]
    [InlineData("Left x", "abx|c")]
    public void KeysInALine_MoveAndTakeAway(string keys, string expected) =>
        Assert.Equal(expected, Shown(After(LineText.Of("abc"), keys)));

    [Fact]
    public void CharactersJoinedToOne_AreOneStep()
    {
        LineText line = LineText.Of("ae\u0301👨‍👩‍👧");

        Assert.Equal("ae\u0301", line.After(KeyName.Backspace)!.Text);
        Assert.Equal("a", line.After(KeyName.Backspace)!.After(KeyName.Backspace)!.Text);
        Assert.Equal("a", line.After(KeyName.Left)!.After(KeyName.Left)!.Before);
    }

    [Fact]
    public void KeyThatDoesNeither_IsNotTaken() => Assert.Null(LineText.Of("abc").After(KeyName.Enter));

    [Fact]
    public void AnyKeysInAnyText_CaretStaysBetweenGraphemes()
    {
        KeyName[] names = [KeyName.Left, KeyName.Right, KeyName.Home, KeyName.End, KeyName.Backspace, KeyName.Delete];
        Gen<KeyName> key = Gen.Int[0, names.Length - 1].Select(index => names[index]);

        Gen.Select(Gen.String, key.Array[0, 12]).Sample((text, keys) =>
        {
            LineText line = LineText.Of(text);
            foreach (KeyName name in keys)
            {
                line = line.After(name)!;
            }

            Assert.InRange(line.Caret, 0, line.Text.Length);
            int[] starts = System.Globalization.StringInfo.ParseCombiningCharacters(line.Text);
            Assert.Contains(line.Caret, starts.Append(line.Text.Length));
        });
    }

    private static LineText After(LineText line, string keys) =>
        Keys.Read(keys).Aggregate(line, (before, stroke) => stroke switch
        {
            KeyStroke.Named named => before.After(named.Key)!,
            KeyStroke.Text text => before.Insert(text.Grapheme),
            _ => before,
        });

    private static string Shown(LineText line) => line.Text.Insert(line.Caret, "|");
}
