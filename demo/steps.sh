#!/usr/bin/env bash
# The command-line story on the demo club: demo/steps.sh BUILD OUT. It says what it runs; OUT is made anew.
set -euo pipefail
build=$1
out=$2
demo=$(cd "$(dirname "$0")" && pwd)
ctl="$build/app/tholepinctl"
club="$out/quillmere.tholepin"
day=2026-03-14

say() { printf '\n\033[1m%s\033[0m\n' "$*"; }

# Runs a command and shows it. Exit 1 is an answer that needs somebody, as here it should; 2 and 3 end the demo.
show() {
    printf '\n$ tholepinctl'
    printf ' %q' "$@"
    printf '\n'
    "$ctl" "$@" || [ $? -eq 1 ]
}

rm -rf "$out"
mkdir -p "$out"

say "Quillmere Lake Rescue, an invented club: its register becomes a club file."
show create "$club" --club "Quillmere Lake Rescue" --from "$demo/club" --today $day

say "Its record of two seasons: forty trips, what was lost and what was worn out."
"$demo/seasons.sh" "$ctl" "$club"
show missing "$club" --event "Lake festival 2025" --today $day

say "Every item, boat and person gets a tag to print."
show tags "$club" --out "$out/tags.pdf" --control

say "One knife has been missing since a training day."
show missing "$club" --today $day

say "Which boats can be made ready with the kit on hand, and by which moves."
show make-ready "$club" --today $day

say "Pictures of Bittern's kit as it lies on the sand, read again."
show scene "$club" --boat Bittern --out "$out/bittern" --heap 14 --today $day
show read "$out/bittern"

say "Launch check of Bittern from those pictures. Tobin weighs 78 kg, and one jacket aboard is an S."
show check "$club" --boat Bittern --phase launch --driver "Tobin Ashe" --crew "Ines Varro" \
    --from "$out/bittern" --points "$demo/check/bittern-points.csv" --today $day

say "Signing it now is refused."
show check "$club" --boat Bittern --phase launch --sign "Tobin Ashe" --json --today $day >"$out/refused.json"

say "A knife turns up in the bow bag, and an L jacket comes from the store: the same check goes on and is signed."
show check "$club" --boat Bittern --phase launch --codes "$demo/check/bittern-mended.txt" --sign "Tobin Ashe" --today $day

say "Grebe, by a hand-held scanner that types."
show check "$club" --boat Grebe --phase launch --driver "Petra Lund" --crew "Sami Reeve" \
    --codes "$demo/check/grebe.txt" --points "$demo/check/grebe-points.csv" --sign "Petra Lund" --today $day

say "The boats now. The knife was found by the check."
show boats "$club" --today $day
show missing "$club" --today $day

say "The gear officer counts the store and has the tow lines looked at."
show stocktake "$club" --place "Gear store" --codes "$demo/seasons/gear-store.txt" --today $day
printf 'KGG76DZM61\nKW8GYDDS4G\n' | show service "$club" --rule "yearly look" --by "Joss Iveny" --codes - --today $day

say "The committee: what runs short when, what to order by which day, how long kit really lasts here."
show replace "$club" --out "$out/order.pdf" --today $day
show lasting "$club" --today $day

say "Somebody asks what was in Bittern on the morning of the festival."
show aboard "$club" --boat Bittern --on 2025-06-28T09:00:00Z --today $day

say "What falls due within thirty days, and a check of the record."
show due "$club" --within 30d --today $day
show verify "$club"
