using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Tells which loads act along the beam.</summary>
internal static class Lengthways
{
    /// <summary>Whether a combination, or without any a case, acts along the beam.</summary>
    internal static bool IsAskedBy(BeamModel model)
    {
        for (int i = 0; i < model.Cases.Length; i++)
        {
            if (Uses(model, i) && IsIn(model.Cases[i]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a case acts along the beam.</summary>
    internal static bool IsIn(LoadCase loadCase)
    {
        foreach (Load load in loadCase.Loads)
        {
            if (load is Load.Point { Right: not 0 }
                or Load.Distributed { ActsAlong: true, StartIntensity: not 0 }
                or Load.Distributed { ActsAlong: true, EndIntensity: not 0 })
            {
                return true;
            }
        }

        return false;
    }

    private static bool Uses(BeamModel model, int loadCase)
    {
        foreach (Combination combination in model.Combinations)
        {
            if (combination.Factors[loadCase] != 0)
            {
                return true;
            }
        }

        return model.Combinations.IsEmpty;
    }
}
