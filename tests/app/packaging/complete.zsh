# complete.zsh FOLDER LINE: what a zsh at a terminal makes of the line and a press of Tab, with the completions of the folder.
zmodload zsh/zpty
answer=$(mktemp)
zpty shell 'TERM=dumb zsh -f -i'
zpty -w shell "fpath=($1 \$fpath); autoload -U compinit; compinit -u -D; complete_it() { zle complete-word; print -r -- \"\$BUFFER\" >$answer }; zle -N complete_it; bindkey '^I' complete_it; print rea''dy"
zpty -r -m shell said '*ready*'
zpty -w -n shell "$2"$'\t'
for i in {1..100}; do
    while zpty -r -t shell said; do :; done # so that it can go on writing
    [[ -s $answer ]] && break
    sleep 0.05
done
cat $answer
rm $answer
zpty -d shell
