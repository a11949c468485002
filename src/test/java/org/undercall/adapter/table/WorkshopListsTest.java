package org.undercall.adapter.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Lists of different make-up, each read by somebody who answers what is asked from what he knows,
 * and compared with that. The figures are printed; that nothing is wrong is required.
 */
@DisplayName("Lists as workshops have them")
class WorkshopListsTest {
  private static final Path LISTS = Path.of("src/test/resources/tables/lists");
  private static final int MOST_ROUNDS = 5;

  /** What is so in truth about one row. */
  private record Truth(
      String name,
      String thread,
      String marking,
      String hardware,
      String stages,
      String needs,
      String oneTime) {}

  /** What somebody answers who knows the truth; counts what he is asked. */
  private static final class Somebody {
    private static final Map<String, String> HEAD =
        Map.of(
            "title", "A list",
            "vehicle", "Invented van",
            "author", "Test",
            "revision", "1",
            "source", "invented for a test",
            "caution", "Stands carry the car.",
            "tool", "w1; 5; 400; Nm; 2026-03-03");

    private final List<Truth> truth;
    private int asked;
    private int askedOfTable;

    Somebody(List<Truth> truth) {
      this.truth = truth;
    }

    Answers answer(Question question, Answers before) {
      Answers answers = before;
      if (question.rows().isEmpty()) {
        askedOfTable++;
        String answer =
            question.isOfAColumn() ? column(question.read()) : HEAD.get(question.asked());
        return answers.with(
            new Answers.Answer(question.asked(), question.read(), List.of(), answer));
      }
      Map<String, List<String>> rows = new TreeMap<>();
      for (String row : question.rows()) {
        rows.computeIfAbsent(answer(question, row), a -> new ArrayList<>()).add(row);
      }
      asked += rows.size();
      for (Map.Entry<String, List<String>> each : rows.entrySet()) {
        boolean everywhere = question.isOfAWord() && rows.size() == 1;
        answers =
            answers.with(
                new Answers.Answer(
                    question.asked(),
                    question.read(),
                    everywhere ? List.of() : each.getValue(),
                    each.getKey()));
      }
      return answers;
    }

    /** Whether he would answer all of it so. */
    private boolean saysSo(List<Answers.Answer> offered, List<Question> questions) {
      return offered.stream()
          .allMatch(
              each ->
                  questions.stream()
                      .filter(q -> q.asked().equals(each.asked()) && q.read().equals(each.read()))
                      .allMatch(question -> saysSo(each, question)));
    }

    private boolean saysSo(Answers.Answer offered, Question question) {
      if (question.isOfAColumn()) {
        return column(question.read()).equals(offered.answer());
      }
      return question.rows().isEmpty()
          ? offered.answer().equals(HEAD.get(question.asked()))
          : question.rows().stream()
              .allMatch(row -> answer(question, row).equals(offered.answer()));
    }

    private static String column(String heading) {
      return switch (heading) {
        case "Bolt", "Fixing", "Part", "Item", "Description" -> "fastener";
        case "Position" -> "load condition";
        case "Size" -> "thread";
        case "Moment" -> "torque";
        case "New", "New part" -> "one time use";
        default -> "-";
      };
    }

    private String answer(Question question, String row) {
      Truth known =
          truth.stream()
              .filter(t -> row.contains(t.name()))
              .max((a, b) -> a.name().length() - b.name().length())
              .orElseThrow(() -> new AssertionError("asked of nothing known: " + question));
      return switch (question.asked()) {
        case "thread" -> known.thread();
        case "class" -> known.marking();
        case "hardware" -> known.hardware();
        case "load condition" -> known.needs();
        case "one time use" -> known.oneTime().equals("true") ? "yes" : "no";
        case "reusable" -> known.oneTime().equals("true") ? "no" : "yes";
        case "torque" -> known.stages();
        case "torque unit" -> "Nm";
        case "tolerance" -> "4 %";
        case "angle tolerance" -> "5";
        case "socket" -> known.thread().startsWith("M") ? "by thread" : "5/8 in";
        case "side" -> "both";
        default -> throw new AssertionError("asked what a list should not be asked: " + question);
      };
    }
  }

  @Test
  @DisplayName("are taken without a mistake, and ask little")
  void lists() throws Exception {
    taken(false);
  }

  @Test
  @DisplayName("ask less where other lists of the same people were answered, and are still right")
  void afterOthers() throws Exception {
    taken(true);
  }

  /** Reads all of them, each alone or after what was answered of those before it. */
  private static void taken(boolean afterOthers) throws Exception {
    Answers before = Answers.NONE;
    Map<String, List<Truth>> all = truth();
    int cells = 0;
    int asked = 0;
    int ofTables = 0;
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, List<Truth>> list : all.entrySet()) {
      Path file = LISTS.resolve(list.getKey());
      Somebody somebody = new Somebody(list.getValue());
      Answers answers = Answers.NONE;
      TorqueTable table = TorqueTable.read(file, wishes(answers));
      int filled = table.cells();
      boolean offers = true;
      for (int round = 0; round < MOST_ROUNDS && !table.questions().isEmpty(); round++) {
        List<Answers.Answer> fresh = new ArrayList<>(before.offered(table.questions()));
        fresh.removeAll(answers.all());
        if (offers && !fresh.isEmpty()) {
          somebody.asked++;
          offers = somebody.saysSo(fresh, table.questions());
          for (Answers.Answer each : offers ? fresh : List.<Answers.Answer>of()) {
            answers = answers.with(each);
          }
          table = TorqueTable.read(file, wishes(answers));
        }
        for (Question question : table.questions()) {
          answers = somebody.answer(question, answers);
        }
        table = TorqueTable.read(file, wishes(answers));
      }
      assertEquals(List.of(), table.faults(), list.getKey());
      assertEquals(List.of(), table.questions(), list.getKey());
      compare(list.getKey(), list.getValue(), table, wrong);
      System.out.printf(
          "%s: %d cells, %d questions of rows, %d of the table%n",
          list.getKey(), filled, somebody.asked, somebody.askedOfTable);
      before = afterOthers ? answers.forOtherLists().and(before) : Answers.NONE;
      cells += filled;
      asked += somebody.asked;
      ofTables += somebody.askedOfTable;
    }
    System.out.printf(
        "%d lists%s: %d cells, %d questions of rows, %d of tables, %d wrong%n",
        all.size(), afterOthers ? " one after another" : "", cells, asked, ofTables, wrong.size());
    assertEquals(List.of(), wrong);
    assertTrue(asked > 0, "who is asked nothing compares nothing");
  }

  private static TorqueTable.Wishes wishes(Answers answers) {
    return new TorqueTable.Wishes(List.of(), Map.of(), Optional.empty(), answers);
  }

  private static Map<String, List<Truth>> truth() throws Exception {
    return Files.readAllLines(LISTS.resolve("truth.txt")).stream()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split(";", -1))
        .collect(
            Collectors.groupingBy(
                part -> part[0],
                TreeMap::new,
                Collectors.mapping(
                    p -> new Truth(p[1], p[2], p[3], p[4], p[5], p[6], p[7]),
                    Collectors.toList())));
  }

  private static void compare(String list, List<Truth> truth, TorqueTable table, List<String> wrong)
      throws Exception {
    List<Truth> read = new ArrayList<>();
    JsonNode root = new ObjectMapper().readTree(table.json());
    for (JsonNode phase : root.get("phases")) {
      for (JsonNode step : phase.get("steps")) {
        JsonNode fastener = step.get("fastener");
        if (fastener.has("variants")) {
          fastener.get("variants").forEach(v -> read.add(read(fastener, v)));
        } else {
          read.add(read(fastener, fastener));
        }
      }
    }
    for (int i = 0; i < Math.max(read.size(), truth.size()); i++) {
      Object is = i < read.size() ? read.get(i) : "nothing";
      Object should = i < truth.size() ? truth.get(i) : "nothing";
      if (!is.equals(should)) {
        wrong.add(list + ": " + is + " in place of " + should);
      }
    }
  }

  private static Truth read(JsonNode fastener, JsonNode variant) {
    String stages =
        StreamSupport.stream(variant.get("stages").spliterator(), false)
            .map(WorkshopListsTest::stage)
            .collect(Collectors.joining(" + "));
    return new Truth(
        fastener.get("name").asText(),
        fastener.get("thread").asText(),
        variant.path("marking").asText(),
        fastener.get("hardware").asText(),
        stages,
        fastener.get("needs").asText(),
        fastener.get("oneTimeUse").asText());
  }

  private static String stage(JsonNode stage) {
    return stage.has("angle")
        ? stage.get("angle").asText() + "°"
        : stage.get("torque").asText()
            + (stage.has("upTo") ? " to " + stage.get("upTo").asText() : "")
            + " "
            + stage.get("unit").asText();
  }
}
