package org.undercall.adapter.activity;

/** Takes for speech what is clearly louder than the quietest sound of the last while. */
final class EnergyActivity implements Activity {
  /** Speech is at least 9 dB over the floor. */
  private static final double OVER_FLOOR = 2.8;

  /** The floor is never below -70 dBFS, so speech is never quieter than -61 dBFS. */
  private static final double LEAST_FLOOR = 10;

  /** The floor rises by 3 dB a second at most. */
  private static final double RISE = 1.0104;

  /** The floor at the start: -46 dBFS, so that speech at once is speech. */
  private static final double FIRST_FLOOR = 160;

  /** Frames after a loud one that still count: 60 ms. */
  private static final int HELD = 2;

  private double floor = FIRST_FLOOR;
  private int held;

  @Override
  public boolean isSpeech(byte[] frame) {
    double rms = rms(frame);
    floor = Math.max(LEAST_FLOOR, Math.min(rms, floor * RISE));
    boolean loud = rms > floor * OVER_FLOOR;
    held = loud ? HELD : held - 1;
    return loud || held >= 0;
  }

  @Override
  public void close() {}

  /** Without a constant offset, which is no sound. */
  private static double rms(byte[] frame) {
    double sum = 0;
    double squares = 0;
    for (int i = 0; i + 1 < frame.length; i += 2) {
      double sample = (frame[i] & 0xff) | (frame[i + 1] << 8);
      sum += sample;
      squares += sample * sample;
    }
    double samples = Math.max(1, frame.length / 2);
    return Math.sqrt(Math.max(0, squares - sum * sum / samples) / samples);
  }
}
