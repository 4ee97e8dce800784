namespace FieldCheck.CommandLine.Completion;

/// <summary>Completion for bash, 3.2 and later.</summary>
internal static class BashCompletion
{
    internal static string Script() => $$"""
        # Completion of fieldcheck for bash, made by: fieldcheck completion bash
        _fieldcheck_words() { # from a list
            local word
            while IFS= read -r word; do
                COMPREPLY+=("$word")
            done < <(compgen -W "$1" -- "$current")
        }

        _fieldcheck_files() { # beam files, and folders on the way to them
            local word
            while IFS= read -r word; do
                # A name that would pass for an option is given its folder, unless -- stands before it.
                [[ -z $rest && $word == -* ]] && word=./$word
                COMPREPLY+=("$word")
            done < <(compgen -d -- "$current"; compgen -f -X '{{"!*.toml"}}' -- "$current")
        }

        _fieldcheck() {
            local current=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command= rest= i
            # An option and its value are parted at the sign between them.
            if [[ $current == = ]]; then
                current=
            elif [[ $before == = ]]; then
                before=${COMP_WORDS[COMP_CWORD-2]}
            fi
            current=${current#[\"\']}
            current=${current//\\/}
            for ((i = 1; i < COMP_CWORD; i++)); do
                case ${COMP_WORDS[i]} in
                    {{CompletionScript.Valued.Barred()}})
                        [[ ${COMP_WORDS[i+1]} == = ]] && ((i++))
                        ((i++)) ;;
                    --) rest=names ;;
                    -*) ;;
                    *) command=${COMP_WORDS[i]}; break ;;
                esac
            done
            for ((; i < COMP_CWORD; i++)); do
                [[ ${COMP_WORDS[i]} == -- ]] && rest=names
            done
            COMPREPLY=()
            if [[ -n $rest ]]; then # behind -- nothing is a command or an option
                case $command in
                    {{CommandWords.Presets}}|{{CommandWords.Completion}}) ;;
                    *) _fieldcheck_files ;;
                esac
                return
            fi
            case $before in
        {{CompletionScript.OfChoices.Lines(option => $"        {option.Name}) _fieldcheck_words '{option.Choices.Spaced()}'; return ;;")}}
                {{CompletionScript.OfFiles.Barred()}}) COMPREPLY=(); compopt -o default 2>/dev/null; return ;;
                {{CompletionScript.Typed.Barred()}}) return ;;
            esac
            if [[ $current == -* ]]; then
                case $command in
        {{CommandWords.All.Lines(command => $"            {command}) _fieldcheck_words '{CompletionScript.OptionsWith(command).Spaced()}' ;;")}}
                    *) _fieldcheck_words '{{CompletionScript.OptionsWith(null).Spaced()}}' ;;
                esac
                return
            fi
            case $command in
                '') _fieldcheck_words '{{CommandWords.All.Spaced()}}'; _fieldcheck_files ;;
                {{CompletionScript.OnFiles.Barred()}}) _fieldcheck_files ;;
                {{CommandWords.Completion}}) _fieldcheck_words '{{Shells.All.Spaced()}}' ;;
            esac
        }

        complete -o filenames -F _fieldcheck fieldcheck
        """;
}
