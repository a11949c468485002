package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.adapter.board.Press;
import org.undercall.adapter.board.PressSlot;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.listen.CalledEar;
import org.undercall.listen.DeviceNotices;
import org.undercall.listen.LazyEar;
import org.undercall.listen.NoticingEar;
import org.undercall.port.Ear;
import org.undercall.port.Time;
import org.undercall.port.Voice;

@DisplayName("The sound of a phrase")
@Timeout(30)
class EarSoundTest {
  private static final byte[] SOUND = {1, 2};

  private static final class HearingEar implements Ear {
    private boolean silent;

    @Override
    public Optional<RecognisedPhrase> next(Set<IntentKind> allowed, long patienceMillis) {
      return silent ? Optional.empty() : Optional.of(RecognisedPhrase.typed("boot looks dry"));
    }

    @Override
    public Optional<byte[]> sound() {
      return Optional.of(SOUND);
    }

    @Override
    public void close() {}
  }

  private static final class NoVoice implements Voice {
    @Override
    public void say(String words) {}

    @Override
    public void close() {}
  }

  static Stream<Named<UnaryOperator<Ear>>> ears() {
    return Stream.of(
        Named.of("prints", new Dialogue(new PrintWriter(new StringWriter()))::of),
        Named.of(
            "is called",
            e -> new CalledEar(e, new NoVoice(), Time.ofMachine(), Duration.ofSeconds(9))),
        Named.of("is made later", e -> LazyEar.start(() -> e)),
        Named.of("is beside a board", e -> new BoardEar(e, new PressSlot(), () -> 1)),
        Named.of(
            "notices",
            e -> new NoticingEar(e, new DeviceNotices(line -> {}, reply -> {}), new NoVoice())));
  }

  @ParameterizedTest(name = "that {0}")
  @MethodSource("ears")
  @DisplayName("comes through an ear around the one that hears")
  void through(UnaryOperator<Ear> around) throws Exception {
    Ear ear = around.apply(new HearingEar());
    ear.next(Set.of(IntentKind.NOTE_TEXT), 1000);
    assertEquals(Optional.of(SOUND), ear.sound());
  }

  @Test
  @DisplayName("is not given for what was pressed")
  void pressed() throws Exception {
    PressSlot presses = new PressSlot();
    HearingEar hearing = new HearingEar();
    hearing.silent = true;
    Ear ear = new BoardEar(hearing, presses, () -> 7);
    CompletableFuture<PressSlot.Fate> fate =
        CompletableFuture.supplyAsync(
            () -> presses.put(new Press(7, "say again", "pressed"), 20_000));
    Optional<RecognisedPhrase> phrase = Optional.empty();
    while (phrase.isEmpty()) {
      phrase = ear.next(Set.of(IntentKind.REPEAT), 100);
    }
    assertEquals(PressSlot.Fate.TAKEN, fate.join());
    assertEquals(Optional.empty(), ear.sound());
  }
}
