package org.undercall.command.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.command.desk.DeskHand.ALT;
import static org.undercall.command.desk.DeskHand.CONTROL;
import static org.undercall.command.desk.DeskHand.DELETE;
import static org.undercall.command.desk.DeskHand.DOWN;
import static org.undercall.command.desk.DeskHand.ENTER;
import static org.undercall.command.desk.DeskHand.ESCAPE;
import static org.undercall.command.desk.DeskHand.F6;
import static org.undercall.command.desk.DeskHand.F8;
import static org.undercall.command.desk.DeskHand.SHIFT;
import static org.undercall.command.desk.DeskHand.TAB;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.decision.WalkThrough;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;

/** The desk in a real browser, by keyboard alone. */
@DisplayName("At the desk")
@Timeout(300)
class DeskPageTest extends DeskSeat {
  private static final String STEP = "/phases/0/steps/0";
  private static final String STAGE = STEP + "/fastener/stages/0";

  @Test
  @DisplayName("a fastener is written from nothing, judged while it is typed, saved, and rehearsed")
  void fromNothing() throws Exception {
    Path file = folder.resolve("new.yaml");
    try (ServedDesk desk = ServedDesk.of(file)) {
      hand.open(desk);
      hand.found("PRO-009", true);
      hand.fill("/title", "Bracket");
      hand.fill("/vehicle", "Invented car");
      hand.fill("/author", "me");
      hand.fill("/revision", "1");
      hand.fill("/values", "invented for this test");
      hand.press("Add to cautions");
      browser.type("Chock the wheels.");
      hand.press("Add to tools");
      hand.fill("/tools/0/id", "wrench 2");
      hand.fill("/tools/0/least", "40");
      hand.fill("/tools/0/most", "200");
      hand.fill("/tools/0/unit", "N");
      browser.chord(SHIFT, F6);
      hand.press("Add a phase");
      hand.fill("/phases/0/name", "tighten");
      hand.fill("/phases/0/each", "car");
      browser.chord(SHIFT, F6);
      hand.to("#new-kind");
      browser.type("f");
      browser.chord(CONTROL, ENTER);
      hand.fill(STEP + "/id", "bracket-nut");
      hand.fill(STEP + "/title", "Tighten the nut of the bracket");
      String fastener = STEP + "/fastener";
      hand.fill(fastener + "/name", "bracket nut");
      hand.fill(fastener + "/thread", "M12x1.5");
      hand.fill(fastener + "/drive", "18");
      hand.fill(fastener + "/hardware", "self");
      hand.fill(fastener + "/lubrication", "dry");
      hand.fill(fastener + "/needs", "any");
      hand.press("Add: tighten to a torque");
      assertTrue(hand.at(DeskHand.field(STAGE + "/torque")), "the focus is in the new stage");
      assertEquals("", hand.value(STAGE + "/torque"));
      browser.type("70,5");
      hand.fill(STAGE + "/unit", "N");
      hand.fill(STAGE + "/plusMinus", "4");
      hand.found("PRO-010", true);
      assertEquals("true", invalid(STAGE + "/torque"));
      browser.keys(F8);
      hand.fill(fastener + "/oneTimeUse", "f");
      hand.fill(STAGE + "/torque", "");
      browser.chord(CONTROL, "a");
      browser.type("70");
      hand.found("CHK-041", true);
      hand.found("PRO-", false);
      browser.until(
          "document.querySelector('#form [data-severity]').textContent.includes('CHK-041')");
      browser.chord(SHIFT, F6);
      hand.to("[data-item=\"" + STEP + "\"]");
      browser.keys(ENTER);
      hand.fill(fastener + "/oneTimeUse", "t");
      hand.found("CHK-041", false);
      String walk = browser.eval("document.getElementById('walk').textContent").asText();
      assertTrue(walk.contains("Say: torque reached 70"), walk);
      browser.chord(CONTROL, "s");
      hand.says("Saved at");
      leave();
    }
    rehearsed(file);
  }

  private static String invalid(String pointer) throws Exception {
    return browser
        .eval("document.querySelector('" + DeskHand.field(pointer) + "').ariaInvalid")
        .asText();
  }

  /** The file is read as it was meant, and walked to its end by the real command. */
  private void rehearsed(Path file) throws Exception {
    Procedure procedure = ProcedureFile.load(file).procedure();
    assertEquals("invented for this test", procedure.about().values());
    assertTrue(
        ProcedureCheck.of(procedure, java.time.LocalDate.of(2026, 3, 31)).stream()
            .noneMatch(f -> f.rule().code().equals("CHK-041")));
    String answers =
        WalkThrough.of(Walk.of(procedure)).stream()
            .flatMap(e -> e.answer().stream())
            .collect(Collectors.joining("\n"));
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream((answers + "\n").getBytes(StandardCharsets.UTF_8)));
      String sessions = folder.resolve("sessions").toString();
      assertEquals(
          0, App.commandLine().execute("rehearse", file.toString(), "--sessions", sessions));
    } finally {
      System.setIn(before);
    }
  }

  @Test
  @DisplayName("what is not saved is marked, warns before it is left, and is undone step by step")
  void unsaved() throws Exception {
    try (ServedDesk desk = ServedDesk.of(copy("demo-lateral-link.json"))) {
      hand.open(desk);
      assertFalse(warns());
      hand.fill("/title", " and more");
      assertTrue(warns());
      assertTrue(browser.eval("document.title").asText().startsWith("Not saved"));
      browser.chord(CONTROL, "z");
      hand.says("Undone");
      assertFalse(warns());
      browser.chord(CONTROL, "y");
      assertTrue(warns());
      browser.chord(CONTROL, "z");
      leave();
    }
  }

  private static boolean warns() throws Exception {
    return browser
        .eval(
            "(() => { const e = new Event('beforeunload', { cancelable: true });"
                + " dispatchEvent(e); return e.defaultPrevented; })()")
        .asBoolean();
  }

  @Test
  @DisplayName("the wrong step that was removed comes back, and steps move")
  void removed() throws Exception {
    try (ServedDesk desk = ServedDesk.of(copy("demo-lateral-link.json"))) {
      hand.open(desk);
      String steps = "[...document.querySelectorAll('[data-item]')].map(e => e.textContent).join()";
      String before = browser.eval(steps).asText();
      hand.to("[data-item='/phases/0']");
      browser.keys(DOWN);
      browser.keys(DELETE);
      hand.says("Removed: Measure wheel centre to arch");
      assertTrue(hand.at("[data-item='/phases/0/steps/0']"), "the focus is at its neighbour");
      browser.chord(CONTROL, "z");
      browser.until("document.querySelectorAll('[data-item]').length > 10");
      assertEquals(
          before.replaceAll("\\d+ \\w+", ""),
          browser.eval(steps).asText().replaceAll("\\d+ \\w+", ""));
      browser.chord(ALT, DOWN);
      hand.says("Moved down");
      browser.chord(ALT, DOWN);
      hand.says("Moved into the phase tighten");
      browser.chord(CONTROL, "z");
      browser.chord(CONTROL, "z");
      assertFalse(warns());
      leave();
    }
  }

  @Test
  @DisplayName("an id that other steps name is renamed there too, if that is wanted")
  void renamed() throws Exception {
    Path file = copy("demo-lateral-link.json");
    ObjectNode tree = (ObjectNode) new ObjectMapper().readTree(file.toFile());
    ((ObjectNode) tree.at("/phases/0/steps/1")).putArray("after").add("arch-height");
    Files.writeString(file, tree.toPrettyString());
    try (ServedDesk desk = ServedDesk.of(file)) {
      hand.open(desk);
      hand.to("[data-item='/phases/0']");
      browser.keys(DOWN, ENTER);
      assertTrue(hand.at(DeskHand.field("/phases/0/steps/0/id")));
      browser.type("-noted");
      browser.keys(TAB);
      browser.until("!document.getElementById('rename').hidden");
      browser.chord(SHIFT, F6);
      browser.keys(F6);
      hand.press("Rename it there too");
      hand.says("Renamed in 1 places");
      hand.found("PRO-062", false);
      leave();
    }
  }

  @Test
  @DisplayName("with a fault it is saved only as a draft, and only if that is said")
  void draft() throws Exception {
    Path file = copy("demo-lateral-link.json");
    String before = Files.readString(file);
    try (ServedDesk desk = ServedDesk.of(file)) {
      hand.open(desk);
      hand.fill("/tools/0/least", "20 Nm");
      browser.chord(CONTROL, "s");
      hand.asked("It has faults");
      hand.accessible("the question");
      browser.keys(ESCAPE);
      hand.says("Not saved");
      assertEquals(before, Files.readString(file));
      browser.chord(CONTROL, "s");
      hand.asked("It has faults");
      hand.press("Save it as a draft");
      hand.says("Saved as a draft");
      assertTrue(Files.readString(file).contains("\"least\": \"20 Nm\""));
      leave();
    }
  }

  @Test
  @DisplayName("a file that was saved by another page meanwhile is not written over")
  void twoPages() throws Exception {
    Path file = copy("demo-lateral-link.json");
    try (ServedDesk desk = ServedDesk.of(file)) {
      hand.open(desk);
      DeskFile other = new DeskFile(file, ServedDesk.DAY);
      JsonNode read = other.read();
      ObjectNode asked = JsonNodeFactory.instance.objectNode();
      asked.put("base", read.path("base").asText());
      asked.set("tree", ((ObjectNode) read.path("tree")).put("title", "The other page"));
      other.save(asked);
      hand.fill("/title", " mine");
      browser.chord(CONTROL, "s");
      hand.asked("The file was changed meanwhile");
      hand.press("Save mine beside it, under another name");
      hand.says("Saved beside it as demo-lateral-link-2.json");
      assertEquals("The other page", ProcedureFile.load(file).procedure().about().title());
      assertTrue(
          ProcedureFile.load(folder.resolve("demo-lateral-link-2.json"))
              .procedure()
              .about()
              .title()
              .endsWith(" mine"));
      browser.chord(CONTROL, "s");
      hand.asked("The file was changed meanwhile");
      hand.press("Drop mine and read the file again");
      hand.says("read again");
      assertEquals("The other page", hand.value("/title"));
      leave();
    }
  }

  @Test
  @DisplayName(
      "a block is included from the library, and its values stay empty until they are typed")
  void block() throws Exception {
    Files.createDirectory(folder.resolve("blocks"));
    Files.copy(
        SHARED.resolve("blocks/bonded-bush.yaml"), folder.resolve("blocks/bonded-bush.yaml"));
    Path file = copy("demo-lateral-link.json");
    try (ServedDesk desk = ServedDesk.of(file)) {
      hand.open(desk);
      hand.to("[data-item='/phases/1']");
      browser.keys(ENTER);
      browser.chord(SHIFT, F6);
      hand.press("Add the block");
      hand.found("PRO-060", true);
      String with = browser.eval("document.activeElement.closest('[data-at]').dataset.at").asText();
      String at = with.substring(0, with.lastIndexOf('/')) + "/with";
      assertEquals("", hand.value(at + "/thread"));
      hand.fill(at + "/thread", "M12x1.5");
      hand.fill(at + "/drive", "18");
      browser.until("!document.getElementById('findings').textContent.includes('\"thread\"')");
      leave();
    }
  }

  @Test
  @DisplayName("a rehearsal answers typed phrases, and goes with the procedure as it stood")
  void practice() throws Exception {
    try (ServedDesk desk = ServedDesk.of(copy("demo-lateral-link.json"))) {
      hand.open(desk);
      browser.chord(SHIFT, F6);
      hand.press("Begin a rehearsal");
      browser.until("document.getElementById('talk').textContent.includes('Never work under')");
      hand.to("#phrase");
      browser.type("cautions understood");
      browser.keys(ENTER);
      browser.until("document.getElementById('talk').textContent.includes('wheel centre to arch')");
      hand.accessible("a rehearsal");
      leave();
    }
    assertEquals(1, folder.toFile().list().length, "nothing is kept");
  }
}
