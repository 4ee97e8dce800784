// Feeds the readers with texts that nobody writes, until time is up or something is found:
//
//     dotnet run -c Release --project tests/FieldCheck.Fuzz -- quantity --minutes 10 --seed 1 --keep FOLDER
//     dotnet run -c Release --project tests/FieldCheck.Fuzz -- file --minutes 10 --seed 1 --keep FOLDER
//
// It ends with 0, or with 1 when a text was not read or refused as promised, or took longer than any may. What was found
// is printed and written to the folder, cut down to what it takes; so are the shortest texts of every kind of answer.
// .ci/fuzz runs both. It begins with the corpus; of files, with those in the folders named by --seeds too. With
// --corpus FOLDER it writes the corpus anew: as few texts as have every kind of answer that came.
//
// For the tests that kill a program while it saves:
//
//     fuzz save FILE ONE TWO
using System.Globalization;
using System.Text;
using FieldCheck.Fuzz;

// A hostile text shows as it is, not as the terminal would obey it.
Console.OutputEncoding = new UTF8Encoding(false);
return args switch
{
    ["save", string file, string one, string two] => SaveLoop.Run(file, one, two),
    ["quantity", .. string[] options] => Run(new QuantityTarget(), options),
    ["file", .. string[] options] => Run(new BeamFileTarget(SeedsOf(options)), options),
    _ => Usage(),
};

static IEnumerable<string> SeedsOf(string[] options) => options
    .Zip(options.Skip(1))
    .Where(pair => pair.First == "--seeds")
    .SelectMany(pair => Directory.GetFiles(pair.Second, "*.toml").Order(StringComparer.Ordinal))
    .Select(path => File.ReadAllText(path));

static int Run(FuzzTarget target, string[] options)
{
    Dictionary<string, string> given = options.Chunk(2)
        .Where(pair => pair.Length == 2)
        .GroupBy(pair => pair[0], StringComparer.Ordinal)
        .ToDictionary(group => group.Key, group => group.Last()[1], StringComparer.Ordinal);
    int seed = int.Parse(given.GetValueOrDefault("--seed", "1"), CultureInfo.InvariantCulture);
    double minutes = double.Parse(given.GetValueOrDefault("--minutes", "10"), CultureInfo.InvariantCulture);
    return new FuzzRun(target, seed, given.GetValueOrDefault("--keep"), given.GetValueOrDefault("--corpus"))
        .For(TimeSpan.FromMinutes(minutes));
}

static int Usage()
{
    Console.Error.WriteLine("fuzz quantity|file [--minutes 10] [--seed 1] [--keep FOLDER] [--corpus FOLDER] [--seeds FOLDER]");
    return 2;
}
