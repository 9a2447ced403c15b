# Completion for fish.
complete -c roundlay -n __fish_use_subcommand -f -a 'new check list export makeable picture level record survey tick compare format'
complete -c roundlay -n 'not __fish_use_subcommand' -k -a '(__fish_complete_suffix .roundlay)'
complete -c roundlay -n 'not __fish_use_subcommand' -f -a '(roundlay (commandline -opc)[2] --help 2>/dev/null | string match -ro -- "--[a-z][a-z-]*" | sort -u)'
