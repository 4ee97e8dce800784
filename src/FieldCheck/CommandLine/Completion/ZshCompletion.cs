namespace FieldCheck.CommandLine.Completion;

/// <summary>Completion for zsh: sourced after compinit, or saved as _fieldcheck in a folder of fpath.</summary>
internal static class ZshCompletion
{
    internal static string Script() => $$"""
        #compdef fieldcheck
        # Completion of fieldcheck for zsh, made by: fieldcheck completion zsh
        _fieldcheck() {
            local before=${words[CURRENT-1]} command=
            integer i
            for ((i = 2; i < CURRENT; i++)); do
                case ${words[i]} in
                    ({{CompletionScript.Valued.Barred()}}) ((i++)) ;;
                    (-*) ;;
                    (*) command=${words[i]}; break ;;
                esac
            done
            if [[ ${words[CURRENT]} == --*=* ]]; then
                before=${words[CURRENT]%%=*}
                compset -P '*='
            fi
            case $before in
        {{CompletionScript.OfChoices.Lines(option => $"        ({option.Name}) compadd -- {option.Choices.Spaced()}; return ;;")}}
                ({{CompletionScript.OfFiles.Barred()}}) _files; return ;;
                ({{CompletionScript.Typed.Barred()}}) return 1 ;;
            esac
            if [[ ${words[CURRENT]} == -* ]]; then
                case $command in
        {{CommandWords.All.Lines(command => $"            ({command}) compadd -- {CompletionScript.OptionsWith(command).Spaced()} ;;")}}
                    (*) compadd -- {{CompletionScript.OptionsWith(null).Spaced()}} ;;
                esac
                return
            fi
            case $command in
                ('') compadd -- {{CommandWords.All.Spaced()}}; _files -g '*.toml' ;;
                ({{CompletionScript.OnFiles.Barred()}}) _files -g '*.toml' ;;
                ({{CommandWords.Completion}}) compadd -- {{Shells.All.Spaced()}} ;;
            esac
        }

        if [[ ${funcstack[1]} == _fieldcheck ]]; then
            _fieldcheck "$@"
        else
            compdef _fieldcheck fieldcheck
        fi
        """;
}
