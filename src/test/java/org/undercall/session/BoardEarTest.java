package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.undercall.adapter.board.Press;
import org.undercall.adapter.board.PressSlot;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.Heard;

@DisplayName("The ear beside the board")
@Timeout(30)
class BoardEarTest {
  private static final Set<IntentKind> ALLOWED = Set.of(IntentKind.REPEAT);

  private final PressSlot presses = new PressSlot();
  private final AtomicLong state = new AtomicLong(7);
  private final List<Long> asked = new ArrayList<>();
  private Optional<String> spoken = Optional.empty();

  private BoardEar ear() {
    return new BoardEar(new SpokenEar(), presses, state::get);
  }

  private CompletableFuture<PressSlot.Fate> put(long forState) {
    CompletableFuture<Void> begun = new CompletableFuture<>();
    CompletableFuture<PressSlot.Fate> fate =
        CompletableFuture.supplyAsync(
            () -> {
              begun.complete(null);
              return presses.put(new Press(forState, "say again", Heard.How.PRESSED), 20_000);
            });
    begun.join();
    return fate;
  }

  private static Optional<Heard> until(BoardEar ear, CompletableFuture<PressSlot.Fate> fate)
      throws Ear.EndOfInput {
    Optional<Heard> heard = Optional.empty();
    while (heard.isEmpty() && !fate.isDone()) {
      heard = ear.next(ALLOWED, 100);
    }
    return heard;
  }

  @Test
  @DisplayName("gives a press as pressed, while the other ear waits")
  void pressed() throws Ear.EndOfInput {
    BoardEar ear = ear();
    CompletableFuture<PressSlot.Fate> fate = put(7);
    Heard heard = until(ear, fate).orElseThrow();
    assertEquals(new Heard(RecognisedPhrase.typed("say again"), Heard.How.PRESSED), heard);
    assertEquals(PressSlot.Fate.TAKEN, fate.join());
    assertEquals(Optional.empty(), ear.next(ALLOWED, 300));
  }

  @Test
  @DisplayName("gives what is spoken as spoken")
  void spoken() throws Ear.EndOfInput {
    BoardEar ear = ear();
    until(ear, put(7));
    spoken = Optional.of("where am i");
    Heard heard = ear.next(ALLOWED, 1000).orElseThrow();
    assertEquals("where am i", heard.text());
    assertEquals(Heard.How.SPOKEN, heard.how());
  }

  @Test
  @DisplayName("refuses a press made for a state that has passed")
  void stale() throws Ear.EndOfInput {
    CompletableFuture<PressSlot.Fate> fate = put(6);
    assertEquals(Optional.empty(), until(ear(), fate));
    assertEquals(PressSlot.Fate.STALE, fate.join());
  }

  @Test
  @DisplayName("is no more patient than it is asked to be, in slices")
  void patience() throws Ear.EndOfInput {
    assertEquals(Optional.empty(), ear().next(ALLOWED, 250));
    assertEquals(List.of(100L, 100L, 50L), asked);
  }

  @Test
  @DisplayName("ends with the other ear")
  void ends() {
    spoken = Optional.of("end");
    assertThrows(Ear.EndOfInput.class, () -> ear().next(ALLOWED, 100));
  }

  @Test
  @DisplayName("withdraws a press that nobody takes")
  void withdrawn() {
    assertEquals(
        PressSlot.Fate.WITHDRAWN, presses.put(new Press(7, "say again", Heard.How.PRESSED), 1));
    assertEquals(Optional.empty(), presses.take(7));
  }

  private final class SpokenEar implements Ear {
    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
      asked.add(patienceMillis);
      if (spoken.filter("end"::equals).isPresent()) {
        throw new EndOfInput();
      }
      return spoken.map(s -> new Heard(RecognisedPhrase.typed(s), Heard.How.SPOKEN));
    }

    @Override
    public void close() {}
  }
}
