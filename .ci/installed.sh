#!/bin/sh
# Installs the package into a bare Debian, uses it there, and takes it away again: .ci/installed.sh target/package/toeline_….deb
# Needs root, debootstrap, Xvfb, openbox, xdotool, ImageMagick and poppler-utils. Sources of packages are those of this machine.
# BARE=FOLDER names a bare root that is there already (debootstrap --variant=minbase); it is copied.
set -eu
package="$(readlink -f "$1")"
work="$(mktemp -d)"
root="$work/root"
screen=""
manager=""
desk=""

clean_up() {
    # shellcheck disable=SC2086 # each may be none
    kill $desk $manager $screen 2>/dev/null || true
    sleep 2
    umount "$root/opt/toeline" 2>/dev/null || true
    umount "$work/small" 2>/dev/null || true
    umount "$root/proc" 2>/dev/null || true
    mountpoint -q "$root/proc" || rm -rf "$work"
}
trap clean_up EXIT

say() { echo "== $*"; }
fail() {
    echo "FAILED: $*" >&2
    exit 1
}
inside() { chroot "$root" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin DEBIAN_FRONTEND=noninteractive "$@"; }
# as a person who never had anything to do with it
coach() {
    chroot --userspec=coach "$root" /usr/bin/env -i PATH=/usr/bin:/bin HOME=/home/coach LANG=C.UTF-8 \
        ${DISPLAY:+DISPLAY="$DISPLAY"} TOELINE_JAVA_OPTIONS=-Dprism.order=sw sh -c 'cd && exec "$@"' sh "$@"
}
files() { (cd "$root" && find . -xdev \( -path ./proc -o -path ./home/coach \) -prune -o -type f -print -o -type l -print) | LC_ALL=C sort; }

say "a bare system"
if [ -n "${BARE:-}" ]; then
    cp -a "$BARE" "$root"
else
    # shellcheck disable=SC1091 # this machine's
    suite="$(. /etc/os-release && echo "$VERSION_CODENAME")"
    mirror="$(sed -n 's/^URIs: *//p; s/^deb \(\[[^]]*\] \)\{0,1\}\([^ ]*\) .*/\2/p' /etc/apt/sources.list.d/debian.sources /etc/apt/sources.list 2>/dev/null | head -n 1)"
    debootstrap --variant=minbase "$suite" "$root" "$mirror" >"$work/debootstrap.txt"
fi
for settings in /etc/apt/apt.conf.d/99*; do
    [ ! -f "$settings" ] || cp "$settings" "$root/etc/apt/apt.conf.d/"
done
cp /etc/resolv.conf /etc/hosts "$root/etc/" 2>/dev/null || true
mount -t proc proc "$root/proc"
inside apt-get update -q >"$work/apt.txt" 2>&1
inside useradd -m coach

say "unpacked only, on a system that lacks what letters are drawn with"
dpkg-deb --fsys-tarfile "$package" | tar -x -C "$root" ./opt/toeline
coach /opt/toeline/bin/toeline measure /opt/toeline/sample-media/before/before.lesson.json >/dev/null || fail "measure"
if coach /opt/toeline/bin/toeline still /opt/toeline/sample-media/before/before.lesson.json --out x.png 2>"$work/lacks.txt"; then
    fail "a still without letters"
fi
cat "$work/lacks.txt"
[ "$(wc -l <"$work/lacks.txt")" = 1 ] || fail "it is not one sentence"
rm -rf "$root/opt/toeline"
files >"$work/before.txt"

say "apt install, with nothing put in its way and nothing by hand"
cp "$package" "$root/var/cache/toeline.deb"
start="$(date +%s)"
inside apt-get install -q -y --no-install-recommends /var/cache/toeline.deb >>"$work/apt.txt" 2>&1 || { tail -n 20 "$work/apt.txt"; fail "apt install"; }
rm "$root/var/cache/toeline.deb"
echo "installed in $(($(date +%s) - start)) s"
for name in measure classes; do
    [ -s "$root/opt/toeline/$name.jsa" ] || fail "no archive of classes was made ($name)"
done
du -sh "$root/opt/toeline"/* | sed "s|$root||"

say "toeline sample"
coach toeline sample --out sample >"$work/sample.txt"
ls "$root/home/coach/sample"
grep -q "Ball" "$work/sample.txt" || fail "sample said nothing of the ball"

say "toeline measure"
coach toeline measure /opt/toeline/sample-media/before/before.lesson.json >"$work/measure.txt"
head -n 6 "$work/measure.txt"
grep -q "±\|cm" "$work/measure.txt" || fail "measure gave no readings"

say "toeline handout --language de"
coach toeline handout /opt/toeline/sample-media/before/before.lesson.json --out handout --language de
pdf="$(find "$root/home/coach/handout" -name '*.pdf' | head -n 1)"
pdftotext -layout "$pdf" "$work/handout.txt"
grep -E "[0-9]+\. (Januar|Februar|März|April|Mai|Juni|Juli|August|September|Oktober|November|Dezember) 20[0-9]{2}" "$work/handout.txt" | head -n 1 |
    grep . || fail "the page's date is not German"
grep -E "[0-9],[0-9]" "$work/handout.txt" | head -n 2 | grep . || fail "the page's numbers have no comma"
if grep -E "[0-9]\.[0-9] *(cm|°|m)" "$work/handout.txt"; then fail "a number of the German page has a point"; fi

say "the desk: started, and a lesson double-clicked while it is open"
number="$work/number"
Xvfb -displayfd 3 -screen 0 1400x900x24 3>"$number" >/dev/null 2>&1 &
screen=$!
for _ in 1 2 3 4 5 6 7 8 9 10; do
    [ -s "$number" ] && break
    sleep 1
done
DISPLAY=":$(cat "$number")"
export DISPLAY
openbox >/dev/null 2>&1 &
manager=$!
coach toeline >"$work/desk.txt" 2>&1 &
desk=$!
timeout 120 xdotool search --sync --onlyvisible --name '^Toeline' >"$work/window.txt" || {
    cat "$work/desk.txt"
    fail "no window"
}
window="$(head -n 1 "$work/window.txt")"
sleep 10
import -window root "${PICTURES:-$work}/welcome.png"
open="$(grep '^Exec=' "$root/usr/share/applications/toeline.desktop" | sed 's/^Exec=//; s| %f||')"
coach "$open" /opt/toeline/sample-media/before/before.lesson.json
sleep 25
import -window root "${PICTURES:-$work}/lesson.png"
# the middle of the picture, where the player stands
moved() {
    import -window root -crop 400x300+150+270 "$work/then.png"
    sleep 1
    import -window root -crop 400x300+150+270 "$work/now.png"
    differs="$(compare -metric AE -fuzz 5% "$work/then.png" "$work/now.png" null: 2>&1 || true)"
    [ "${differs%%.*}" -gt 200 ]
}
for _ in 1 2 3 4 5 6 7 8 9 10; do
    moved || break
done
moved && fail "the picture does not stand still"
xdotool windowfocus "$window" key --window "$window" space
plays=""
for _ in 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20; do
    if moved; then
        plays=yes
        break
    fi
done
import -window root "${PICTURES:-$work}/playing.png"
[ -n "$plays" ] || fail "nothing plays"
echo "it stood still, and plays: $differs of 120000 pixels change within a second"

say "installing over a desk that is open, and removing it, are refused"
cp "$package" "$root/var/cache/toeline.deb"
if inside dpkg -i /var/cache/toeline.deb >"$work/over.txt" 2>&1; then fail "it was installed over"; fi
if inside dpkg -r toeline >>"$work/over.txt" 2>&1; then fail "it was removed"; fi
grep "toeline: " "$work/over.txt"
rm "$root/var/cache/toeline.deb"
coach toeline measure /opt/toeline/sample-media/before/before.lesson.json >/dev/null || fail "the refused one left it broken"
[ -s "$root/opt/toeline/measure.jsa" ] || fail "the refused one took the archive of classes away"
xdotool windowfocus "$window" key alt+F4
open=yes
for _ in 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20 21 22 23 24 25 26 27 28 29 30; do
    readlink /proc/[0-9]*/exe 2>/dev/null | grep -q "/opt/toeline/runtime/bin/java" || { open=""; break; }
    sleep 1
done
[ -z "$open" ] || fail "the desk does not close"
desk=""
coach toeline ledger find "" >"$work/find.txt" || true
cat "$work/find.txt"
grep -q . "$work/find.txt" || fail "the lesson that was double-clicked is not in the ledger"

say "a damaged download, by its published sum and by itself"
cp "$package" "$work/damaged.deb"
printf 'x' | dd of="$work/damaged.deb" bs=1 seek=1000000 conv=notrunc status=none
if (cd "$work" && sed 's| .*|  damaged.deb|' "$package.sha256" | sha256sum -c --status); then fail "its sum is that of another file"; fi
head -c 20000000 "$package" >"$root/var/cache/half.deb"
if inside dpkg -i /var/cache/half.deb >"$work/half.txt" 2>&1; then fail "half a package was installed"; fi
rm "$root/var/cache/half.deb"
coach toeline measure /opt/toeline/sample-media/before/before.lesson.json >/dev/null || fail "half a package left it broken"

say "a disk that is full in the middle of installing"
sums() { (cd "$root/opt/toeline" && find . -type f -exec sha256sum {} + | LC_ALL=C sort -k 2); }
mkdir "$work/small"
mount -t tmpfs -o "size=$(($(du -sm "$root/opt/toeline" | cut -f 1) + 60))m" tmpfs "$work/small"
cp -a "$root/opt/toeline/." "$work/small/"
mount --bind "$work/small" "$root/opt/toeline"
sums >"$work/sums.txt"
cp "$package" "$root/var/cache/toeline.deb"
if inside dpkg -i /var/cache/toeline.deb >"$work/full.txt" 2>&1; then fail "it was installed on a full disk"; fi
rm "$root/var/cache/toeline.deb"
grep -i "no space left" "$work/full.txt" | head -n 1
sums | diff "$work/sums.txt" - || fail "the full disk changed what was installed"
coach toeline measure /opt/toeline/sample-media/before/before.lesson.json >/dev/null || fail "the full disk left it broken"
umount "$root/opt/toeline"
umount "$work/small"

say "removal"
inside apt-get purge -q -y toeline >>"$work/apt.txt" 2>&1 || {
    tail -n 20 "$work/apt.txt"
    fail "purge"
}
files >"$work/after.txt"
# some packages name their files by the links to /usr that the root has
cat "$root"/var/lib/dpkg/info/*.list | sed -E 's|^|.|; s#^\./(bin|sbin|lib|lib32|lib64)/#./usr/\1/#' | LC_ALL=C sort -u >"$work/owned.txt"
# what other packages make and keep for themselves when they are installed
LC_ALL=C comm -13 "$work/before.txt" "$work/after.txt" | LC_ALL=C comm -23 - "$work/owned.txt" |
    grep -v -E '^\./(var/(lib|cache|log)|etc|run|usr/share/(mime|icons|glib-2.0|fonts)|usr/lib/[^/]*/(gdk-pixbuf|gtk-3.0|gio))' >"$work/left.txt" || true
find "$root" -xdev -path "$root/proc" -prune -o -path "$root/home/coach" -prune -o -iname '*toeline*' -print >>"$work/left.txt"
if [ -s "$work/left.txt" ]; then
    cat "$work/left.txt"
    fail "files are left"
fi
[ -d "$root/home/coach/Toeline" ] || fail "the coach's own data are gone"
echo "nothing is left but what the coach has:"
(cd "$root/home/coach" && find . -maxdepth 2 | LC_ALL=C sort)
say "all of it passed"
