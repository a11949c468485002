package org.undercall.command.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.core.reply.Lesson;

@DisplayName("What a technician knows from earlier sessions")
class KnownBeforeTest {
  private static final Optional<String> ALEX = Optional.of("ALEX");
  private static final LocalDate DAY = LocalDate.of(2026, 1, 5);
  private static final Set<Lesson> ALL = EnumSet.allOf(Lesson.class);

  @TempDir private Path folder;

  private KnownBefore on(LocalDate day) {
    return new KnownBefore(folder.resolve("new").resolve("known.properties"), day);
  }

  @Test
  @DisplayName("is how to answer, and never a caution, a value or a title of another procedure")
  void carried() {
    on(DAY).keep(ALEX, ALL, "aa", false);
    Set<Lesson> known = on(DAY).of(ALEX, "aa");
    assertEquals(known, on(DAY).of(ALEX, "bb"));
    for (Lesson job : Set.of(Lesson.CAUTIONS, Lesson.TITLES, Lesson.STAGE, Lesson.STAGE_CLOSED)) {
      assertFalse(known.contains(job), job::name);
    }
    assertEquals(
        EnumSet.of(Lesson.CHECK, Lesson.READ_BACK), only(known, Lesson.CHECK, Lesson.READ_BACK));
  }

  private static Set<Lesson> only(Set<Lesson> known, Lesson... of) {
    Set<Lesson> both = EnumSet.copyOf(known);
    both.retainAll(Set.of(of));
    return both;
  }

  @Test
  @DisplayName("is the titles of a procedure that was worked to its end, by that one alone")
  void titles() {
    on(DAY).keep(ALEX, Set.of(Lesson.CHECK), "aa", true);
    assertEquals(EnumSet.of(Lesson.CHECK, Lesson.TITLES, Lesson.SET), on(DAY).of(ALEX, "aa"));
    assertEquals(Set.of(Lesson.CHECK), on(DAY).of(ALEX, "bb"));
    assertEquals(Set.of(), on(DAY).of(Optional.of("KIM"), "aa"));
  }

  @Test
  @DisplayName("is forgotten after thirty days, and does not come from a day to come")
  void forgotten() {
    on(DAY).keep(ALEX, Set.of(Lesson.CHECK), "aa", true);
    assertFalse(on(DAY.plusDays(29)).of(ALEX, "aa").isEmpty());
    assertEquals(Set.of(), on(DAY.plusDays(30)).of(ALEX, "aa"));
    assertEquals(Set.of(), on(DAY.minusDays(1)).of(ALEX, "aa"));
  }

  @Test
  @DisplayName("is nothing of somebody who is not named, and of a file that is damaged")
  void nobody() throws Exception {
    on(DAY).keep(Optional.empty(), ALL, "aa", true);
    assertEquals(Set.of(), on(DAY).of(Optional.empty(), "aa"));
    Path file = Files.writeString(folder.resolve("known.properties"), "ALEX=soon check");
    assertEquals(Set.of(), new KnownBefore(file, DAY).of(ALEX, "aa"));
    assertEquals(Set.of(), new KnownBefore(folder, DAY).of(ALEX, "aa"));
  }
}
