namespace FieldCheck.CommandLine;

/// <summary>What --help prints: examples first.</summary>
internal static class HelpText
{
    /// <summary>The help.</summary>
    /// <param name="command">The command asked about; null for all of it.</param>
    internal static string Of(string? command) => command switch
    {
        CommandWords.Check => Check,
        CommandWords.Batch => Batch,
        CommandWords.Working => Working,
        CommandWords.Report => Report,
        CommandWords.Presets => Presets,
        CommandWords.Completion => Completion,
        _ => All,
    };

    private const string All = """
        fieldcheck: quick beam checks on site. Reactions with their proof, shear,
        moment and deflection, from a form or from a beam file.

        Examples
          fieldcheck                         the form, with an example to change
          fieldcheck bearer.toml             the form with this beam; a new one where
                                             there is no such file
          fieldcheck --plain bearer.toml     the same in lines, for a screen reader
          fieldcheck check bearer.toml       the check as text
          fieldcheck check *.toml --json     a line of JSON for each file
          fieldcheck check - < bearer.toml   a beam from standard input
          fieldcheck batch bearers > answers.jsonl
                                             every beam of a folder, on all processors
          fieldcheck working bearer.toml     the reactions worked by hand, line by line
          fieldcheck report bearer.toml --output bearer.pdf
                                             the record of the check, to sign
          fieldcheck presets                 beams to start from

        Commands
          [FILE]        the form; the check of FILE where there is no terminal
          check FILE... the check of each file (fieldcheck check --help)
          batch NAME... the check of any number of files as lines of JSON
                        (fieldcheck batch --help)
          working FILE  the working by hand (fieldcheck working --help)
          report FILE   the record of the check as a file (fieldcheck report --help)
          presets       the presets that can be found, with their folders
          completion SHELL
                        completion of command lines for bash, zsh, fish, powershell

        Options
          --help        this page; after a command, a page about that command
          --version     the version
          --paths       the folders that are used
          --licenses    the licences of the program and of what is inside it
          --plain       labelled sentences, one fact a line, no drawing; the form as
                        questions and answers (by itself where TERM is dumb)
          --no-color    no colour (NO_COLOR set does the same)
          --            what follows is a file, whatever its name

        Exit status
          0  all that was asked for holds
          1  something does not hold or could not be judged
          2  the input is not usable
          3  the beam can move
          4  the program itself failed
        """;

    private const string Check = """
        fieldcheck check FILE... [--working] [--json] [--at PLACE]... [--units us|si]

        Examples
          fieldcheck check bearer.toml
          fieldcheck check bearer.toml --at "A + 4 ft" --at "mid 1"
          fieldcheck check bearer.toml --working > bearer.txt
          fieldcheck check bearer.toml --units si
          fieldcheck check one.toml two.toml --json > answers.jsonl
          fieldcheck check - < bearer.toml

        Prints for each file the reactions and their proof, the peaks of shear,
        moment and deflection, and what must be said beside them. Several files:
        one after the other, and the largest exit status of all.

          FILE          a beam file; - is standard input
          --at PLACE    also the values there, on both sides: 4 ft, A + 4 ft,
                        end - 6 in, joint 1, mid 2
          --working     the working by hand below it, for someone else to follow
          --units us|si the units to show, whatever the file asks for
          --json        JSON in SI units; one line each where there are several
        """;

    private const string Batch = """
        fieldcheck batch FILE|FOLDER|-... [--jobs N] [--at PLACE]... [--units us|si]

        Examples
          fieldcheck batch bearers > answers.jsonl
          fieldcheck batch one.toml two.toml bearers --jobs 1
          find . -name "*.toml" | fieldcheck batch - > answers.jsonl

        Checks any number of files, one on each processor at a time, and prints the
        object of check --json, a line for each file, in the order named. A file that
        cannot be used is a line with an error, and the rest goes on. The exit status
        is the largest of all.

          FILE          a beam file; named twice, it is checked twice
          FOLDER        its *.toml by name, without the folders within
          -             names of files and folders on standard input, one a line
          --jobs N      how many files at the same time; else one a processor
          --at PLACE    also the values there, as for check
          --units us|si the units of the texts, whatever the file asks for
        """;

    private const string Working = """
        fieldcheck working FILE [--about PLACE] [--combination NAME] [--short]
                           [--no-step-names] [--units us|si]

        Examples
          fieldcheck working bearer.toml
          fieldcheck working bearer.toml --about B
          fieldcheck working bearer.toml --about "A + 4 ft" --short
          fieldcheck working bearer.toml --combination service > working.txt
          fieldcheck working - < bearer.toml

        Prints the reactions worked by hand, one operation a line, as one would on
        paper: from the free body to the proof, then along the beam. Every
        combination in turn.

          FILE                a beam file; - is standard input
          --about PLACE       take moments about this place: a support's label,
                              4 ft, A + 4 ft, joint 1, mid 2; else about the point
                              that leaves fewest unknowns
          --combination NAME  only this one, by its name or its number
          --short             results and the equations they come from, without the
                              sentences that explain
          --no-step-names     without the names of the steps
          --units us|si       the units to show, whatever the file asks for
        """;

    private const string Report = """
        fieldcheck report FILE --output NAME.pdf|.html|.md|.txt [--date DATE]
                          [--short] [--force] [--units us|si]

        Examples
          fieldcheck report bearer.toml --output bearer.pdf --date 2026-11-26
          fieldcheck report bearer.toml --output bearer.html --short
          fieldcheck report - --output bearer.txt < bearer.toml

        Writes the record of the check: the beam as drawn and as typed, reactions
        and their proof, peaks, stated figures, checks, the working by hand, what
        was taken for granted and what was not checked, and room to sign. The same
        file, options and version give the same bytes.

          FILE          a beam file; - is standard input
          --output NAME the file to write; its ending says what: .pdf, .html (one
                        file with its drawings), .md, .txt
          --date DATE   the date of the check, in your words; else the date in the
                        file, else a blank to fill in
          --short       of the working only equations and results, of the checks
                        only the working of the one used up most
          --force       write over a file that is there
          --units us|si the units to show, whatever the file asks for
        """;

    private const string Completion = """
        fieldcheck completion bash|zsh|fish|powershell

        Prints what lets a shell complete commands, options and beam files.

          bash        source <(fieldcheck completion bash)
          zsh         source <(fieldcheck completion zsh)    after compinit
          fish        fieldcheck completion fish | source
          powershell  fieldcheck completion powershell | Out-String | Invoke-Expression

        To keep it, put the line into the file that your shell reads when it starts.
        """;

    private const string Presets = """
        fieldcheck presets

        Lists the presets with their titles: those built in, your own, and those of
        the site, with the folders they lie in. A preset is an ordinary beam file:
        put one into your folder and it is found. Site presets lie in a folder
        "presets" beside the beam or in the current folder, or in the folders that
        FIELDCHECK_PRESETS names. Files that cannot be used are told on standard
        error.
        """;
}
