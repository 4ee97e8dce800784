using System.Globalization;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

/// <summary>
/// Long sessions of random keys. FIELDCHECK_SEED plays one again, FIELDCHECK_KEYS says how many keys are pressed in all.
/// </summary>
public sealed class LongSessionTests
{
    private const int KeysOfASession = 2_000;

    private static readonly (int Width, int Height)[] Sizes = [(1, 1), (300, 100), (40, 12), (60, 20), (120, 40), (7, 3)];

    public static TheoryData<int> Seeds()
    {
        if (Number("FIELDCHECK_SEED") is int seed)
        {
            return new(seed);
        }

        int sessions = (Number("FIELDCHECK_KEYS") ?? 100_000) / KeysOfASession;
        return new(Enumerable.Range(1, Math.Max(sessions, 1)));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void AnyKeys_KeepTheScreenAndTheBeamWhole(int seed)
    {
        RandomKeys keys = new(seed);
        Desk desk = new(Beams.Trench, BeamOrigin.File("trench.toml", BeamFileText.New("trench.toml", Beams.Trench)))
        {
            Choices = Choices.OfEveryKind,
        };
        int checkedAt = 0;
        HashSet<ScreenView> views = [];
        while (desk.Presses < KeysOfASession)
        {
            desk.Press(keys.Next(desk.State.Focus));
            if (seed % 2 == 0 && desk.State.Settled.Problems.Length > 2)
            {
                Mend(desk);
            }

            Invariants.Hold(desk.State);
            views.Add(desk.State.View);
            if (desk.Presses - checkedAt >= 50)
            {
                checkedAt = desk.Presses;
                ScreenPictureTests.Fills(desk.Show(80, 24), 80, 24);
                (int width, int height) = Sizes[checkedAt / 50 % Sizes.Length];
                ScreenPictureTests.Fills(desk.Show(width, height), width, height);
                Invariants.ReadsAgain(desk.State.Document);
            }
        }

        Assert.Equal(ScreenViews.All.Order(), views.Order());
        Invariants.UndoneToTheEnd_IsTheStart(desk.State, undo => desk.Press(undo).State);
    }

    // Every other session is of a person who takes back what does not read, so that most of its beams stand.
    private static void Mend(Desk desk)
    {
        desk.Press("Esc Esc Esc Esc F3");
        while (desk.State.Settled.Problems.Length > 0 && desk.State.History.ToUndo is not null)
        {
            desk.Press("^Z");
        }
    }

    private static int? Number(string variable) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out int number)
            ? number
            : null;
}
