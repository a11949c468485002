package org.undercall.command.doctor;

import org.undercall.adapter.speaker.MarySynthesiser;
import org.undercall.adapter.speaker.SpeakerTrial;
import org.undercall.adapter.speaker.Synthesiser;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.Pcm;

/**
 * The voice: starts and makes sound.
 *
 * @param voice without a cache, so that it must speak
 */
record VoiceCheck(Synthesiser voice) implements Check {
  private static final String WORDS = "One, one, zero newton metres.";

  static VoiceCheck standard() {
    return new VoiceCheck(MarySynthesiser.plain(SpeakerTrial.RATE));
  }

  @Override
  public String name() {
    return "voice";
  }

  @Override
  public Found look() {
    try {
      Pcm sound = voice.speak(WORDS);
      long millis = sound.bytes().length / 2 * 1000L / sound.rate();
      return Found.well("speaks; a value lasts " + millis + " ms");
    } catch (UncheckedFault e) {
      return Found.fault(e.getMessage(), "build again: mvn package; or use --voice system");
    }
  }
}
