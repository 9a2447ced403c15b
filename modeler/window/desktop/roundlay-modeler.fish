# Completion for fish.
complete -c roundlay-modeler -k -a '(__fish_complete_suffix .roundlay)'
complete -c roundlay-modeler -f -s h -l help -d 'Tells the options'
complete -c roundlay-modeler -f -s v -l version -d 'Tells the version'
