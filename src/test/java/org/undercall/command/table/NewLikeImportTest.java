package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.table.Column;
import org.undercall.adapter.table.DraftTable;
import org.undercall.adapter.table.TableText;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.core.intent.AnswerCommand;
import org.undercall.core.intent.AnswerWords;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.reply.Wanted;
import org.undercall.core.writing.Draft;
import org.undercall.core.writing.Given;
import org.undercall.core.writing.Interview;
import org.undercall.core.writing.Kept;

@DisplayName("The answers to the questions")
class NewLikeImportTest {
  private static final TableJudge JUDGE = new TableJudge(Clock.systemUTC());

  private static final List<Column> NOT_ASKED =
      List.of(
          Column.ID,
          Column.BRIEF,
          Column.FRICTION,
          Column.RENEW,
          Column.ADAPTOR,
          Column.AFTER,
          Column.UNDOES,
          Column.CAR,
          Column.CORNER,
          Column.ROAD_TEST,
          Column.WHY,
          Column.WITNESS);

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "brake-caliper-carrier",
        "demo-lateral-link",
        "light-van-rear-axle",
        "rear-trailing-arm-droop",
        "strut-top-mount",
        "subframe-star-order",
        "wheel-change-retorque",
        "wheel-hub-axle-nut"
      })
  @DisplayName("make the procedure that import makes of the same table")
  void same(String name) throws Exception {
    Path file = Path.of("shared", "procedures", name + ".json");
    Path table = folder.resolve("table.csv");
    // Names of steps are made by both ways, and what steps do to one another is not asked for.
    String csv = withoutNames(TableText.of(withoutBriefs(ProcedureFile.load(file).procedure())));
    Files.writeString(table, csv);
    Draft draft = DraftTable.read(table).draft();
    Interview interview = new Interview(Draft.EMPTY);
    for (Given one : draft.given()) {
      assertEquals(one.wanted(), interview.question().orElseThrow());
      Interview.Result result = interview.answer(one.text(), JUDGE);
      assertEquals(List.of(), result.told(), one.toString());
      interview = result.next();
    }
    Procedure asked = JUDGE.procedure(interview.draft()).orElseThrow();
    Procedure imported =
        ProcedureFile.of(Path.of("imported.json"), TorqueTable.readAgain(csv).json()).procedure();
    assertEquals(imported, asked);
    assertEquals(List.of(), interview.answer("done", JUDGE).told());
  }

  /** Brief forms of the cautions are not asked for, nor of a title that is brief as it is. */
  private static Procedure withoutBriefs(Procedure whole) {
    Procedure.About about = whole.about();
    return new Procedure(
        new Procedure.About(
            about.title(), about.vehicle(), about.author(), about.revision(), about.values()),
        whole.cautions().stream().map(caution -> Caution.of(caution.text())).toList(),
        whole.tools(),
        whole.rideHeight(),
        whole.loadHolds(),
        whole.phases());
  }

  private String withoutNames(String csv) throws Exception {
    Path with = folder.resolve("with.csv");
    Files.writeString(with, csv);
    Kept kept = DraftTable.read(with);
    List<java.util.Map<String, String>> rows =
        kept.rows().stream()
            .map(java.util.LinkedHashMap::new)
            .<java.util.Map<String, String>>map(
                row -> {
                  NOT_ASKED.forEach(column -> row.remove(column.label()));
                  if (row.get(Column.STEP.label()).split(" ", -1).length <= 5) {
                    row.remove(Column.BRIEF.label());
                  }
                  return row;
                })
            .toList();
    List<List<String>> head =
        kept.head().stream().filter(line -> !line.get(0).equals("ride height arm")).toList();
    return DraftTable.csv(new Kept(head, rows, List.of()));
  }

  @Test
  @DisplayName("stand in columns that import knows")
  void columns() {
    Set<String> words =
        Set.of("", "title", "vehicle", "author", "revision", "source", "caution", "tool");
    Set<String> labels =
        Arrays.stream(Column.values()).map(Column::label).collect(Collectors.toSet());
    List<Wanted> unknown =
        Arrays.stream(Wanted.values())
            .filter(wanted -> !words.contains(wanted.heading()))
            .filter(wanted -> !labels.contains(wanted.heading()))
            .toList();
    assertEquals(List.of(), unknown);
  }

  @Test
  @DisplayName("are explained, each question with words of its own")
  void explained() {
    for (Wanted wanted : Wanted.values()) {
      assertTrue(wanted.asked().length() < 61, wanted + " is long");
      assertTrue(wanted.explained().length() > 8, wanted + " is not explained");
    }
  }

  @Test
  @DisplayName("can be said as the documents say")
  void phrases() throws Exception {
    String page = Files.readString(Path.of("docs/how-to/write.md"));
    for (AnswerCommand command : AnswerCommand.values()) {
      String phrase = AnswerWords.of(Set.of(command)).phrases().get(0);
      boolean named = command == AnswerCommand.WRONG || page.contains('"' + phrase + '"');
      assertTrue(named, phrase);
    }
  }
}
