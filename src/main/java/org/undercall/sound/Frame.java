package org.undercall.sound;

/** A short piece of sound and its place in the source. */
public final class Frame {
  private final long firstSample;
  private final byte[] sound;

  public Frame(long firstSample, byte[] sound) {
    this.firstSample = firstSample;
    this.sound = sound;
  }

  /**
   * A frame.
   *
   * @param firstSample how many samples of the source came before it
   * @param sound as {@link Frames} describes it; copied
   */
  public static Frame of(long firstSample, byte[] sound) {
    return new Frame(firstSample, sound.clone());
  }

  /** The same sound at a place so many samples later. */
  public Frame later(long samples) {
    return samples == 0 ? this : new Frame(firstSample + samples, sound);
  }

  /** How many samples of the source came before it, lost ones included. */
  public long firstSample() {
    return firstSample;
  }

  /** How many samples it has. */
  public int samples() {
    return sound.length / 2;
  }

  /** The sound, a copy: two bytes a sample. */
  public byte[] sound() {
    return sound.clone();
  }

  /** The sample with an index from 0, between -32768 and 32767. */
  public int sample(int index) {
    return (sound[2 * index] & 0xff) | (sound[2 * index + 1] << 8);
  }
}
