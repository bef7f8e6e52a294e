/** The scripts that make a shell ask `neckring complete-words` at each Tab. */

import type { Shell } from './complete-line.ts';

const bash = `# Words that Tab completes after neckring, for bash.
# To have them in every new shell, add this line to ~/.bashrc:
#   eval "$(neckring completion bash)"

_neckring() {
    local line=\${COMP_LINE:0:COMP_POINT} head='' word
    [[ -n $line ]] || line="\${COMP_WORDS[*]:0:COMP_CWORD+1}"
    COMPREPLY=()
    while IFS= read -r word; do
        if [[ -z $head ]]; then head=$word; else COMPREPLY+=("$word"); fi
    done < <(command neckring complete-words bash "$line" "$COMP_WORDBREAKS" "\${COMP_TYPE:-}" "\${COLUMNS:-}" 2>/dev/null </dev/null)
    case $head in
        open) compopt -o nospace 2>/dev/null ;;
        files) compopt -o default 2>/dev/null ;;
        folders) compopt -o dirnames 2>/dev/null ;;
    esac
    return 0
}

complete -o nosort -F _neckring neckring 2>/dev/null || complete -F _neckring neckring
`;

const zsh = `#compdef neckring
# Words that Tab completes after neckring, for zsh.
# To have them in every new shell, add this line to ~/.zshrc, after compinit:
#   eval "$(neckring completion zsh)"

_neckring() {
    local head line word tab=$'\\t'
    local -i widest=0
    local -a answer words_found shown suffix expl
    line="\${(j: :)words[1,CURRENT-1]} $IPREFIX$QIPREFIX$PREFIX"
    answer=("\${(@f)$(command neckring complete-words zsh "$line" 2>/dev/null </dev/null)}")
    head=$answer[1]
    shift answer
    case $head in
        files) [[ $PREFIX == --*=* ]] && compset -P '*='; _files; return ;;
        folders) _files -/; return ;;
        open) suffix=(-S '') ;;
    esac
    (( $#answer )) || return 1
    words_found=("\${(@)answer%%$tab*}")
    for word in $words_found; do (( $#word > widest )) && widest=$#word; done
    for word in $answer; do
        if [[ $word == *$tab* ]]; then
            shown+=("\${(r:$widest:)word%%$tab*}  -- \${word#*$tab}")
        else
            shown+=("$word")
        fi
    done
    _description -V neckring-words expl 'word'
    compadd "$expl[@]" "$suffix[@]" -l -d shown -a words_found
}

if [[ $funcstack[1] == _neckring ]]; then
    _neckring "$@"
else
    compdef _neckring neckring
fi
`;

const fish = `# Words that Tab completes after neckring, for fish.
# To have them in every new shell:
#   neckring completion fish > ~/.config/fish/completions/neckring.fish

function __neckring_words
    set -l answer (command neckring complete-words fish (commandline -cp | string collect) 2>/dev/null </dev/null)
    set -l head $answer[1]
    set -e answer[1]
    switch "$head"
        case files folders
            set -l typed (commandline -ct)
            set -l prefix (string match -r -- '^--[a-z-]+=' $typed)
            set -l rest (string replace -r -- '^--[a-z-]+=' '' $typed)
            if test "$head" = folders
                set answer (__fish_complete_directories $rest '')
            else
                set answer (__fish_complete_path $rest '')
            end
            for path in $answer
                printf '%s\\n' "$prefix$path"
            end
        case '*'
            for word in $answer
                printf '%s\\n' $word
            end
    end
end

complete -c neckring -e
complete -c neckring -f -k -a '(__neckring_words)'
`;

export const scripts: Readonly<Record<Shell, string>> = { bash, zsh, fish };
