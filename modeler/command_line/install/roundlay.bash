# Completion of roundlay and roundlay-modeler for bash. Options come from the program's own help.
_roundlay_options() {
    "$@" --help 2>/dev/null | grep -oE -- '--[a-z][a-z-]*' | sort -u
}

_roundlay() {
    local current=${COMP_WORDS[COMP_CWORD]} command=${COMP_WORDS[1]}
    COMPREPLY=()
    if [[ $COMP_CWORD -eq 1 && $current != -* ]]; then
        mapfile -t COMPREPLY < <(compgen -W "new check list export makeable picture level record survey tick compare format" -- "$current")
    elif [[ $current == -* ]]; then
        if [[ $COMP_CWORD -eq 1 ]]; then
            mapfile -t COMPREPLY < <(compgen -W "$(_roundlay_options "${COMP_WORDS[0]}")" -- "$current")
        else
            mapfile -t COMPREPLY < <(compgen -W "$(_roundlay_options "${COMP_WORDS[0]}" "$command")" -- "$current")
        fi
    elif [[ $command == format ]]; then
        mapfile -t COMPREPLY < <(compgen -W "$("${COMP_WORDS[0]}" format --json | grep -oP '(?<="table": ")[^"]*')" -- "$current")
    elif [[ ${COMP_WORDS[COMP_CWORD - 1]} == --to ]]; then
        mapfile -t COMPREPLY < <(compgen -d -- "$current")
    else
        mapfile -t COMPREPLY < <(compgen -f -X '!*.roundlay' -- "$current"; compgen -d -- "$current")
    fi
}

_roundlay_modeler() {
    local current=${COMP_WORDS[COMP_CWORD]}
    if [[ $current == -* ]]; then
        mapfile -t COMPREPLY < <(compgen -W "--help --version" -- "$current")
    else
        mapfile -t COMPREPLY < <(compgen -f -X '!*.roundlay' -- "$current"; compgen -d -- "$current")
    fi
}

complete -o filenames -F _roundlay roundlay
complete -o filenames -F _roundlay_modeler roundlay-modeler
