package org.undercall.adapter.speaker;

/**
 * How the voice sounds.
 *
 * @param volume in percent of the full loudness, 0 to 100
 * @param pace 1 as the voice is, 2 twice as fast; 0.5 to 2
 * @param tones which tones sound before a reply
 * @param numbers how values are read
 */
public record SpeakerSettings(int volume, double pace, Tones tones, NumberStyle numbers) {
  /** As the voice is, with a tone when something is not accepted. */
  public static final SpeakerSettings STANDARD =
      new SpeakerSettings(100, 1, Tones.REFUSED, NumberStyle.GROUPED);

  public SpeakerSettings {
    if (volume < 0 || volume > 100) {
      throw new IllegalArgumentException("found a volume of " + volume + ", expected 0 to 100");
    }
    if (!(pace >= 0.5 && pace <= 2)) {
      throw new IllegalArgumentException("found a rate of " + pace + ", expected 0.5 to 2");
    }
  }
}
