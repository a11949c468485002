package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;

@DisplayName("A job in which something goes otherwise")
class JobStoriesTest {
  private static final Path STORIES = Path.of("src", "test", "resources", "stories", "jobs.txt");
  private static final Pattern STEP = Pattern.compile("\\{n ([^}]+)}");
  private static final int MOST_ANSWERS = 2000;
  private static final int AT_LEAST = 30;

  /** A story: the procedure, what happens, and its lines. */
  record Story(String procedure, String title, List<String> lines) {
    @Override
    public String toString() {
      return procedure + ": " + title;
    }
  }

  static List<Story> stories() throws IOException {
    List<Story> stories = new ArrayList<>();
    for (String line : Files.readAllLines(STORIES)) {
      if (line.startsWith("== ")) {
        String[] parts = line.substring(3).split(": ", 2);
        stories.add(new Story(parts[0], parts[1], new ArrayList<>()));
      } else if (!line.isBlank() && !line.startsWith("#")) {
        stories.get(stories.size() - 1).lines().add(line);
      }
    }
    return stories;
  }

  private int phrases;

  @Test
  @DisplayName("is told in thirty ways")
  void thirty() throws Exception {
    assertTrue(stories().size() >= AT_LEAST, () -> "fewer than " + AT_LEAST);
  }

  @ParameterizedTest
  @MethodSource("stories")
  @DisplayName("comes to a true end")
  void ends(Story story) throws Exception {
    Path file = Path.of("shared", "procedures", story.procedure() + ".json");
    Walk walk = Walk.of(ProcedureFile.load(file).procedure());
    Bay bay = Bay.briefing(walk).given(WalkThrough.started());
    for (String line : story.lines()) {
      if (line.startsWith("@ ")) {
        carryOn(bay, line.substring(2));
      } else {
        phrases += line.startsWith(">") ? 1 : 0;
        bay.plays(filled(bay, line));
      }
    }
    List<SessionEvent.SessionEnded> ends = bay.recorded(SessionEvent.SessionEnded.class);
    assertEquals(new SessionEvent.SessionEnded(true, 0), ends.get(ends.size() - 1));
    System.out.printf("%d phrases: %s%n", phrases, story);
  }

  private static String filled(Bay bay, String line) {
    String text = line.contains("{amount}") ? line.replace("{amount}", bay.amount()) : line;
    Matcher step = STEP.matcher(text);
    return step.find() ? step.replaceAll(String.valueOf(bay.number(step.group(1)))) : text;
  }

  private void carryOn(Bay bay, String until) {
    boolean count = until.matches("[0-9]+");
    int most = count ? Integer.parseInt(until) : MOST_ANSWERS;
    for (int i = 0; i < most; i++) {
      boolean there = !count && bay.phase() != Phase.BRIEFING && bay.at().equals(until);
      if (bay.phase() == Phase.ENDED || there) {
        return;
      }
      phrases++;
      bay.carryOn();
    }
    assertTrue(count, () -> "a dead end before " + until + ", at " + bay.at() + " " + bay.phase());
  }
}
