package org.undercall.adapter.speaker;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import marytts.LocalMaryInterface;
import marytts.exceptions.MaryConfigurationException;
import marytts.exceptions.SynthesisException;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.Pcm;
import org.undercall.sound.SampleFormat;
import org.undercall.sound.SpeakerCode;

/** The one MaryTTS engine of the process: started once, on a thread of its own. */
final class MaryEngine {
  static final String VOICE = "cmu-slt-hsmm";

  private static final int TAIL_MILLIS = 150;

  private static MaryEngine only;

  private final CompletableFuture<LocalMaryInterface> mary = new CompletableFuture<>();

  private MaryEngine() {}

  /** The engine; the first call starts it and does not wait. */
  static synchronized MaryEngine started() {
    if (only == null) {
      only = new MaryEngine();
      Thread starter = new Thread(only::start, "speech-start");
      starter.setDaemon(true);
      starter.start();
    }
    return only;
  }

  private void start() {
    try {
      // Its numbers are written and read again in the default format: a comma breaks that.
      Locale.setDefault(Locale.Category.FORMAT, Locale.ROOT);
      LocalMaryInterface made = new LocalMaryInterface();
      made.setVoice(VOICE);
      mary.complete(made);
    } catch (MaryConfigurationException | RuntimeException | LinkageError e) {
      mary.completeExceptionally(e);
    }
  }

  /**
   * Speaks, after the engine has started.
   *
   * @param effects MaryTTS audio effects, for example {@code F0Add(f0Add:-40.0)}; may be empty
   */
  Pcm speak(String words, String effects) {
    LocalMaryInterface ready = ready();
    synchronized (ready) {
      try {
        ready.setAudioEffects(effects);
        Pcm sound = samples(ready.generateAudio(ended(words))).withTail(TAIL_MILLIS);
        if (sound.peak() == 0) {
          throw new UncheckedFault(SpeakerCode.NO_SOUND, "no sound came for \"" + words + "\"");
        }
        return sound;
      } catch (SynthesisException | IOException | IllegalArgumentException e) {
        throw new UncheckedFault(SpeakerCode.MARY_FAILED, "cannot say \"" + words + "\": " + e, e);
      }
    }
  }

  /** With an end mark: without one this voice speaks at half its pace. */
  private static String ended(String words) {
    return words.matches("(?s).*[.!?]\\s*") ? words : words.replaceFirst("[,;:\\s-]*$", ".");
  }

  private LocalMaryInterface ready() {
    try {
      return mary.join();
    } catch (CompletionException e) {
      throw new UncheckedFault(
          SpeakerCode.MARY_FAILED, "the voice mary did not start: " + e.getCause(), e);
    }
  }

  private static Pcm samples(AudioInputStream made) throws IOException {
    int rate = Math.round(made.getFormat().getSampleRate());
    AudioFormat wanted = SampleFormat.pcm(1, rate).ofDevice();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (AudioInputStream sound = AudioSystem.getAudioInputStream(wanted, made)) {
      // Not readAllBytes: this stream takes a read of no bytes for its end.
      byte[] chunk = new byte[8192];
      for (int n = sound.read(chunk); n > 0; n = sound.read(chunk)) {
        bytes.write(chunk, 0, n);
      }
    }
    return Pcm.ofBytes(rate, bytes.toByteArray(), 0, bytes.size());
  }
}
