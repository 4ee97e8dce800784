// Tries changes of an assembly one after another in one process, each with the tests from the quickest to the slowest until one fails:
//
//     mutants FOLDER ASSEMBLY TESTS LEFT-OUT LONGEST CHANGES RESULTS
//
// FOLDER      holds the changed assembly, its tests and what they need
// ASSEMBLY    the name of the changed assembly; its tests are in ASSEMBLY.Tests
// TESTS       namespaces below that of the tests, or Namespace/Class of one class, by commas
// LEFT-OUT    classes or Class.Method of tests that are not run, by commas
// LONGEST     seconds that a test may take; slower ones are left out
// CHANGES     a line for each change: its number, a tab, its file
// RESULTS     gets a line for each: its number, a tab, what came of it, a tab, the test that noticed it
//
// Ends with 0 when all are tried. A change that never ends, or after which the test that noticed it goes on failing, ends the process
// with 3, and one may crash it; started again, it goes on behind the last change that stands in RESULTS.
using System.Globalization;
using Mutants;

if (args is not [string folder, string assembly, string tests, string leftOut, string longest, string changes, string results])
{
    Console.Error.WriteLine("mutants FOLDER ASSEMBLY TESTS LEFT-OUT LONGEST CHANGES RESULTS");
    return 2;
}

ChangedCode code = new(folder, assembly);
TrialList trials = TrialList.Of(
    code, tests.Split(','), [.. leftOut.Split(',')], double.Parse(longest, CultureInfo.InvariantCulture), results + ".times");
return new Attempts(code, trials, results).Run(File.ReadLines(changes));
