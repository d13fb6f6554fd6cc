# Sourced by demo/run and tests/run: installs what is missing and builds the release preset.
# Leaves $build, the folder of the programs.

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
build=$top/build/release

as_root() {
    if [ "$(id -u)" = 0 ]; then "$@"; elif command -v sudo >/dev/null; then sudo "$@"; else
        echo "Packages are missing and neither root nor sudo is at hand: $*" >&2
        exit 1
    fi
}

install_missing() {
    local wanted missing
    wanted=$(grep -v '^#' "$top/tests/support/packages.txt")
    # shellcheck disable=SC2086 # the list is words
    missing=$(comm -23 <(printf '%s\n' $wanted | sort -u) \
        <(dpkg-query -W -f '${db:Status-Abbrev} ${Package}\n' 2>/dev/null | sed -n 's/^ii  *//p' | sort -u))
    [ -z "$missing" ] && return
    echo "Installing:" $missing
    as_root apt-get update -q >/dev/null
    # shellcheck disable=SC2086
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends $missing >/dev/null
}

# build_targets [TARGET…]: none means everything.
build_targets() {
    [ -f "$build/build.ninja" ] || cmake --preset release -S "$top" >/dev/null
    cmake --build "$build" -- "$@"
}

# The files of tests lie in memory, where it has room and programs may be started: a disk's syncing is most of what many of them
# would wait for. What a disk keeps when the power goes is tested on one that is made up (tests/core/disk).
keep_scratch_in_memory() {
    local free
    [ -z "${TMPDIR:-}" ] && [ -w /dev/shm ] || return 0
    free=$(df --output=avail -B1M /dev/shm | tail -n 1)
    [ "$free" -ge 2048 ] && ! findmnt -n -o OPTIONS --target /dev/shm | grep -qw noexec || return 0
    TMPDIR=$(mktemp -d /dev/shm/tholepin-tests-XXXXXX)
    chmod 755 "$TMPDIR" # a test starts a database server as somebody else
    export TMPDIR
    trap 'rm -rf "$TMPDIR"' EXIT
}

# run_ctest BUILD CTEST-OPTION…: its tests, two at a time. A test of the window that failed beside another one is run
# once more by itself, and told on a line "alone: NAME": the machine was busy. Any other failure stands.
run_ctest() {
    local folder=$1 failed
    shift
    keep_scratch_in_memory
    ctest --test-dir "$folder" "$@" --output-on-failure --no-tests=error -j 2 && return
    failed=$(cut -d : -f 2- "$folder/Testing/Temporary/LastTestsFailed.log")
    [ -z "$(comm -23 <(sort <<<"$failed") <(names_of_desk_tests "$folder" | sort))" ] || return 1
    sed 's/^/alone: /' <<<"$failed"
    ctest --test-dir "$folder" --rerun-failed --output-on-failure -j 1
}

names_of_desk_tests() { # names_of_desk_tests BUILD
    ctest --test-dir "$1" -L desk -N | sed -n 's/^ *Test *#[0-9]*: //p'
}
