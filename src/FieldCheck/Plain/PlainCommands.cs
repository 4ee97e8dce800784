using System.Collections.Immutable;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Plain;

/// <summary>Every command. The help and docs/plain.md are made from this table, so neither can leave anything out.</summary>
internal static class PlainCommands
{
    /// <summary>All commands, in the order in which they are listed.</summary>
    internal static ImmutableArray<PlainCommand> All { get; } =
    [
        new("new", "new", "begin a new beam: its spans, supports and loads are asked", (state, _) =>
            PlainFiles.Begin(state)),
        new("open", "open, open NAME, open NAME as copy", "open a beam; its number or part of its name will do",
            PlainFiles.Open),
        new("asked", "asked", "go through the cells that the preset asks for", (state, _) => PlainFiles.Asked(state)),
        new("show", "show", "say the beam row by row, as typed", (state, _) => state.Say([.. PlainBeam.Rows(state)])),
        new("span", "span 1 length 12 ft", "change a cell of a span; span 1 alone asks its cells in turn",
            (state, text) => PlainRows.Change(state, FormBlock.Spans, text)),
        new("support", "support B at 2.7", "change a cell of a support; support B alone asks its cells in turn",
            (state, text) => PlainRows.Change(state, FormBlock.Supports, text)),
        new("load", "load 2 size 14 kN", "change a cell of a load; load 2 alone asks its cells in turn",
            (state, text) => PlainRows.Change(state, FormBlock.Loads, text)),
        new("stated", "stated A 10.3 kN, stated A moment 5 kNm",
            "a figure that a supplier states; stated A alone asks its cells, stated alone goes from support to support",
            PlainStated.Change),
        new("case", "case live name imposed, case live bay by bay yes",
            "change a case, by its name, wherever it is used; case live alone asks its cells in turn",
            (state, text) => PlainRows.Change(state, FormBlock.Cases, text)),
        new("combination", "combination 2 basis factored, combination 2 live 1.6",
            "change a cell of a combination or its factor of a case; combination 2 alone asks its cells in turn",
            (state, text) => PlainRows.Change(state, FormBlock.Combinations, text)),
        new("rolling", "rolling 1 axles 12 kN; 12 kN at 1.2 m",
            "change a cell of a rolling load; rolling 1 alone asks its cells in turn",
            (state, text) => PlainRows.Change(state, FormBlock.Rolling, PlainNames.BehindName(FormBlock.Rolling, text))),
        new("standard", "standard, standard EN 1990",
            "the sets of combinations of standards: what one comes to here, and its rows put in", PlainSets.Begin),
        new("section", "section IPE 200, section 75x225, section depth 225 mm",
            "what the beam is made of: a shape of the catalogue, searched where it is not known, sides or figures; section alone asks its cells in turn",
            (state, text) => PlainSticks.Named(state, FormBlock.Sections, text)),
        new("material", "material C24, material allow bending 12 MPa",
            "a grade of the catalogue, searched where it is not known, or its figures; material alone asks its cells in turn",
            (state, text) => PlainSticks.Named(state, FormBlock.Materials, text)),
        new("factors", "factors, factors duration", "list the factors of timber of the rules chosen; one can be taken", PlainSticks.Factors),
        new("limits", "limits deflection L/360, limits lasting live 0.3",
            "what deflection is held to, and by which rules; limits alone asks its cells in turn", PlainSticks.Limits),
        new("rules", "rules, rules NDS", "list the rules that strengths are judged by; one can be taken", PlainSticks.RulesFor),
        new("unbraced", "unbraced 1 2.4 m, unbraced 1 braced",
            "how long a span is free to go sideways; unbraced alone goes from span to span", PlainSticks.Unbraced),
        new("bearing", "bearing A 75 mm, bearing A allow 2.1 MPa",
            "how long the bearing at a support is and what it may carry; bearing alone goes from support to support",
            (state, text) => PlainSticks.Bearing(state, FormColumn.Bearing, text)),
        new("pad", "pad A 600 x 600", "the pad below a support; pad alone goes from support to support",
            (state, text) => PlainSticks.Bearing(state, FormColumn.Pad, text)),
        new("own", "own weight on, own weight case dead", "count the weight of the sections as a load, or off",
            PlainRows.OwnWeight),
        new("more", "more, more load 2, more limits", "list everything else that can be set, with its name",
            (state, text) => state.Say([.. PlainBeam.More(state, text)])),
        new("add", "add load, add load 14 kN, add span after 1, add combination 1.2 dead + 1.6 live, add rolling load", "add a row; its cells are asked", PlainRows.Add),
        new("delete", "delete load 2", "take a row away", PlainRows.Delete),
        new("copy", "copy load 2", "put a copy of a row below it", PlainRows.Copy),
        new("move", "move load 2 up, move load 2 down", "change places with the row above or below", PlainRows.Move),
        new("undo", "undo", "take back the last change, whatever it was", (state, _) =>
            PlainBeam.Again(state, CommandName.Undo)),
        new("redo", "redo", "make again what was taken back", (state, _) => PlainBeam.Again(state, CommandName.Redo)),
        new("results", "results, results 2", "say reactions, proof, peaks and remarks, of one combination or all",
            PlainResults.Say),
        new("worst", "worst", "say the greatest and least over all combinations, bays and rolling loads, and what governs",
            (state, _) => PlainResults.Worst(state)),
        new("checks", "checks, checks 2",
            "say every check with its verdict, what is not checked and the cautions; a number alone with its work", PlainChecks.Say),
        new("work", "work, work 2", "say how one check is worked: the one used up most, or that of a number", PlainChecks.Work),
        new("headroom", "headroom, headroom at 1.25 m, headroom prop 2 kN/mm",
            "say how far loads and the first bay may grow, what section is needed, where a prop would do; or what load may stand at a place",
            PlainChecks.Headroom),
        new("would", "would do, would do IPE HEA", "list the sections that would do, of the family of the present one or of those named; one can be taken",
            PlainChecks.WouldDo),
        new("at", "at 1.25 m, at B, at mid 1", "say shear and moment at a place, both sides of a jump",
            PlainResults.At),
        new("working", "working, working short, working about B, working save NAME",
            "say the reactions worked by hand, line by line, or save that in a text file", PlainWorking.Say),
        new("report", "report, report NAME.pdf", "save the record of the check, to sign: NAME ends in .pdf, .html, .md or .txt",
            PlainFiles.Record),
        new("draw", "draw, draw moment", "draw the beam, its shear and its moment, in plain characters",
            PlainDrawing.Draw),
        new("problems", "problems", "say every cell that is to be mended", (state, _) => PlainResults.Problems(state)),
        new("cautions", "cautions", "say what is not checked, and whose word comes first", (state, _) =>
            PlainResults.Cautions(state)),
        new("units", "units us, units si", "show results in other units; what was typed stays", PlainBeam.Units),
        new("save", "save, save NAME", "save in the beam's own file, or in another", PlainFiles.Save),
        new("stop", "stop", "end the questions and go back to commands", (state, _) => PlainBeam.Stop(state)),
        new("help", "help, help WORD", "say all this, or what one command does", (state, text) =>
            state.Say([.. PlainHelp.Lines(text)])),
        new("leave", "leave", "leave; what is not saved is asked about", (state, _) => PlainFiles.Leave(state))
        {
            OtherWords = ["quit", "exit"],
        },
    ];

    /// <summary>The command that a line begins with; null where it begins with none.</summary>
    /// <param name="line">The line.</param>
    internal static PlainCommand? Of(string line) => PlainTokens.Of(line) is [(string word, _), ..]
        ? All.FirstOrDefault(command => command.IsCalled(word))
        : null;

    /// <summary>Does what a line says: a command, or the name of a key and a text for it.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="line">The line, not empty.</param>
    internal static PlainStep Run(PlainState state, string line)
    {
        ImmutableArray<(string Word, int End)> words = PlainTokens.Of(line);
        if (words.IsEmpty)
        {
            return line == "?" ? state.Say([.. PlainHelp.Lines("")]) : Unknown(line);
        }

        if (Of(line) is PlainCommand command)
        {
            string rest = line[words[0].End..];
            return command.Run(state, command.Word is "open" or "save" or "at" ? rest.Trim() : rest);
        }

        return PlainNames.OfBeam(state.Form.Document, line) is (PlainTarget target, string text)
            ? PlainCells.Type(state, target, text)
            : Unknown(line.Split(' ')[0]);

        PlainStep Unknown(string word)
        {
            IEnumerable<string> known = All.Select(command => command.Word)
                .Concat(PlainNames.KeysOf(state.Form.Document).Select(line => PlainTokens.Of(line.Key)[0].Word))
                .Distinct();
            string near = NearSpelling.Of(word, known) is [string first, ..] ? $" Did you mean {first}?" : "";
            return state.Say($"There is no command {word}.{near} Say help for all of them.");
        }
    }
}
