using CsCheck;
using FieldCheck.Plain;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Tests.Plain;

/// <summary>Whatever is typed: nothing throws, undo leads back to the start, and what is saved reads again.</summary>
public sealed class PlainFuzzTests
{
    private static readonly string[] Answers =
    [
        "", "", "", "3", "12", "0.6", "5 kNm", "12/m", "3..6/m", "1.2t", "12 psf * 5 ft", "12'-6 1/2\"", "end", "joint 1",
        "A + 1", "mid 1", "pin", "roller 30 deg", "spring 500", "up", "on", "dead", "IPE200", "C24", "x", "1,5", "-", "?",
        "t", "m", "stop", "yes", "no", "stay", "mine", "theirs", "name", "back", "overwrite", "list", "add", "replace", "2", "\u001b[31m",
        "\u202e", "梁", "½", "\"", "#", "[", ".", "]", "\ud800",
    ];

    private static readonly string[] Texts =
    [
        "", "load", "load 1", "load 2 size 4", "load 2 to 2", "load 9", "support A", "support B at 2.5", "support C at end",
        "span 1", "span 2 length 1.5", "load 1 up", "load 1 down", "load after 1", "span after 1", "span 1 up", "span 7",
        "support A kind spring", "weight on", "weight off", "weight case x", "us", "si", "at 1", "1", "end", "moment",
        "floor", "work", "work.toml", "sub/none.toml", "limits", "deflection L/300", "1 at 1 m", "help",
        "live", "live bay by bay yes", "live name dead", "dead own weight yes", "1 live 1.5", "1 factors dead x", "2 basis f",
        "combination 1.2 dead + 1.6 live", "combination 1", "rolling load", "rolling load 1", "load 1 axles 3 kN, 3 kN at 1", "1 impact 20 %", "ASCE",
    ];

    private static readonly Gen<string> Line = Gen.Frequency(
        (3, OneOf(Answers)),
        (4, Gen.Select(OneOf([.. PlainCommands.All.Select(command => command.Word).Except(["leave"])]), OneOf(Texts))
            .Select((word, text) => $"{word} {text}".Trim())),
        (1, Gen.Select(OneOf("limits", "hinge", "title", "combination 1 name", "tolerance position"), OneOf(Answers))
            .Select((word, text) => $"{word} {text}".Trim())));

    [Fact]
    public void AnyLines_AreAnswered_Undone_AndReadAgainAsSaved() => Line.Array[1, 25].Sample(
        lines =>
        {
            using Talk talk = new();
            talk.Say(lines);

            Assert.Equal(talk.Document, talk.State.Form.Settled.Document);
            Assert.DoesNotContain(talk.Said, letter => letter != '\n' && TextSafety.ForTerminal($"{letter}") == "?" && letter != '?');
            IsReadAgain(talk.Document);
            IsUndoneToTheStart(talk);
        },
        iter: 150,
        threads: 1);

    private static void IsReadAgain(BeamDocument document)
    {
        BeamFileText text = BeamFileText.New("beam.toml", document);
        BeamFileReading.Opened read = Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text));
        Assert.Equal(document, read.Document);
    }

    private static void IsUndoneToTheStart(Talk talk)
    {
        BeamDocument start = talk.State.Form.History.Steps[0].Sheet.Document;
        BeamDocument last = talk.State.Form.History.Steps[^1].Sheet.Document;
        while (talk.State.Form.Overlay is not null)
        {
            talk.Say(talk.State.Form.Overlay is Overlay.SaveQuestion ? "back"
                : talk.State.Form.Overlay is Overlay.UnsavedQuestion ? "stay" : "");
        }

        talk.Say("stop", "stop");
        for (int steps = talk.State.Form.History.Index; steps > 0; steps--)
        {
            talk.Say("undo");
        }

        Assert.Equal(start, talk.Document);
        while (talk.State.Form.History.ToRedo is not null)
        {
            talk.Say("redo");
        }

        Assert.Equal(last, talk.Document);
    }

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(index => values[index]);
}
