namespace FieldCheck.Screen.Overlays;

/// <summary>The pages of the menu.</summary>
internal enum MenuPage
{
    /// <summary>What can be done here.</summary>
    Actions,

    /// <summary>The views.</summary>
    Views,
}
