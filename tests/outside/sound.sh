#!/usr/bin/env bash
# What becomes of sound on Linux when libasound is missing or broken, its device busy, unplugged while playing, or stuck: a notice, the
# session goes on, and the program ends. The library is a stand-in put before the real one. Needs gcc. Usage: sound.sh [PROGRAM].
set -u
cd "$(dirname "$0")/../.."
program=${1:-"dotnet src/Clampwise/bin/Debug/net10.0/clampwise.dll"}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
faults=0

command -v gcc >/dev/null || { echo "gcc is missing"; exit 1; }
mkdir "$work/missing" "$work/stand-in"
: >"$work/missing/libasound.so.2"
cat >"$work/alsa.c" <<'C'
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>
static long played;
static int is(const char *fault) { const char *f = getenv("ALSA_FAULT"); return f && !strcmp(f, fault); }
int snd_pcm_open(void **pcm, const char *name, int stream, int mode) { *pcm = &played; return is("busy") ? -EBUSY : 0; }
int snd_pcm_set_params(void *pcm, int f, int a, unsigned c, unsigned r, int s, unsigned l) { return 0; }
int snd_pcm_nonblock(void *pcm, int on) { return 0; }
long snd_pcm_writei(void *pcm, const void *data, unsigned long frames) {
  played += frames;
  if (played > 4410 && is("unplugged")) return -ENODEV;
  if (played > 4410 && is("stuck")) for (;;) pause();
  usleep(frames * 1000000 / 44100);
  return frames;
}
int snd_pcm_recover(void *pcm, int error, int silent) { return error; }
int snd_pcm_prepare(void *pcm) { return 0; }
int snd_pcm_drain(void *pcm) { return 0; }
int snd_pcm_close(void *pcm) { return 0; }
const char *snd_strerror(int error) { return strerror(-error); }
int snd_lib_error_set_handler(void *handler) { return 0; }
C
gcc -shared -fPIC -o "$work/stand-in/libasound.so.2" "$work/alsa.c" || exit 1

# quiz NAME FOLDER FAULT EXPECTED KEPT: past the cards of clamp and shapes, three questions given up, with the library in FOLDER; EXPECTED must be said, so many be kept.
quiz() {
  local out="$work/$1.txt" data="$work/$1"
  (for _ in 1 2 3 4; do sleep 1; echo ""; done; for _ in 1 2 3; do sleep 1; echo "?"; echo ""; echo ""; done) |
    LD_LIBRARY_PATH="$work/$2" ALSA_FAULT=$3 timeout 60 $program quiz --questions 3 --seed 3 --plain --data "$data" >"$out" 2>&1
  local code=$?
  local kept
  kept=$($program data export --data "$data" | grep -c '"kind":"attempt"')
  if [ "$code" -eq 0 ] && grep -q -- "$4" "$out" && [ "$kept" -eq "$5" ] && ! grep -q " at Clampwise" "$out"; then
    echo "ok: $1"
  else
    faults=$((faults + 1))
    echo "FAULT: $1: exit code $code, $kept answers kept, '$4' expected in:"
    cat "$out"
  fi
}

quiz "library missing" missing none "no sound: the sound library libasound.so.2 is missing" 3
quiz "device busy" stand-in busy "no sound: another program holds the sound device" 3
quiz "unplugged" stand-in unplugged "no sound: there is no sound device" 2
quiz "stuck" stand-in stuck "3 asked" 3
quiz "all well" stand-in none "3 asked" 3
echo "$faults faults"
[ "$faults" -eq 0 ]
