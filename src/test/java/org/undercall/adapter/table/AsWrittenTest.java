package org.undercall.adapter.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.port.Fault;

/** What must not be read as more than it says. */
@DisplayName("What people write in tables")
class AsWrittenTest {
  @TempDir private Path folder;

  private TorqueTable read(Answers answers, String... lines) throws IOException, Fault {
    Path file = Files.write(folder.resolve("t.csv"), List.of(lines));
    List<Map.Entry<String, String>> set = new ArrayList<>(Sheets.wishes().set());
    set.removeIf(entry -> entry.getKey().equals("side"));
    return TorqueTable.read(file, new TorqueTable.Wishes(set, Map.of(), Optional.empty(), answers));
  }

  private static List<JsonNode> fasteners(TorqueTable table) throws IOException {
    assertEquals(List.of(), table.faults());
    return new ObjectMapper().readTree(table.json()).findValues("fastener");
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "70 Nm + 90° | 70 Nm + 90°",
        "70 Nm; then 90 deg | 70 Nm + 90°",
        "70 Nm & 90° | 70 Nm + 90°",
        "70 Nm and a further 90 degrees | 70 Nm + 90°",
        "70 Nm/90° | 70 Nm + 90°",
        "1st 40 Nm 2nd 80 Nm 3rd 90° | 40 Nm + 80 Nm + 90°",
        "1. 40 Nm; 2. 80 Nm | 40 Nm + 80 Nm",
        "40 Nm & 80 Nm | 40 Nm & 80 Nm",
        "40 Nm and 80 Nm | 40 Nm and 80 Nm",
        "40 Nm; 52 lbf ft | 40 Nm; 52 lbf ft",
        "2) 40 3) 80 | 2) 40 3) 80",
        "1.40 Nm | 1.40 Nm",
        "1 1/4 turns | 450°",
        "12 1/4 turns | 12 1/4 turns",
        "31/2 turns | 31/2 turns",
        "back off 90° ± 10° | back off 90° ± 10°",
        "70 (±5) Nm | 70 ±5 Nm"
      })
  @DisplayName("as stages")
  void stages(String written, String read) {
    assertEquals(read, AsWritten.stages(written));
  }

  @ParameterizedTest(name = "{0} {1} -> {2}")
  @CsvSource({
    "Re-use, yes, false",
    "Re-use, no, true",
    "Re-use, do not re-use, true",
    "Reusable, may be re-used, false",
    "Reusable, renew, true",
    "Replace, yes, true",
    "Replace, no, false"
  })
  @DisplayName("of using a part again is turned round under the heading that asks the opposite")
  void reusable(String heading, String cell, boolean oneTime) throws IOException, Fault {
    TorqueTable table =
        read(
            Answers.NONE,
            "Fastener;Thread;Class;Torque;Tolerance;Socket;Side;Load;" + heading,
            "Arm bolt;M12x1.5;10.9;70 Nm;4 %;18;both;any;" + cell);
    assertEquals(oneTime, fasteners(table).get(0).get("oneTimeUse").booleanValue());
  }

  @Test
  @DisplayName("a mark under \"re-use\" may mean either, and is asked")
  void mark() throws IOException, Fault {
    TorqueTable table =
        read(
            Answers.NONE,
            "Fastener;Thread;Class;Torque;Tolerance;Socket;Side;Load;Re-use",
            "Arm bolt;M12x1.5;10.9;70 Nm;4 %;18;both;any;x");
    assertEquals(List.of("reusable"), table.questions().stream().map(Question::asked).toList());
  }

  private static final String SIDED =
      "Phase;Fastener;Thread;Class;Torque;Tolerance;Socket;Load;Replace";

  @Test
  @DisplayName("a left and a right row are one step, of one phase and alike in all else only")
  void sides() throws IOException, Fault {
    String row = ";M12x1.5;10.9;70 Nm;4 %;18;any;yes";
    TorqueTable pair = read(Answers.NONE, SIDED, "a;Arm bolt LH" + row, "a;Arm bolt RH" + row);
    assertEquals(1, fasteners(pair).size());
    TorqueTable apart = read(Answers.NONE, SIDED, "a;Arm bolt LH" + row, "b;Arm bolt RH" + row);
    assertEquals(2, apart.questions().get(0).rows().size());
    String other = row.replace("70 Nm", "75 Nm");
    TorqueTable unlike = read(Answers.NONE, SIDED, "a;Arm bolt LH" + row, "a;Arm bolt RH" + other);
    assertTrue(unlike.questions().stream().anyMatch(q -> q.asked().equals("side")));
    TorqueTable alone = read(Answers.NONE, SIDED, "a;Arm bolt LH" + row);
    assertEquals(1, alone.questions().size());
  }

  @Test
  @DisplayName("a left-hand thread is no left side")
  void leftHand() throws IOException, Fault {
    TorqueTable table =
        read(
            Answers.NONE,
            SIDED + ";Side",
            "a;Hub bolt, left hand;M12x1.5;10.9;70 Nm;4 %;18;any;yes;");
    assertEquals(List.of("side"), table.questions().stream().map(Question::asked).toList());
    assertEquals("Hub bolt, left hand", name(table));
  }

  private static String name(TorqueTable table) throws IOException {
    return new ObjectMapper().readTree(table.json()).findValue("fastener").get("name").asText();
  }

  @Test
  @DisplayName("an old answer does not speak against a line that the table has by now")
  void oldAnswer() throws IOException, Fault {
    String row = "Arm bolt;M12x1.5;10.9;70 Nm;4 %;18;both;any;yes";
    String heading = "Fastener;Thread;Class;Torque;Tolerance;Socket;Side;Load;Replace";
    Answers old =
        new Answers(
            List.of(
                new Answers.Answer("title", "", List.of(), "Old title"),
                new Answers.Answer("caution", "", List.of(), "Old caution.")));
    Path file = Files.write(folder.resolve("t.csv"), List.of("Title;New title", heading, row));
    List<Map.Entry<String, String>> set = new ArrayList<>(Sheets.wishes().set());
    set.removeIf(entry -> List.of("title", "side").contains(entry.getKey()));
    TorqueTable table =
        TorqueTable.read(file, new TorqueTable.Wishes(set, Map.of(), Optional.empty(), old));
    JsonNode root = new ObjectMapper().readTree(table.json());
    assertEquals("New title", root.get("title").asText());
    assertEquals(1, root.get("cautions").size());
  }
}
