#!/usr/bin/env bash
# A virtual microphone and a virtual loudspeaker in user space, for tests.
#   virtual-sound.sh start FOLDER   starts both; exit status 3 if PulseAudio is not installed
#   virtual-sound.sh lose FOLDER    takes the microphone away
#   virtual-sound.sh find FOLDER    brings it back
#   virtual-sound.sh stop FOLDER    ends both
# Each has a sound server of its own, so that a recording of a lost microphone finds no other source.
#   FOLDER/mic/socket      play into sink "mic_in": that is what the default microphone hears
#   FOLDER/speaker/socket  record from "speaker.monitor": that is what the default speaker plays
#   FOLDER/alsa.conf       for ALSA_CONFIG_PATH
set -u
exec </dev/null # a closed standard input makes the tools of libsndfile fail
folder=$2

# Null sinks without norewinds keep the first sound back for two seconds.
sink() {
  echo "module-null-sink sink_name=$1 rate=16000 channels=1 norewinds=1"
}

ask() {
  PULSE_SERVER=unix:$folder/$1/socket PULSE_RUNTIME_PATH=$folder/$1/run timeout 10 pactl "${@:2}"
}

serve() {
  local home=$folder/$1
  mkdir -p "$home/run" "$home/state"
  chmod 700 "$home" "$home/run" "$home/state"
  {
    echo "load-module module-native-protocol-unix socket=$home/socket auth-anonymous=1 auth-cookie-enabled=0"
    echo "load-module $(sink "$2")"
    echo "set-default-sink $2"
    echo "set-default-source $2.monitor"
  } >"$home/daemon.pa"
  PULSE_RUNTIME_PATH=$home/run PULSE_STATE_PATH=$home/state PULSE_COOKIE=$home/cookie \
    setsid pulseaudio -n --daemonize=no --system=false --realtime=false --high-priority=false \
    --exit-idle-time=-1 --disable-shm=true --use-pid-file=false \
    --log-target=file:"$home/log" -F "$home/daemon.pa" >"$home/out" 2>&1 &
  echo $! >"$home/pid"
  for _ in $(seq 100); do
    if ask "$1" get-default-source 2>/dev/null | grep -q "^$2.monitor$"; then
      return 0
    fi
    kill -0 "$(cat "$home/pid")" 2>/dev/null || break
    sleep 0.1
  done
  cat "$home/log" "$home/out" >&2
  return 1
}

end() {
  local pid
  pid=$(cat "$folder/$1/pid" 2>/dev/null) || return 0
  if [ "$(cat "/proc/$pid/comm" 2>/dev/null)" = pulseaudio ]; then
    kill "$pid"
    for _ in $(seq 50); do
      kill -0 "$pid" 2>/dev/null || break
      sleep 0.1
    done
  fi
}

case $1 in
  start)
    for tool in pulseaudio pactl paplay parec; do
      command -v "$tool" >/dev/null || { echo "$tool is not installed" >&2; exit 3; }
    done
    ls /usr/lib/*/alsa-lib/libasound_module_pcm_pulse.so /usr/lib/alsa-lib/libasound_module_pcm_pulse.so 2>/dev/null |
      grep -q . || { echo "the PulseAudio plugin of ALSA is not installed" >&2; exit 3; }
    mkdir -p "$folder"
    cat >"$folder/alsa.conf" <<CONF
</usr/share/alsa/alsa.conf>
pcm.!default {
  type asym
  playback.pcm { type pulse server "unix:$folder/speaker/socket" }
  capture.pcm { type pulse server "unix:$folder/mic/socket" }
  hint { show on description "virtual sound" }
}
ctl.!default { type pulse server "unix:$folder/speaker/socket" }
CONF
    serve mic mic_in && serve speaker speaker
    ;;
  lose) ask mic unload-module module-null-sink ;;
  find) ask mic load-module $(sink mic_in) && ask mic set-default-source mic_in.monitor ;;
  stop) end mic; end speaker ;;
  *) sed -n 2,6p "$0"; exit 2 ;;
esac
