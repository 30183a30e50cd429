# Completion for undercowlctl: what may follow is asked of the program itself, so that it never lags behind.
_undercowlctl() {
    local word=${COMP_WORDS[COMP_CWORD]} command=() one help
    for one in "${COMP_WORDS[@]:1:COMP_CWORD-1}"; do
        case $one in -*) ;; *) command+=("$one") ;; esac
    done
    help=$(undercowlctl "${command[@]:0:2}" --help 2>/dev/null || undercowlctl "${command[@]:0:1}" --help 2>/dev/null)
    if [[ $word == -* ]]; then
        mapfile -t COMPREPLY < <(compgen -W "$(grep -o -e '--[a-z-]*' <<<"$help" | sort -u)" -- "$word")
        return
    fi
    mapfile -t COMPREPLY < <(compgen -W "$(sed -n '/^Subcommands:/,/^$/s/^  \([a-z][a-z-]*\).*/\1/p' <<<"$help")" -- "$word")
    ((${#COMPREPLY[@]})) || mapfile -t COMPREPLY < <(compgen -f -- "$word")
}
complete -o filenames -F _undercowlctl undercowlctl
