package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.WalkThrough.Exchange;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Lesson;
import org.undercall.core.term.Positions;
import org.undercall.core.term.TalkLevel;
import org.undercall.docs.Generated;
import org.undercall.port.Fault;

/** Keeps {@code docs/evidence/talk.md} the same as what is said in whole jobs. */
@DisplayName("The page of whole jobs")
class TalkDocumentTest {
  private static final Path DOCUMENT = Path.of("docs/evidence/talk.md");
  private static final Path PROCEDURES = Path.of("shared/procedures");
  private static final Map<String, Walk> ALL = read();
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
      walk.procedure().cautions().forEach(c -> assertTrue(said.contains(c.text()), c.text()));
      for (Walk.Place place : walk.places()) {
        for (String caution : place.step().head().cautions()) {
          assertTrue(said.contains(caution), caution);
        }
      }
      assertTrue(words(brief) < words(full), walk.procedure().about().title());
    }
  }

  /** What somebody hears of a job, by what he knows. */
  private enum Who {
    FULL("full"),
    FIRST("first job"),
    LATER("later job"),
    OTHER("other job, later on a day"),
    AGAIN("same again"),
    DAY("same, later on a day"),
    SHORT("short");

    private final String words;

    Who(String words) {
      this.words = words;
    }

    SessionEvent.TalkSet talk(Walk walk) {
      Set<Lesson> carried = EnumSet.allOf(Lesson.class);
      carried.removeIf(lesson -> !lesson.carried());
      Set<Lesson> again = EnumSet.copyOf(carried);
      again.addAll(Set.of(Lesson.TITLES, Lesson.SET));
      return switch (this) {
        case FULL -> TalkDocumentTest.talk(TalkLevel.FULL);
        case FIRST -> TalkDocumentTest.talk(TalkLevel.NORMAL);
        case LATER -> known(Optional.empty(), carried);
        case OTHER -> known(heardElsewhere(walk), carried);
        case AGAIN -> known(Optional.empty(), again);
        case DAY ->
            known(
                Optional.of(
                    new Positions(
                        IntStream.rangeClosed(1, walk.procedure().cautions().size())
                            .boxed()
                            .toList())),
                again);
        case SHORT -> TalkDocumentTest.talk(TalkLevel.SHORT);
      };
    }

    /** The cautions that other examples have too. */
    private static Optional<Positions> heardElsewhere(Walk walk) {
      List<Caution> own = walk.procedure().cautions();
      List<Caution> others =
          ALL.values().stream()
              .map(Walk::procedure)
              .filter(p -> !p.equals(walk.procedure()))
              .flatMap(p -> p.cautions().stream())
              .toList();
      return Optional.of(
          new Positions(
              IntStream.rangeClosed(1, own.size())
                  .filter(n -> others.contains(own.get(n - 1)))
                  .boxed()
                  .toList()));
    }

    private static SessionEvent.TalkSet known(Optional<Positions> cautions, Set<Lesson> known) {
      return new SessionEvent.TalkSet(
          TalkLevel.NORMAL, cautions.isPresent(), cautions, Optional.of(Lesson.names(known)));
    }
  }

  private static String document() throws Exception {
    StringBuilder page =
        new StringBuilder(
            """
            # How much is said

            Made by walking each example with somebody who answers just what is asked (`TalkDocumentTest`); do not edit by hand. A word is
            what stands between blanks; a digit is one. The whole job counts, the briefing with it.

            Full talk says everything whole each time. The others but the last are normal talk: of somebody's first job; of a later one,
            who knows how to answer; of a later one on a day, who heard and confirmed the cautions that other examples have too; of the
            same procedure again, who knows its titles; and that later on a day. Short talk is of somebody's first job. **Normal use**
            is what somebody hears who works with the program every day: the columns from "later job" to the last before "short".

            | example | steps |""");
    for (Who who : Who.values()) {
      page.append(' ').append(who.words).append(" |");
    }
    page.append("\n|---|--:|--:|--:|--:|--:|--:|--:|--:|\n");
    Map<Who, Double> sums = new EnumMap<>(Who.class);
    StringBuilder each = new StringBuilder();
    for (Map.Entry<String, Walk> example : walks().entrySet()) {
      Walk walk = example.getValue();
      int steps = walk.places().size();
      page.append("| ").append(example.getKey()).append(" | ").append(steps).append(" |");
      each.append("| ").append(example.getKey()).append(" |");
      for (Who who : Who.values()) {
        int words = words(WalkThrough.of(walk, who.talk(walk)));
        page.append(' ').append(words).append(" |");
        each.append(String.format(Locale.ROOT, " %.1f |", words / (double) steps));
        sums.merge(who, words / (double) steps, Double::sum);
      }
      page.append('\n');
      each.append(String.format("%s%n", briefings(walk)));
    }
    page.append(
        "\nWords a step, their mean over the examples, and words of the briefing:\n\n| example |");
    for (Who who : Who.values()) {
      page.append(' ').append(who.words).append(" |");
    }
    page.append(" briefing, first | later on a day |\n|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|\n");
    page.append(each).append("| **mean** |");
    for (Who who : Who.values()) {
      page.append(String.format(Locale.ROOT, " **%.1f** |", sums.get(who) / walks().size()));
    }
    page.append(" | |\n");
    Walk shown = walks().get(SHOWN);
    page.append("\n## The wheel change, a later job\n\n").append(dialogue(shown, Who.LATER));
    page.append("\n## The same again, later on a day\n\n").append(dialogue(shown, Who.DAY));
    return page.toString();
  }

  private static String briefings(Walk walk) {
    int first = words(WalkThrough.of(walk, Who.AGAIN.talk(walk)).subList(0, 1));
    int later = words(WalkThrough.of(walk, Who.DAY.talk(walk)).subList(0, 1));
    return " " + first + " | " + later + " |";
  }

  private static String dialogue(Walk walk, Who who) {
    StringBuilder text = new StringBuilder();
    for (Exchange each : WalkThrough.of(walk, who.talk(walk))) {
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

  private static Map<String, Walk> walks() {
    return ALL;
  }

  private static Map<String, Walk> read() {
    Map<String, Walk> walks = new TreeMap<>();
    try (Stream<Path> files = Files.list(PROCEDURES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
        String name = file.getFileName().toString().replace(".json", "");
        walks.put(name, Walk.of(ProcedureFile.load(file).procedure()));
      }
    } catch (IOException | Fault e) {
      throw new AssertionError(e);
    }
    return walks;
  }
}
