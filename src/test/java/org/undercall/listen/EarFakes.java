package org.undercall.listen;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import org.undercall.adapter.activity.Activity;
import org.undercall.adapter.recogniser.FreeHearing;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.Alternative;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear.EndOfInput;
import org.undercall.port.Heard;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/** Sound, recognisers and a detector for tests of the ear; a letter is a frame with a word. */
final class EarFakes {
  static final Set<IntentKind> HOLD = Set.of(IntentKind.HOLD);
  static final Set<IntentKind> RESUME = Set.of(IntentKind.RESUME);
  static final int MILLIS_PER_FRAME = 30;

  /** Frames whose first byte says what they mean to the fake recogniser. */
  static final class FakeFrames implements Frames {
    private final ArrayDeque<Frame> frames = new ArrayDeque<>();
    private long place;
    boolean closed;

    FakeFrames(String marks) {
      marks.chars().forEach(this::add);
    }

    /** A point is a gap of one frame. */
    private void add(int mark) {
      if (mark != '.') {
        byte[] sound = new byte[FRAME_BYTES];
        sound[0] = (byte) mark;
        frames.add(Frame.of(place, sound));
      }
      place += FRAME_SAMPLES;
    }

    @Override
    public Optional<Frame> next() {
      return Optional.ofNullable(frames.poll());
    }

    @Override
    public void discardWaiting() {
      frames.clear();
    }

    @Override
    public void close() {
      closed = true;
    }
  }

  /** Hears a word in each letter, and the end of a phrase in a blank. */
  final class FakeRecogniser implements Recogniser {
    final double startSeconds;
    private String heard = "";
    int bytes;

    FakeRecogniser(double startSeconds) {
      this.startSeconds = startSeconds;
      open++;
    }

    @Override
    public boolean accept(byte[] sound, int length) {
      bytes += length;
      if (Character.isLetter(sound[0])) {
        heard += (char) sound[0];
      }
      return sound[0] == ' ';
    }

    @Override
    public RecognisedPhrase result() {
      RecognisedPhrase phrase = RecognisedPhrase.typed(String.join(" ", heard.split("", -1)));
      heard = "";
      return phrase;
    }

    @Override
    public RecognisedPhrase finalResult() {
      return result();
    }

    @Override
    public String partial() {
      return heard;
    }

    @Override
    public void close() {
      open--;
    }
  }

  final List<String> made = new ArrayList<>();
  FakeRecogniser latest;
  int open;
  boolean detectorClosed;
  int givenBack;
  final CountDownLatch makerClosed = new CountDownLatch(1);

  /** What is heard freely. */
  String freely = "";

  /** What a second hearing finds. */
  List<Alternative> alternatives = List.of();

  final RecogniserMaker maker =
      new RecogniserMaker() {
        @Override
        public Recogniser withWordList(List<String> phrases, double startSeconds) {
          made.add(String.join(",", phrases));
          latest = new FakeRecogniser(startSeconds);
          return latest;
        }

        @Override
        public Recogniser free(double startSeconds) {
          made.add("free");
          latest = new FakeRecogniser(startSeconds);
          return latest;
        }

        @Override
        public FreeHearing freely() {
          return (sound, startSeconds) -> RecognisedPhrase.typed(freely);
        }

        @Override
        public List<Alternative> alternatives(
            List<String> phrases, byte[] sound, double startSeconds) {
          return alternatives;
        }

        @Override
        public void giveBack() {
          givenBack++;
        }

        @Override
        public void close() {
          makerClosed.countDown();
        }
      };

  SoundEar ear(String marks) {
    return ear(marks, Attention.byRecogniser());
  }

  SoundEar ear(String marks, Attention attention) {
    return new SoundEar(
        new FakeFrames(marks), maker, kinds -> List.of(kinds.toString()), attention);
  }

  /** An ear whose detector takes letters for speech and anything else for silence. */
  SoundEar watching(String marks, EndOfSpeech end) {
    return ear(marks, new Attention(letters(), end));
  }

  /** A detector that takes letters for speech. */
  Activity letters() {
    return new Letters();
  }

  private final class Letters implements Activity {
    @Override
    public boolean isSpeech(byte[] frame) {
      return Character.isLetter(frame[0]);
    }

    @Override
    public void close() {
      detectorClosed = true;
    }
  }

  /** Ends a phrase with the letter b. */
  record AtB(boolean holds) implements EndOfSpeech {
    @Override
    public void begin(Set<IntentKind> allowed) {}

    @Override
    public boolean ended(int millis, boolean speech, Supplier<String> words) {
      return words.get().endsWith("b");
    }

    @Override
    public boolean holds(String finalWords) {
      return holds;
    }
  }

  static String heard(SoundEar ear, Set<IntentKind> allowed) throws EndOfInput {
    return ear.next(allowed, 10_000).map(Heard::text).orElse("nothing");
  }
}
