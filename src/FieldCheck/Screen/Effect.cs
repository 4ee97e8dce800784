using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Screen;

/// <summary>Something that the shell is to do for the screen. Closed set: the cases are the nested records.</summary>
internal abstract record Effect
{
    private Effect()
    {
    }

    /// <summary>Write a file; answered by Saved or SaveRefused.</summary>
    /// <param name="Path">Where: as the person named it, ending in ".toml".</param>
    /// <param name="Text">What to write.</param>
    /// <param name="Known">What should stand there now; null: no file should stand there.</param>
    /// <param name="Overwrite">True: write whatever stands there, the person has agreed to it.</param>
    internal sealed record Save(string Path, BeamFileText Text, BeamFileText? Known, bool Overwrite) : Effect;

    /// <summary>Write something to be printed; answered by PaperSaved or PaperRefused.</summary>
    /// <param name="Path">Where: as the person named it.</param>
    /// <param name="Paper">What to write.</param>
    /// <param name="Overwrite">True: write whatever stands there, the person has agreed to it.</param>
    internal sealed record SavePaper(string Path, Paper Paper, bool Overwrite) : Effect;

    /// <summary>Read a file; answered by Opened, OpenRefused or FileMissing.</summary>
    /// <param name="Path">Which.</param>
    /// <param name="As">What it is opened as.</param>
    internal sealed record Open(string Path, OpenAs As = OpenAs.File) : Effect;

    /// <summary>Look for beams that may be opened; answered by BeamsFound.</summary>
    /// <param name="OpenFile">The file of the beam on the screen, beside which is looked too; null for none.</param>
    internal sealed record FindBeams(string? OpenFile) : Effect;

    /// <summary>Give the catalogue of sections and materials; answered by CatalogueFound.</summary>
    internal sealed record FindCatalogue : Effect;

    /// <summary>Look for sets of combinations; answered by SetsFound.</summary>
    internal sealed record FindSets : Effect;

    /// <summary>Remember that a beam was opened or saved.</summary>
    /// <param name="Name">The path of a file, or the name of a preset that ships with the program.</param>
    /// <param name="IsFile">True: it is a file.</param>
    internal sealed record Remember(string Name, bool IsFile) : Effect;

    /// <summary>
    /// Something unsaved has changed: let KeepDue happen within a second. One that is already coming is not put off, so
    /// that someone who types without a pause is kept too.
    /// </summary>
    internal sealed record KeepSoon : Effect;

    /// <summary>Keep this as the work of this session, for when it ends badly. Later ones replace it.</summary>
    /// <param name="Origin">Where the beam came from.</param>
    /// <param name="Text">The whole beam as file text.</param>
    internal sealed record KeepRecovery(BeamOrigin Origin, string Text) : Effect;

    /// <summary>The work offered for recovery was taken up: it is this session's own from here.</summary>
    internal sealed record TakeRecovery : Effect;

    /// <summary>Offer the next older work that is kept; answered by RecoveryFound.</summary>
    internal sealed record OfferNextRecovery : Effect;

    /// <summary>What is kept for this session makes way for another beam: it stays, to be offered at the next start.</summary>
    internal sealed record SetRecoveryAside : Effect;

    /// <summary>Nothing is unsaved any more: the work kept for this session may go.</summary>
    internal sealed record DropRecovery : Effect;

    /// <summary>Keep what the person wants for the next start; answered where that cannot be done.</summary>
    /// <param name="Preferences">What the person wants.</param>
    internal sealed record KeepPreferences(Preferences Preferences) : Effect;

    /// <summary>Leave the program.</summary>
    internal sealed record Quit : Effect;

    /// <summary>Paint the whole screen anew.</summary>
    internal sealed record Redraw : Effect;
}
