package org.undercall.command.table;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Queue;
import java.util.Random;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.port.Voice;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Somebody who answers aloud: listens to what is asked, says the next answer with a made voice, and
 * confirms what is read back only if it is what was meant.
 */
final class SpokenTechnician implements Voice, Frames {
  private static final int SILENCE_BEFORE = RATE / 2;
  private static final int SILENCE_AFTER = 3 * RATE / 2;

  /** How often a phrase is said again when nothing comes of it. */
  private static final int MOST_UNANSWERED = 5;

  /** After so many phrases somebody who is not understood gives up. */
  private static final int MOST_PHRASES = 200;

  private final SpokenCache speaker;
  private final int decibels;
  private final Random chance = new Random(1);
  private final List<Answer> answers;
  private final Queue<byte[]> waiting = new ArrayDeque<>();
  private long position;
  private int at;
  private boolean confirmed = true;
  private boolean again;
  private String last = "";
  private int unanswered;
  private int phrases;

  /** Answers that were read back as meant at once, and others. */
  int rightAtFirst;

  int askedAgain;
  int saidAgain;
  int misheard;

  /**
   * An answer.
   *
   * @param words what is said
   * @param readBack what must be in the words that are read back
   */
  record Answer(String words, String readBack) {}

  /**
   * A technician.
   *
   * @param decibels how far white noise lies below the speech; 0 for none
   */
  SpokenTechnician(SpokenCache speaker, int decibels, List<Answer> answers) {
    this.speaker = speaker;
    this.decibels = decibels;
    this.answers = answers;
  }

  @Override
  public void say(String words) {
    unanswered = 0;
    waiting.clear();
    if (words.contains("All is answered")) {
      speak("write it down");
    } else if (words.endsWith("Say: that is correct, or say it again.")) {
      readBack(words);
    } else if (words.contains("Plus or minus how much?") && !words.contains("Not understood")) {
      count(words);
      at++;
      again = false;
      speak(answers.get(at).words());
    } else if (words.startsWith("Not understood") || words.startsWith("Say ")) {
      askedAgain++;
      again = true;
      speak(answers.get(at).words());
    } else if (!words.startsWith("Type: ") && at < answers.size()) {
      at += confirmed ? 0 : 1;
      confirmed = true;
      again = false;
      speak(answers.get(Math.min(at, answers.size() - 1)).words());
    }
  }

  private void readBack(String words) {
    if (count(words)) {
      at++;
      again = false;
      speak("that is correct");
    } else {
      speak("that was wrong");
    }
  }

  private boolean count(String words) {
    boolean right =
        words
            .toLowerCase(Locale.ROOT)
            .contains(answers.get(at).readBack().toLowerCase(Locale.ROOT));
    rightAtFirst += right && !again ? 1 : 0;
    misheard += right ? 0 : 1;
    return right;
  }

  private void speak(String words) {
    last = words;
    phrases++;
    if (phrases > MOST_PHRASES) {
      return;
    }
    byte[] spoken = speaker.speak(words).bytes();
    byte[] all = new byte[2 * SILENCE_BEFORE + spoken.length + 2 * SILENCE_AFTER];
    System.arraycopy(spoken, 0, all, 2 * SILENCE_BEFORE, spoken.length);
    if (decibels > 0) {
      addNoise(all, spoken);
    }
    for (int i = 0; i < all.length; i += FRAME_BYTES) {
      waiting.add(Arrays.copyOfRange(all, i, Math.min(all.length, i + FRAME_BYTES)));
    }
  }

  /** White noise, so many decibels below the speech. */
  private void addNoise(byte[] all, byte[] speech) {
    ShortBuffer spoken = samples(speech);
    double power = 0;
    for (int i = 0; i < spoken.limit(); i++) {
      power += (double) spoken.get(i) * spoken.get(i) / spoken.limit();
    }
    double noise = Math.sqrt(power) / Math.pow(10, decibels / 20.0);
    ShortBuffer samples = samples(all);
    for (int i = 0; i < samples.limit(); i++) {
      double sum = samples.get(i) + noise * chance.nextGaussian();
      samples.put(i, (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, sum)));
    }
  }

  private static ShortBuffer samples(byte[] bytes) {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer();
  }

  @Override
  public Optional<Frame> next() {
    if (waiting.isEmpty() && unanswered < MOST_UNANSWERED) {
      unanswered++;
      saidAgain++;
      again = true;
      speak(last);
    }
    byte[] sound = waiting.poll();
    if (sound == null) {
      return Optional.empty();
    }
    Frame frame = Frame.of(position, sound);
    position += frame.samples();
    return Optional.of(frame);
  }

  @Override
  public void discardWaiting() {}

  @Override
  public void close() {}
}
