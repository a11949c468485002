package org.undercall.core.board;

import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Tell;

/** What became of the microphone or the loudspeaker. */
public enum DeviceNews {
  MICROPHONE_GONE,
  MICROPHONE_BACK,
  SOUND_LOST,
  SPEAKER_GONE,
  SPEAKER_BACK;

  /** Whether it is about the microphone, or else the loudspeaker. */
  boolean isOfMicrophone() {
    return this != SPEAKER_GONE && this != SPEAKER_BACK;
  }

  /** Whether it stays true until other news of the same device. */
  boolean lasts() {
    return this == MICROPHONE_GONE || this == SPEAKER_GONE;
  }

  /** How it is told. */
  public Reply words() {
    return switch (this) {
      case MICROPHONE_GONE -> Tell.microphoneGone();
      case MICROPHONE_BACK -> Tell.microphoneBack();
      case SOUND_LOST -> Tell.someSoundLost();
      case SPEAKER_GONE -> Tell.speakerGone();
      case SPEAKER_BACK -> Tell.speakerBack();
    };
  }
}
