using FieldCheck.CommandLine;
using FieldCheck.Plain;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Plain;

/// <summary>A person who talks to the program in lines, in a folder of their own; what they type is written down too.</summary>
internal sealed class Talk : IDisposable
{
    private readonly StringWriter _written = new();
    private readonly DirectoryInfo? _own;
    private readonly PlainConversation _conversation;

    internal Talk(string? file = null, DirectoryInfo? folder = null, bool isAscii = false)
    {
        _own = folder is null ? Directory.CreateTempSubdirectory("fieldcheck-") : null;
        Folder = folder ?? _own!;
        _conversation = new PlainConversation(Start(file), new Printout(_written, TextWriter.Null), isAscii);
        _conversation.Begin();
        _conversation.Ask();
    }

    internal DirectoryInfo Folder { get; }

    internal PlainState State => _conversation.State;

    internal BeamDocument Document => State.Form.Document;

    internal bool HasEnded => _conversation.HasEnded;

    internal string Written => _written.ToString();

    internal string[] Kept => Directory.Exists(Recovery) ? Directory.GetFiles(Recovery) : [];

    internal string Recovery => Path.Combine(Folder.FullName, "home", "state", "recover");

    /// <summary>What the program said to the last line typed, without the next question.</summary>
    internal string Answer { get; private set; } = "";

    /// <summary>All that the program said since the start, without what was typed.</summary>
    internal string Said { get; private set; } = "";

    internal Talk Say(params string[] lines)
    {
        foreach (string line in lines)
        {
            Assert.False(HasEnded);
            _written.Write(line + "\n");
            int from = Written.Length;
            _conversation.Happen(new PlainEvent.Line(line));
            Answer = Written[from..].TrimEnd('\n');
            AskOn();
            Said += Written[from..];
        }

        return this;
    }

    internal Talk Happen(PlainEvent happening)
    {
        _conversation.Happen(happening);
        AskOn();
        return this;
    }

    internal void Note(string text) => _written.Write(text);

    internal string PathOf(string name) => Path.Combine(Folder.FullName, name);

    public void Dispose() => _own?.Delete(recursive: true);

    private void AskOn()
    {
        if (!HasEnded)
        {
            _conversation.Ask();
        }
    }

    private StartRequest Start(string? file)
    {
        BeamFileReading reading = file is null
            ? BeamFileText.Read(PresetLibrary.Example().Text.Name, PresetLibrary.Example().Text.Text)
            : BeamFileOnDisk.Open(file, PathOf(file));
        BeamFileReading.Opened? opened = reading as BeamFileReading.Opened;
        return new StartRequest
        {
            Path = file,
            Document = opened?.Document ?? new BeamDocument(),
            Origin = opened?.Origin,
            CurrentFolder = Folder.FullName,
            HomeFolder = PathOf("home"),
            NoColor = true,
            Folders = new Folders(PathOf("mine"), [PathOf("presets")], PathOf(Path.Combine("home", "state")), PathOf("settings.toml")),
            Clock = new Noon(),
        };
    }

    private sealed class Noon : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => new(2031, 3, 4, 12, 0, 0, TimeSpan.Zero);
    }
}
