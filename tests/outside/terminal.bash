# What the scripts that drive a real terminal share: keys, the screen, waiting for words. The script itself says what fault() does.
socket=

keys() { tmux -L "$socket" send-keys "$@"; }
screen() { tmux -L "$socket" capture-pane -p; }

expect() { # expect TEXT: waits until it stands on the screen
  for _ in $(seq 150); do
    screen | grep -qF -- "$1" && return 0
    sleep 0.1
  done
  fault "'$1' did not come"
  screen
  return 1
}
