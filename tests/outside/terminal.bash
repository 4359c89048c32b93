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

past_cards() { # goes on from the cards until a question stands
  for _ in $(seq 100); do
    case $(screen) in
      *"on, and in tune"* | *"played it"*) keys Enter ;;
      *"don't know"*) return 0 ;;
    esac
    sleep 0.2
  done
  fault "no question came"
  screen
  return 1
}
