package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the voice says when")
class SpokenNowTest {
  private final AtomicLong now = new AtomicLong(1_000);
  private final SpokenNow spoken = new SpokenNow(now::get);

  @Test
  @DisplayName("a sentence that was said to its end holds all its words")
  void whole() {
    spoken.begins("Say: right side at ride height.", 2_000);
    now.addAndGet(2_000);
    spoken.ends(false);
    assertEquals(
        Optional.of(Set.of("say", "right", "side", "at", "ride", "height")),
        spoken.during(2_900, 2_950));
  }

  @Test
  @DisplayName("one that was cut short holds what may have sounded, and a little more")
  void cut() {
    spoken.begins("Say: right side at ride height.", 2_000);
    now.addAndGet(500);
    spoken.ends(true);
    assertEquals(Optional.of(Set.of("say", "right", "side")), spoken.during(1_100, 3_000));
  }

  @Test
  @DisplayName("a sentence sounds no earlier than the one before has ended")
  void next() {
    spoken.begins("Ride height, right.", 1_500);
    now.addAndGet(1_300);
    spoken.begins("Torque, eight zero newton metres.", 2_500);
    assertEquals(Optional.of(Set.of("ride", "height", "right")), spoken.during(2_300, 2_450));
    now.addAndGet(100);
    spoken.ends(true);
    assertEquals(
        Optional.of(Set.of("ride", "height", "right", "torque")), spoken.during(2_300, 2_590));
  }

  @Test
  @DisplayName("after a cut the next begins at once")
  void afterCut() {
    spoken.begins("One.", 5_000);
    now.addAndGet(100);
    spoken.ends(true);
    spoken.begins("Two.", 500);
    assertEquals(Optional.of(Set.of("two")), spoken.during(1_150, 1_200));
  }

  @Test
  @DisplayName("while nothing is said there are no words")
  void silent() {
    assertEquals(Optional.empty(), spoken.during(0, 5_000));
    assertEquals(Set.of(), spoken.all());
  }
}
