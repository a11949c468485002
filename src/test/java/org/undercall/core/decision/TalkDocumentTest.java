package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.WalkThrough.Exchange;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.TalkLevel;
import org.undercall.docs.Generated;
import org.undercall.port.Fault;

/** Keeps {@code docs/evidence/talk.md} the same as what is said in whole jobs. */
@DisplayName("The page of whole jobs")
class TalkDocumentTest {
  private static final Path DOCUMENT = Path.of("docs/evidence/talk.md");
  private static final Path PROCEDURES = Path.of("shared/procedures");
  private static final String SHOWN = "wheel-change-retorque";

  @Test
  @DisplayName("counts what is said and shows one of them, normal and short")
  void notStale() throws Exception {
    Generated.same(DOCUMENT, document(), TalkDocumentTest.class);
  }

  @Test
  @DisplayName("in no talk is a caution, a marking or a stage left out")
  void nothingAtStakeIsLeftOut() throws Exception {
    for (Walk walk : walks().values()) {
      List<Exchange> brief = WalkThrough.of(walk, talk(TalkLevel.SHORT));
      List<Exchange> full = WalkThrough.of(walk, talk(TalkLevel.FULL));
      assertEquals(
          full.stream().map(Exchange::answer).toList(),
          brief.stream().map(Exchange::answer).toList());
      String said = text(brief);
      walk.procedure().cautions().forEach(caution -> assertTrue(said.contains(caution), caution));
      for (Walk.Place place : walk.places()) {
        for (String caution : place.step().head().cautions()) {
          assertTrue(said.contains(caution), caution);
        }
      }
      assertTrue(words(brief) < words(full), walk.procedure().about().title());
    }
  }

  private static String document() throws Exception {
    StringBuilder page =
        new StringBuilder(
            """
            # How much is said

            Made by walking each example with somebody who answers just what is asked (`TalkDocumentTest`); do not edit by hand. A word is
            what stands between blanks; a digit is one. The whole job counts, the briefing with it. "Later" is a second session of the same
            technician on a day.

            | example | steps | full | normal | short | a step, full | a step, normal | a step, short | briefing, first | briefing, later |
            |---|--:|--:|--:|--:|--:|--:|--:|--:|--:|
            """);
    for (Map.Entry<String, Walk> each : walks().entrySet()) {
      Walk walk = each.getValue();
      int steps = walk.places().size();
      int full = words(WalkThrough.of(walk, talk(TalkLevel.FULL)));
      int normal = words(WalkThrough.of(walk, talk(TalkLevel.NORMAL)));
      int brief = words(WalkThrough.of(walk, talk(TalkLevel.SHORT)));
      int first = words(WalkThrough.of(walk).subList(0, 1));
      int later =
          words(
              WalkThrough.of(walk, new SessionEvent.TalkSet(TalkLevel.NORMAL, true)).subList(0, 1));
      page.append(
          String.format(
              Locale.ROOT,
              "| %s | %d | %d | %d | %d | %.1f | %.1f | %.1f | %d | %d |%n",
              each.getKey(),
              steps,
              full,
              normal,
              brief,
              full / (double) steps,
              normal / (double) steps,
              brief / (double) steps,
              first,
              later));
    }
    Walk shown = walks().get(SHOWN);
    page.append("\n## The wheel change, normal\n\n").append(dialogue(shown, TalkLevel.NORMAL));
    page.append("\n## The same, short\n\n").append(dialogue(shown, TalkLevel.SHORT));
    return page.toString();
  }

  private static String dialogue(Walk walk, TalkLevel level) {
    StringBuilder text = new StringBuilder();
    for (Exchange each : WalkThrough.of(walk, talk(level))) {
      text.append("    < ").append(String.join(" ", each.heard())).append('\n');
      each.answer().ifPresent(answer -> text.append("    > ").append(answer).append('\n'));
    }
    return text.toString();
  }

  private static SessionEvent.TalkSet talk(TalkLevel level) {
    return new SessionEvent.TalkSet(level);
  }

  private static int words(List<Exchange> walked) {
    return (int) Stream.of(text(walked).split("\\s+", -1)).filter(word -> !word.isEmpty()).count();
  }

  private static String text(List<Exchange> walked) {
    return String.join(" ", walked.stream().flatMap(e -> e.heard().stream()).toList());
  }

  private static Map<String, Walk> walks() throws IOException, Fault {
    Map<String, Walk> walks = new TreeMap<>();
    try (Stream<Path> files = Files.list(PROCEDURES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
        String name = file.getFileName().toString().replace(".json", "");
        walks.put(name, Walk.of(ProcedureFile.load(file).procedure()));
      }
    }
    return walks;
  }
}
