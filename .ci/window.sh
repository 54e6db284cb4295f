#!/bin/sh
# Lessons by mouse and keys in the real window under a virtual screen: WindowScript and LessonScript say what is done and what must
# come out.
# Needs the program and its tests built, Xvfb, openbox, xdotool and ffmpeg.
set -eu
cd "$(dirname "$0")/.."

folder="$(mktemp -d)"
number="$folder/number"
Xvfb -displayfd 3 -screen 0 1500x1000x24 -nolisten tcp 3>"$number" 2>"$folder/screen.txt" &
screen=$!
manager=""
trap 'kill $manager $screen 2>/dev/null || true; wait 2>/dev/null || true; rm -rf "$folder"' EXIT
for _ in 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20; do
    [ -s "$number" ] && break
    sleep 0.5
done
DISPLAY=":$(cat "$number")"
export DISPLAY
openbox >"$folder/manager.txt" 2>&1 &
manager=$!

for script in WindowScript LessonScript; do
    if ! timeout 900 java -cp "target/test-classes:target/lib/*" "org.toeline.window.$script" "$folder/$script"; then
        tail -n 20 "$folder/$script/program.txt" "$folder/$script/files.txt" >&2 || true
        exit 1
    fi
done
