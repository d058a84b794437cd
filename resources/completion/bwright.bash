# SPDX-License-Identifier: GPL-3.0-or-later
# Completion of bwright in bash. Commands, options and what an option takes are read from the help of
# the program itself, so they are always those of the program that is installed.

_bwright_files() # ENDING WORD: folders, and files that end so
{
    compopt -o filenames 2>/dev/null
    mapfile -t COMPREPLY < <(compgen -d -- "$2"; compgen -f -X "!*$1" -- "$2")
}

_bwright_words() # "WORDS..." WORD: the last of a list with commas
{
    local done=''
    [[ $2 != *,* ]] || done=${2%,*},
    mapfile -t COMPREPLY < <(compgen -P "$done" -W "$1" -- "${2##*,}")
}

_bwright_value() # OPTION WORD HELP: 1 when the option takes nothing
{
    local takes
    takes=$(sed -nE "s/^  $1 ([^ ]+).*/\1/p" <<<"$3")
    case $takes in
    '' | Needs: | Excludes:) return 1 ;;
    FILE.bwgym | NO.\|FILE) _bwright_files .bwgym "$2" ;;
    FILE | NO.\|FILE) case $1 in
        --bundle) _bwright_files .json "$2" ;;
        --csv) _bwright_files .csv "$2" ;;
        *) _bwright_files '' "$2" ;;
        esac ;;
    DIR) compopt -o filenames 2>/dev/null
        mapfile -t COMPREPLY < <(compgen -d -- "$2") ;;
    *{*}*) takes=${takes#*\{}
        takes=${takes%%\}*}
        _bwright_words "${takes//,/ }" "$2" ;;
    START) _bwright_words 'together spread best' "$2" ;;
    KIND) _bwright_words 'warm-up power strength finisher' "$2" ;;
    mon,wed,fri) _bwright_words 'mon tue wed thu fri sat sun' "$2" ;;
    esac
}

_bwright()
{
    local program=${1/#\~/$HOME} word=$2 before=$3 command='' i help
    COMPREPLY=()
    for ((i = 1; i < COMP_CWORD; i++)); do
        [[ ${COMP_WORDS[i]} == -* ]] || { command=${COMP_WORDS[i]}; break; }
    done
    help=$("$program" $command --help 2>/dev/null) || return
    [[ -z $command ]] || ! _bwright_value "$before" "$word" "$help" || return
    local options
    options=$(sed -nE 's/^  (-h,)?(--[a-z-]+).*/\2/p' <<<"$help")
    [[ -n $command || $word == -* ]] ||
        options=$(sed -n '/^Subcommands:/,/^$/s/^  \([a-z]*\) .*/\1/p' <<<"$help")
    mapfile -t COMPREPLY < <(compgen -W "$options" -- "$word")
}

complete -F _bwright bwright
