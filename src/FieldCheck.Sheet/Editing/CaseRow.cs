namespace FieldCheck.Sheet.Editing;

/// <summary>One case of a beam.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Loads">How many loads stand in it, own weight and rolling loads not counted.</param>
/// <param name="Rolling">How many rolling loads belong to it.</param>
/// <param name="HasOwnWeight">True: own weight belongs to it.</param>
/// <param name="IsPattern">True: its loads may stand in some bays and not in others.</param>
public sealed record CaseRow(string Name, int Loads, int Rolling, bool HasOwnWeight, bool IsPattern);
