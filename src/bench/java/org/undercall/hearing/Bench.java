package org.undercall.hearing;

import org.undercall.adapter.recogniser.RecogniserMaker;

/** What every measurement needs. */
record Bench(
    RecogniserMaker maker,
    Recordings recordings,
    Noises noises,
    Speakers speakers,
    Trials trials,
    SpeedFigures speed,
    Goals goals) {
  /** The program as it stands. */
  Listener listener() {
    return Listener.standard(maker);
  }
}
