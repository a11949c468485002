package org.undercall.sound;

/** Is told what the loudspeaker is given, by the threads that give it; must return at once. */
public interface Playback {
  /** Does not care. */
  Playback NONE =
      new Playback() {
        @Override
        public void begins(String sentence, int millis) {}

        @Override
        public void plays(byte[] samples, int offset, int length, int rate) {}

        @Override
        public void ends(boolean cutShort) {}
      };

  /** The sound of a sentence comes next, so many milliseconds long. */
  void begins(String sentence, int millis);

  /**
   * Sound that the loudspeaker is about to be given.
   *
   * @param samples two bytes each, little-endian, of one channel
   * @param offset the first byte that counts
   * @param length how many bytes count
   * @param rate samples a second
   */
  void plays(byte[] samples, int offset, int length, int rate);

  /**
   * Nothing more comes for now.
   *
   * @param cutShort whether the loudspeaker forgot what it had been given and had not played
   */
  void ends(boolean cutShort);
}
