using System.Collections.Immutable;
using System.Text;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Presets.Toml;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Settings;

/// <summary>The text of a settings file; a change keeps its comments and its order.</summary>
/// <param name="Name">The file, as it was named; stands in every problem.</param>
/// <param name="Text">Its whole text; empty where there is no file yet.</param>
public sealed record SettingsText(string Name, string Text)
{
    /// <summary>Reads the bytes of a settings file: UTF-8, at most <see cref="BeamFileText.MostBytes"/>.</summary>
    /// <param name="name">The file, as it was named.</param>
    /// <param name="bytes">All its bytes.</param>
    public static SettingsReading ReadBytes(string name, ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > BeamFileText.MostBytes)
        {
            return new SettingsReading.Refused([FileProblem.OfWhole(name, "it is larger than 1 MiB.")]);
        }

        return Utf8Text.ProblemOf(bytes) is TomlProblem problem
            ? new SettingsReading.Refused([problem.In(name)])
            : new SettingsText(name, Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF')).Read();
    }

    /// <summary>Reads the text.</summary>
    public SettingsReading Read()
    {
        TomlFile file = TomlReader.Read(Text);
        ContentBinder binder = new(SettingsContent.Schema);
        Content? content = file.IsSound ? binder.Bind(SettingsContent.Schema, file.Root) : null;
        ImmutableArray<TomlProblem> problems = [.. file.Problems, .. binder.Problems];
        return content is null || problems.Length > 0
            ? new SettingsReading.Refused(FileProblem.InOrder(problems.Select(problem => problem.In(Name))))
            : new SettingsReading.Opened(SettingsContent.Read(content), this);
    }

    /// <summary>Finds the lines and columns of problems.</summary>
    /// <param name="problems">The problems, with their key paths.</param>
    /// <returns>The problems in order of line, at most <see cref="FileProblem.Most"/>.</returns>
    public ImmutableArray<FileProblem> Locate(IEnumerable<Problem> problems)
    {
        TomlFile file = TomlReader.Read(Text);
        return FileProblem.InOrder(problems.Select(problem => TomlPlace.Of(file, problem).In(Name)));
    }

    /// <summary>The text for changed settings; what did not change stays as it was written.</summary>
    /// <param name="settings">The settings as they shall be.</param>
    /// <remarks>A text that does not read cannot be kept to: it stays as it is.</remarks>
    public SettingsText With(SettingsDocument settings)
    {
        if (Read() is not SettingsReading.Opened opened || opened.Settings == settings)
        {
            return this;
        }

        Content.Table wanted = SettingsContent.Of(settings);
        string fresh = TomlWriter.File(SettingsContent.Schema, wanted, []);
        SettingsText changed = this with
        {
            Text = string.IsNullOrWhiteSpace(Text) ? fresh : FileEditor.Changed(TomlReader.Read(Text), SettingsContent.Schema, wanted),
        };
        return changed.Read() is SettingsReading.Opened read && read.Settings == settings
            ? changed
            : this with { Text = fresh };
    }
}
