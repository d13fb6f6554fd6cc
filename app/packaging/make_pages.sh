#!/bin/sh
# make_pages.sh THOLEPINCTL CHANGELOG FOLDER: what is installed and the programs write themselves: pages of the manual,
# completions. Packed as Debian wants it, so that the same text gives the same bytes.
set -eu
ctl=$1 changelog=$2 to=$3
rm -rf "$to"
mkdir -p "$to/man" "$to/bash" "$to/zsh" "$to/fish" "$to/doc"
"$ctl" manual "$to/man" --quiet
for shell in bash zsh fish; do
    "$ctl" completion "$shell" >"$to/$shell/tholepinctl"
    "$ctl" completion "$shell" --window >"$to/$shell/tholepin"
done
for program in tholepinctl tholepin; do
    mv "$to/zsh/$program" "$to/zsh/_$program"
    mv "$to/fish/$program" "$to/fish/$program.fish"
done
cp "$changelog" "$to/doc/changelog"
gzip -9n "$to"/man/*.1 "$to/doc/changelog"
