namespace FieldCheck.Screen.Files;

/// <summary>Why a file was not written.</summary>
internal enum SaveObstacle
{
    /// <summary>A file of that name exists already, and it is not the one that was opened.</summary>
    Exists,

    /// <summary>The file was changed on disk since it was read or last saved.</summary>
    ChangedOnDisk,

    /// <summary>The disk or the system refused.</summary>
    Refused,
}
