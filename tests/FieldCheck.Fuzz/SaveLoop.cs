using FieldCheck.Sheet.Presets;

namespace FieldCheck.Fuzz;

/// <summary>Saves one file over and over, now with one text, now with another, until it is killed.</summary>
internal static class SaveLoop
{
    /// <summary>Saves until something refuses.</summary>
    /// <param name="file">The file, which holds the other text.</param>
    /// <param name="one">A file with the one text.</param>
    /// <param name="two">A file with the other.</param>
    /// <returns>1: a save was refused, and said why.</returns>
    internal static int Run(string file, string one, string two)
    {
        BeamFileText[] texts = [new(file, File.ReadAllText(one)), new(file, File.ReadAllText(two))];
        Console.Out.WriteLine("saving");
        Console.Out.Flush();
        for (int turn = 0; ; turn = 1 - turn)
        {
            BeamFileSaving saving = BeamFileStore.Save(file, texts[turn], texts[1 - turn], overwrite: false);
            if (saving is not BeamFileSaving.Saved)
            {
                Console.Error.WriteLine(saving);
                return 1;
            }
        }
    }
}
