#compdef bwright
# SPDX-License-Identifier: GPL-3.0-or-later
# Completion of bwright in zsh. Commands, options and what an option takes are read from the help of
# the program itself, so they are always those of the program that is installed.

_bwright_list() # PATTERN TITLE: the lines that begin so, each with what is told of it
{
    local -a found
    found=(${(f)"$(awk -v front="^  $1" -v below="^${(l:30:)} *[^ ]" '
        $0 ~ front { if (name) print name ":" told
                         name = $1; sub(/^-h,/, "", name); told = substr($0, 31); next }
        name && $0 ~ below { told = substr($0, 31) }
        name && /^$/ { exit }
        END { if (name) print name ":" told }')"})
    _describe "$2" found
}

_bwright_words() # WORD...: one, or the last of a list with commas
{
    compset -P '*,'
    compadd -- $@
}

_bwright_value() # OPTION HELP: 1 when the option takes nothing
{
    local takes=$(sed -nE "s/^  $1 ([^ ]+).*/\1/p" <<<$2)
    case $takes in
    '' | Needs: | Excludes:) return 1 ;;
    FILE.bwgym | NO.\|FILE) _files -g '*.bwgym' ;;
    FILE) case $1 in
        --bundle) _files -g '*.json' ;;
        --csv) _files -g '*.csv' ;;
        *) _files ;;
        esac ;;
    DIR) _files -/ ;;
    *{*}*) takes=${takes#*\{}
        _bwright_words ${(s:,:)takes%%\}*} ;;
    START) _bwright_words together spread best ;;
    KIND) _bwright_words warm-up power strength finisher ;;
    mon,wed,fri) _bwright_words mon tue wed thu fri sat sun ;;
    *) _message "${takes%%:*}" ;;
    esac
    return 0
}

_bwright()
{
    local program=${(Q)words[1]/#\~/$HOME} command help
    command=${${words[2,CURRENT-1]:#-*}[1]}
    help=$($program $command --help 2>/dev/null) || return
    [[ -z $command ]] || ! _bwright_value ${(Q)words[CURRENT-1]} $help || return 0
    if [[ -z $command && $PREFIX != -* ]]; then
        sed -n '/^Subcommands:/,/^$/p' <<<$help | _bwright_list '[a-z]' command
    else
        _bwright_list '(-h,)?--' option <<<$help
    fi
}

_bwright "$@"
