package org.undercall.adapter.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.port.Fault;

/**
 * Published joints, a list for each page they were read from, and tables of VDI 2230, taken in as
 * they are written there. The sources stand in the reference tables.
 */
@DisplayName("Published tables")
class PublishedListsTest {
  private static final Path REFERENCE = Path.of("src/test/resources/reference");
  private static final int MOST_ROUNDS = 6;
  private static final Map<String, String> COARSE =
      Map.ofEntries(
          Map.entry("M4", "M4x0.7"),
          Map.entry("M5", "M5x0.8"),
          Map.entry("M6", "M6x1"),
          Map.entry("M7", "M7x1"),
          Map.entry("M8", "M8x1.25"),
          Map.entry("M9", "M9x1.25"),
          Map.entry("M10", "M10x1.5"),
          Map.entry("M11", "M11x1.5"),
          Map.entry("M12", "M12x1.75"),
          Map.entry("M14", "M14x2"),
          Map.entry("M16", "M16x2"),
          Map.entry("M18", "M18x2.5"),
          Map.entry("M20", "M20x2.5"),
          Map.entry("M22", "M22x2.5"),
          Map.entry("M24", "M24x3"),
          Map.entry("M27", "M27x3"),
          Map.entry("M30", "M30x3.5"),
          Map.entry("M36", "M36x4"));

  @TempDir private Path folder;
  private int lists;
  private int cells;
  private int asked;

  private static List<CSVRecord> rows(String file) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(REFERENCE.resolve(file), StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  @Test
  @DisplayName("of the joints of vehicles are taken without a mistake")
  void joints() throws Exception {
    Map<String, List<CSVRecord>> pages = new LinkedHashMap<>();
    for (CSVRecord row : rows("20_published_joints.csv")) {
      if (!row.get("torque").isEmpty() && !row.get("unit").equals("flat")) {
        pages.computeIfAbsent(row.get("source"), page -> new ArrayList<>()).add(row);
      }
    }
    for (List<CSVRecord> page : pages.values()) {
      StringBuilder list = new StringBuilder("Joint;Thread;Class;Torque;New\n");
      Map<String, Truth> truth = new HashMap<>();
      for (CSVRecord row : page) {
        String angle = row.get("angle");
        if (row.get("thread").isEmpty() || !angle.matches("[0-9.]*")) {
          continue;
        }
        String name = row.get("id") + " " + row.get("use").replace(';', ',').replace('"', ' ');
        String torque = row.get("torque").replace("..", "-");
        String unit = row.get("unit").replace("lbf.", "lbf·");
        String written = torque + " " + unit + (angle.isEmpty() ? "" : " + " + angle + "°");
        list.append(name + ";" + row.get("thread") + ";;" + written + ";;\n");
        truth.put(
            name.strip(), new Truth(row.get("thread"), torque, unit.replace('.', '·'), angle));
      }
      if (!truth.isEmpty()) {
        take(list.toString(), truth);
      }
    }
    told("published joints");
  }

  @Test
  @DisplayName("of torques by thread and class are taken without a mistake")
  void torques() throws Exception {
    Map<String, StringBuilder> tables = new LinkedHashMap<>();
    Map<String, Map<String, Truth>> truths = new HashMap<>();
    for (CSVRecord row : rows("03a_vdi2230_preload_torque.csv")) {
      String torque = row.get("MA_Nm_table");
      String friction = row.get("mu_G_eq_mu_K");
      String name = "Bolt " + row.get("thread") + " " + row.get("property_class");
      if (torque.isEmpty()
          || truths.computeIfAbsent(friction, f -> new HashMap<>()).containsKey(name)) {
        continue;
      }
      tables
          .computeIfAbsent(
              friction, f -> new StringBuilder("Item;Size;Property class;Tightening torque [Nm]\n"))
          .append(
              name
                  + ";"
                  + row.get("thread")
                  + ";"
                  + row.get("property_class")
                  + ";"
                  + torque
                  + "\n");
      truths.get(friction).put(name, new Truth(row.get("thread"), torque, "N·m", ""));
    }
    for (Map.Entry<String, StringBuilder> table : tables.entrySet()) {
      take(table.getValue().toString(), truths.get(table.getKey()));
    }
    told("tables by friction");
  }

  /** What stands in the published table. */
  private record Truth(String thread, String torque, String unit, String angle) {
    String whole() {
      String numbered = thread.replaceFirst("^(1?[0-9]-)", "#$1");
      return Stream.of("", " UNC", " UNF", " UN")
          .map(series -> Threads.read(numbered + series))
          .flatMap(Optional::stream)
          .findFirst()
          .orElse(COARSE.getOrDefault(thread, thread));
    }
  }

  private void take(String list, Map<String, Truth> truth) throws IOException, Fault {
    Path file = Files.writeString(folder.resolve("list-" + lists + ".csv"), list);
    Answers answers = Answers.NONE;
    TorqueTable table = TorqueTable.read(file, wishes(answers));
    cells += table.cells();
    for (int i = 0; i < MOST_ROUNDS && !table.questions().isEmpty(); i++) {
      List<Question> columns = table.questions().stream().filter(Question::isOfAColumn).toList();
      for (Question question : columns.isEmpty() ? table.questions() : columns) {
        answers = answer(question, truth, answers);
      }
      table = TorqueTable.read(file, wishes(answers));
    }
    assertEquals(List.of(), table.faults(), list);
    int compared = 0;
    for (JsonNode phase : new ObjectMapper().readTree(table.json()).get("phases")) {
      for (JsonNode step : phase.get("steps")) {
        compare(step.get("fastener"), truth);
        compared++;
      }
    }
    assertEquals(truth.size(), compared, list);
    lists++;
  }

  private static void compare(JsonNode fastener, Map<String, Truth> truth) {
    Truth known = truth.get(fastener.get("name").asText());
    JsonNode stages = fastener.path("variants").path(0).path("stages");
    stages = stages.isMissingNode() ? fastener.get("stages") : stages;
    assertEquals(known.whole(), fastener.get("thread").asText(), known::toString);
    String upTo = stages.get(0).has("upTo") ? "-" + plain(stages.get(0).get("upTo")) : "";
    assertEquals(
        known.torque().replaceAll("\\.0(?=-|$)", ""),
        plain(stages.get(0).get("torque")) + upTo,
        known::toString);
    assertEquals(known.unit(), stages.get(0).get("unit").asText(), known::toString);
    assertEquals(known.angle().isEmpty() ? 1 : 2, stages.size(), known::toString);
    if (!known.angle().isEmpty()) {
      assertEquals(known.angle(), plain(stages.get(1).get("angle")), known::toString);
    }
  }

  private static String plain(JsonNode number) {
    return new BigDecimal(number.asText()).stripTrailingZeros().toPlainString();
  }

  private static TorqueTable.Wishes wishes(Answers answers) {
    return new TorqueTable.Wishes(List.of(), Map.of(), Optional.empty(), answers);
  }

  /** What somebody answers who has the page before him. */
  private Answers answer(Question question, Map<String, Truth> truth, Answers before) {
    Answers answers = before;
    if (question.rows().isEmpty()) {
      String answer = question.isOfAColumn() ? column(question.read()) : head(question.asked());
      return answers.with(new Answers.Answer(question.asked(), question.read(), List.of(), answer));
    }
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (String row : question.rows()) {
      rows.computeIfAbsent(answer(question.asked(), row, truth), a -> new ArrayList<>()).add(row);
    }
    asked += rows.size();
    for (Map.Entry<String, List<String>> each : rows.entrySet()) {
      answers =
          answers.with(
              new Answers.Answer(
                  question.asked(), question.read(), each.getValue(), each.getKey()));
    }
    return answers;
  }

  private static String answer(String asked, String row, Map<String, Truth> truth) {
    Truth known =
        truth.entrySet().stream()
            .filter(entry -> row.startsWith(entry.getKey()))
            .max((a, b) -> a.getKey().length() - b.getKey().length())
            .orElseThrow(() -> new AssertionError(row))
            .getValue();
    return switch (asked) {
      case "thread" -> known.whole();
      case "hardware" -> "bolt";
      case "load condition" -> "any";
      case "one time use" -> "yes";
      case "tolerance" -> "4 %";
      case "angle tolerance" -> "5";
      case "socket" -> "18";
      case "side" -> "car";
      default -> throw new AssertionError(asked + ", " + row);
    };
  }

  private static String column(String heading) {
    return switch (heading) {
      case "Joint", "Item" -> "fastener";
      case "Size" -> "thread";
      default -> "-";
    };
  }

  private static String head(String asked) {
    return switch (asked) {
      case "tool" -> "w1; 1; 2000; Nm; 2026-03-03";
      case "revision" -> "1";
      default -> "read for a test";
    };
  }

  private void told(String what) {
    System.out.printf(
        "%s: %d lists, %d cells, %d questions of rows, 0 wrong%n", what, lists, cells, asked);
    assertTrue(lists > 3 && asked > 0, "many were read");
  }
}
