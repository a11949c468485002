package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.undercall.adapter.recogniser.ModelCode;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.port.Ear.EndOfInput;
import org.undercall.port.Fault;
import org.undercall.port.UncheckedFault;

@DisplayName("An ear that is made on another thread")
@Timeout(30)
class LazyEarTest {
  private final EarFakes fakes = new EarFakes();
  private final EarFakes.FakeFrames frames = new EarFakes.FakeFrames("-".repeat(10));
  private final CountDownLatch loaded = new CountDownLatch(1);

  private RecogniserMaker load() throws InterruptedException {
    loaded.await();
    return fakes.maker;
  }

  private boolean isOpen() {
    return !frames.closed && fakes.makerClosed.getCount() == 1;
  }

  @Test
  @DisplayName("hears when it is made, and then gives the time and the recognisers")
  void hears() {
    LazyEar ear = LazyEar.start(frames, this::load);
    assertEquals(0, ear.millis());
    assertEquals(Optional.empty(), ear.recognisers());
    loaded.countDown();
    assertThrows(EndOfInput.class, () -> ear.next(EarFakes.HOLD, 1_000));
    assertEquals(10 * EarFakes.MILLIS_PER_FRAME, ear.millis());
    assertEquals(Optional.of(fakes.maker), ear.recognisers());
  }

  @Test
  @DisplayName("closes its sound and its recognisers at once, and closing again does no harm")
  void closed() {
    loaded.countDown();
    LazyEar ear = LazyEar.start(frames, this::load);
    ear.forget();
    assertTrue(isOpen());
    ear.close();
    assertTrue(frames.closed);
    assertEquals(0, fakes.makerClosed.getCount());
    ear.close();
  }

  @Test
  @DisplayName("closed while it is being made holds nobody up, and is closed when it is made")
  void closedTooSoon() throws InterruptedException {
    LazyEar ear = LazyEar.start(frames, this::load);
    ear.close();
    assertTrue(isOpen());
    loaded.countDown();
    fakes.makerClosed.await();
    assertTrue(frames.closed);
  }

  @Test
  @DisplayName("that cannot be made says why when it is used, and closes quietly")
  void notMade() {
    LazyEar ear =
        LazyEar.start(
            frames,
            () -> {
              throw new Fault(ModelCode.NO_FOLDER, "model", "nothing", "a folder");
            });
    UncheckedFault fault = assertThrows(UncheckedFault.class, () -> ear.next(EarFakes.HOLD, 1_000));
    assertEquals("MOD-001 model: found nothing, expected a folder", fault.getMessage());
    assertEquals(Optional.empty(), ear.recognisers());
    ear.close();
    assertFalse(frames.closed);
  }
}
