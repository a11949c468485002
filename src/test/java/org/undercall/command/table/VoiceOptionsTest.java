package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.Alternative;
import org.undercall.core.writing.Draft;
import org.undercall.core.writing.Interview;
import org.undercall.port.Voice;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

@DisplayName("What asks by voice")
class VoiceOptionsTest {
  private static final Interview ANSWERED = new Interview(Draft.EMPTY);

  /** What is open now. */
  private final Set<String> open = new TreeSet<>();

  private Callable<Frames> sound = this::frames;
  private Callable<RecogniserMaker> model = this::recognisers;
  private Callable<Voice> speaker = this::voice;
  private VoiceOptions.Asking asking =
      (ear, voice) -> {
        assertEquals(Set.of("sound", "model", "voice"), open);
        return ANSWERED;
      };

  private Interview ask() throws Exception {
    return VoiceOptions.ask(sound, model, speaker, asking);
  }

  private void requireClosedAfterFault() {
    assertEquals("out of order", assertThrows(IOException.class, this::ask).getMessage());
    assertEquals(Set.of(), open);
  }

  private static <T> Callable<T> broken() {
    return () -> {
      throw new IOException("out of order");
    };
  }

  @Test
  @DisplayName("is open while it asks and closed afterwards")
  void closed() throws Exception {
    assertEquals(ANSWERED, ask());
    assertEquals(Set.of(), open);
  }

  @Test
  @DisplayName("is closed if the microphone cannot be opened")
  void noSound() {
    sound = broken();
    requireClosedAfterFault();
  }

  @Test
  @DisplayName("is closed if the model cannot be loaded")
  void noModel() {
    model = broken();
    requireClosedAfterFault();
  }

  @Test
  @DisplayName("is closed if there is no such voice")
  void noVoice() {
    speaker = broken();
    requireClosedAfterFault();
  }

  @Test
  @DisplayName("is closed if the asking breaks off")
  void brokenOff() {
    asking =
        (ear, voice) -> {
          throw new IOException("out of order");
        };
    requireClosedAfterFault();
  }

  private Frames frames() {
    open.add("sound");
    return new Frames() {
      @Override
      public Optional<Frame> next() {
        return Optional.empty();
      }

      @Override
      public void close() {
        open.remove("sound");
      }
    };
  }

  private RecogniserMaker recognisers() {
    open.add("model");
    return new RecogniserMaker() {
      @Override
      public Recogniser withWordList(List<String> phrases, double startSeconds) {
        throw new AssertionError("nothing is said");
      }

      @Override
      public Recogniser free(double startSeconds) {
        throw new AssertionError("nothing is said");
      }

      @Override
      public List<Alternative> alternatives(
          List<String> phrases, byte[] sound, double startSeconds) {
        throw new AssertionError("nothing is said");
      }

      @Override
      public void close() {
        open.remove("model");
      }
    };
  }

  private Voice voice() {
    open.add("voice");
    return new Voice() {
      @Override
      public void say(String words) {}

      @Override
      public void close() {
        open.remove("voice");
      }
    };
  }
}
