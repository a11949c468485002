package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.Map;
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
import org.undercall.core.intent.OwnWords;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SoundLevels;
import org.undercall.listen.CalledEar;
import org.undercall.listen.DeviceNotices;
import org.undercall.listen.NoticingEar;
import org.undercall.listen.OwnWordsEar;
import org.undercall.port.Ear;
import org.undercall.port.Heard;
import org.undercall.port.Time;
import org.undercall.port.Voice;

@DisplayName("The sound of a phrase")
@Timeout(30)
class EarSoundTest {
  private static final byte[] SOUND = {1, 2};
  private static final SoundLevels LEVELS = new SoundLevels(-22, -60, 0);

  private static final class HearingEar implements Ear {
    private boolean silent;

    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) {
      RecognisedPhrase phrase = RecognisedPhrase.typed("boot looks dry");
      Heard heard = new Heard(phrase, Heard.How.SPOKEN, Optional.of(LEVELS), Optional.of(SOUND));
      return silent ? Optional.empty() : Optional.of(heard);
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
        Named.of("is beside a board", e -> new BoardEar(e, new PressSlot(), () -> 1)),
        Named.of(
            "notices",
            e -> new NoticingEar(e, new DeviceNotices(line -> {}, reply -> {}), new NoVoice())));
  }

  @ParameterizedTest(name = "that {0}")
  @MethodSource("ears")
  @DisplayName("comes through an ear around the one that hears")
  void through(UnaryOperator<Ear> around) throws Exception {
    requireSound(around.apply(new HearingEar()).next(Set.of(IntentKind.NOTE_TEXT), 1000));
  }

  @Test
  @DisplayName("stays with the words that own words stand for")
  void ownWords() throws Exception {
    OwnWords own = OwnWords.of(Map.of("boot looks dry", IntentKind.HOLD));
    Optional<Heard> heard =
        new OwnWordsEar(new HearingEar(), own).next(Set.of(IntentKind.HOLD), 1000);
    assertEquals("take a break now", heard.orElseThrow().text());
    requireSound(heard);
  }

  private static void requireSound(Optional<Heard> next) {
    Heard heard = next.orElseThrow();
    assertEquals(Optional.of(SOUND), heard.sound());
    assertEquals(Optional.of(LEVELS), heard.levels());
    assertEquals(Heard.How.SPOKEN, heard.how());
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
            () -> presses.put(new Press(7, "say again", Heard.How.PRESSED), 20_000));
    Optional<Heard> heard = Optional.empty();
    while (heard.isEmpty()) {
      heard = ear.next(Set.of(IntentKind.REPEAT), 100);
    }
    assertEquals(PressSlot.Fate.TAKEN, fate.join());
    assertEquals(Optional.empty(), heard.get().sound());
  }
}
