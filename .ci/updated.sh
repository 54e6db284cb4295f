#!/bin/sh
# From an older program to this one and back, with a ledger and settings: .ci/updated.sh COMMIT builds the program of that commit
# beside this one, which has to be built (mvn -B -DskipTests -Dquick package). Kept, or refused by name; nothing else passes.
# Needs git, sqlite3 and what the commit needs to build. OLDER=FOLDER names that program, built already.
set -eu
here="$(cd "$(dirname "$0")/.." && pwd)"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT

say() { echo "== $*"; }
fail() {
    echo "FAILED: $*" >&2
    exit 1
}
# program FOLDER arguments: as a person with a home of their own
program() {
    from="$1"
    shift
    java -Dtoeline.home="$from" -Duser.home="$work/home" -Djava.util.prefs.userRoot="$work/home" -XX:+UseSerialGC \
        -XX:TieredStopAtLevel=1 -cp "$from/target/toeline.jar:$from/target/lib/*" org.toeline.Main "$@"
}
older() { program "$older" "$@"; }
newer() { program "$here" "$@"; }
sums() { (cd "$work/home" && find . -type f -name "$1" -exec sha256sum {} + | LC_ALL=C sort -k 2); }
refused() {
    [ "$1" != 0 ] || fail "it was not refused"
    grep -F "the ledger has version" "$work/refused.txt" || {
        cat "$work/refused.txt"
        fail "it is not refused by name"
    }
}

older="${OLDER:-$work/older}"
if [ -z "${OLDER:-}" ]; then
    say "the older program, ${1:?which commit?}"
    mkdir "$older"
    git -C "$here" archive "$1" | tar -x -C "$older"
    (cd "$older" && mvn -B -q -DskipTests -Dquick -Dspotless.check.skip package)
fi
mkdir "$work/home"
unset XDG_DATA_HOME XDG_CONFIG_HOME

say "the older program keeps two lessons"
older ledger import "$older/sample-media/before/before.lesson.json" "$older/sample-media/after/after.lesson.json"
older ledger find "" | LC_ALL=C sort >"$work/first.txt"
[ "$(wc -l <"$work/first.txt")" = 2 ] || fail "two lessons were to be kept"
data="$(dirname "$(find "$work/home" -name ledger.db)")"
echo '{"speed":"mph","length":"yd","height":"ft"}' >"$data/shots.json"
sums '*.json' >"$work/settings.txt"
before="$(sha256sum <"$data/ledger.db")"

say "this one has them, and a copy of how the ledger was where it changed its tables"
newer ledger find "" | LC_ALL=C sort | tee "$work/second.txt"
cmp "$work/first.txt" "$work/second.txt" || fail "it lists other lessons"
newer ledger check
changed=""
for copy in "$data"/backups/*-before-version-*.db; do
    [ -f "$copy" ] || continue
    changed=yes
    mkdir -p "$work/copy"
    cp "$copy" "$work/copy/ledger.db"
    older ledger find --ledger "$work/copy" "" | LC_ALL=C sort | cmp - "$work/first.txt" || fail "the copy does not open as it was"
    echo "$(basename "$copy"): the older program reads it"
done

say "back to the older program"
now="$(sha256sum <"$data/ledger.db")"
if [ -n "$changed" ]; then
    [ "$now" != "$before" ] || fail "a copy, and nothing changed?"
    code=0
    older ledger find "" >"$work/refused.txt" 2>&1 || code=$?
    refused "$code"
    [ "$(sha256sum <"$data/ledger.db")" = "$now" ] || fail "the refused ledger was changed"
else
    older ledger find "" | LC_ALL=C sort | cmp - "$work/first.txt" || fail "it lists other lessons"
fi

say "this one, with a ledger of a program yet to be written"
newer ledger backup
sqlite3 "$data/ledger.db" "insert into flyway_schema_history select 99, '99', 'later', type, script, checksum, installed_by,
    installed_on, execution_time, success from flyway_schema_history limit 1"
now="$(sha256sum <"$data/ledger.db")"
for asked in "find" "check" "import $here/sample-media/left-handed/left-handed.lesson.json"; do
    code=0
    # shellcheck disable=SC2086 # a command and its argument
    newer ledger $asked >"$work/refused.txt" 2>&1 || code=$?
    refused "$code"
done
[ "$(sha256sum <"$data/ledger.db")" = "$now" ] || fail "the refused ledger was changed"

say "and back from there by its backup; what was there is kept beside it"
newer ledger restore
newer ledger find "" | LC_ALL=C sort | cmp - "$work/first.txt" || fail "it lists other lessons"
[ "$(sha256sum <"$(ls "$data"/ledger-set-aside-*.db)")" = "$now" ] || fail "what was there is not kept"

say "settings are as they were"
sums '*.json' | cmp - "$work/settings.txt" || fail "settings were changed"
say "all of it passed"
