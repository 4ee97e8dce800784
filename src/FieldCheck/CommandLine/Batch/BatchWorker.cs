using FieldCheck.Reporting.Record;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine.Batch;

/// <summary>Checks the files that come to one thread.</summary>
/// <param name="run">Checks one after the other; no other thread has it.</param>
/// <param name="environment">Where they lie.</param>
internal sealed class BatchWorker(CheckRun run, CommandEnvironment environment)
{
    /// <summary>Checks one file.</summary>
    /// <param name="name">Which.</param>
    internal BatchLine Check(BatchName name)
    {
        try
        {
            BeamCheck check = name.Refusal is string refusal
                ? new BeamCheck.Unusable([FileProblem.OfWhole(name.Name, refusal)])
                : run.OfFile(name.Name, environment);
            return new(
                CheckCommand.JsonOf(name.Name, check, isIndented: false),
                CheckCommand.StatusOf(check),
                check is BeamCheck.Unusable unusable ? unusable.Problems : []);
        }
        catch (Exception fault)
        {
            // The other files shall not go without their answer because the program fails at this one.
            return new(
                CheckJson.OfFault(name.Name, fault.Message),
                ExitStatus.ProgramFailed,
                [],
                $"{name.Name}:\n{Program.Fault(fault)}");
        }
    }
}
