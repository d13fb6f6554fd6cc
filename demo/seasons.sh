#!/usr/bin/env bash
# The demo club's record of two seasons, 2024 and 2025: demo/seasons.sh CTL CLUB. Quiet; a few seconds.
set -euo pipefail
ctl=$1
club=$2
demo=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# Exit 1 is an answer that needs somebody; the record is made all the same.
run() { "$ctl" "$@" >"$work/out" 2>"$work/err" || [ $? -eq 1 ] || { cat "$work/err" >&2; exit 1; }; }

points() { # points BOAT PHASE: all done, in range
    awk -F, -v boat="$1" -v phase="$2" 'BEGIN { class = boat == "Grebe" ? "skiff" : "inflatable"; print "point,value" }
        NR > 1 && $3 == phase && ($1 == class || $2 == boat) {
            low = $7; high = $8
            value = $5 == "look" ? "done" : low != "" ? low : high != "" ? high / 2 : 1
            print $4 "," value }' "$demo/club/points.csv" >"$work/points.csv"
}

check() { # check PHASE AT CODES MORE…
    local phase=$1 at=$2 codes=$3
    shift 3
    points "$boat" "$phase"
    run check "$club" --boat "$boat" --phase "$phase" --driver "$driver" --crew "$crew" --codes "$codes" \
        --points "$work/points.csv" --sign "$driver" --event "$event" --at "$at" --today "$day" "$@"
}

launch() {
    check launch "${day}T${left}:00Z" "$demo/seasons/${boat,,}.txt" ${urgent:+--urgent "$urgent"}
}

# What stayed behind is left out, what came along from another boat is among it.
come_back() {
    grep -vxF "${not_back:-none}" "$demo/seasons/${boat,,}.txt" >"$work/codes"
    [ -z "$came_along" ] || echo "$came_along" >>"$work/codes"
    check return "${day}T${back}:00Z" "$work/codes" --left "${day}T${left}:00Z" --back "${day}T${back}:00Z" \
        ${hours:+--hours "$hours"} ${fuel:+--fuel "$fuel"} ${incidents:+--incidents "$incidents"}
}

each_boat() { # each_boat DAY WHAT: the day's boats, one after the other
    while IFS=, read -r day event boat left back hours driver crew not_back came_along urgent fuel incidents; do
        urgent=${urgent//\"/} incidents=${incidents//\"/}
        "$2"
    done < <(grep "^$1," "$work/patrols")
}

run import "$club" "$demo/seasons/past" --today 2024-04-01
tail -n +2 "$demo/seasons/patrols.csv" | tr -d '\r' | sed -E 's/"([^",]*), ([^"]*)"/"\1; \2"/g' >"$work/patrols"
for date in $(cut -d, -f1 "$work/patrols" | sort -u); do
    each_boat "$date" launch
    each_boat "$date" come_back
done
# What stayed behind or came along is back in its place by the next patrol; in winter the store is counted.
run stocktake "$club" --place "Gear store" --codes "$demo/seasons/gear-store.txt" --sign "Joss Iveny" \
    --at 2026-02-28T14:00:00Z --today 2026-02-28
run import "$club" "$demo/seasons/march" --today 2026-03-08
