package org.undercall.command.figure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.report.PdfA;
import org.undercall.command.App;
import org.w3c.dom.Document;

@DisplayName("The figures of a joint")
class JointFigureTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String BOLT =
      " --thread M12x1.5 --class 10.9 --torque 70Nm --lubrication oiled";
  private static final String SIZES = " --clamped 64 --shank 40 --tube 28 13";
  private static final String LONG = " --clamped 400 --shank 200 --tube 28 13";
  private static final String TURNED = BOLT + " --angle 90" + SIZES;
  private static final String JOINT = "joint" + TURNED;
  private static final String ALL =
      JOINT
          + " --plus-minus 3 --angle-plus-minus 5 --wanted 30 --under S355 --nut 10 --self-locking"
          + " --roughness medium --interfaces 2 --warmer 60 --joints 2000";
  private static final String WHEEL =
      "joint --thread M14x1.5 --class 10.9 --torque 120Nm --coated --seat 21 15 --cone 60"
          + " --clamped 12 --shank 0 --plate 60 --joints 2000";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String line) {
    out.getBuffer().setLength(0);
    return App.commandLine()
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .execute(("figure " + line).split(" ", -1));
  }

  private JsonNode json(String line) throws Exception {
    assertEquals(0, run(line + " --json"), err::toString);
    return JSON.readTree(out.toString());
  }

  /** A result by name: of a figure of one part or of any. */
  private static JsonNode result(JsonNode figure, String name) {
    for (JsonNode item :
        figure.findValues("results").stream().flatMap(JointFigureTest::items).toList()) {
      if (item.get("name").asText().equals(name)) {
        return item;
      }
    }
    throw new AssertionError("no result " + name + " in " + figure);
  }

  private static java.util.stream.Stream<JsonNode> items(JsonNode list) {
    return java.util.stream.StreamSupport.stream(list.spliterator(), false);
  }

  private double high(String line, String name) throws Exception {
    return result(json(line), name).get("high").asDouble();
  }

  private String text(String line, String name) throws Exception {
    return result(json(line), name).get("text").asText();
  }

  private String input(String line, String name) throws Exception {
    for (JsonNode item : json(line).get("inputs")) {
      if (item.get("name").asText().equals(name)) {
        return item.get("text").asText();
      }
    }
    throw new AssertionError(name + " in " + out);
  }

  private Path procedure(Consumer<ObjectNode> change) throws Exception {
    Path arms = Path.of("shared/procedures/front-control-arms.json");
    JsonNode root = JSON.readTree(ProcedureFile.load(arms).assembled().text());
    for (JsonNode phase : root.get("phases")) {
      for (JsonNode step : phase.get("steps")) {
        if (step.get("id").asText().equals("front-bush")) {
          change.accept((ObjectNode) step.get("fastener"));
        }
      }
    }
    Path file = folder.resolve("procedure.json");
    JSON.writeValue(file.toFile(), root);
    return file;
  }

  private static void sized(ObjectNode fastener) {
    fastener
        .putObject("clamped")
        .put("unit", "mm")
        .put("length", 64)
        .put("shank", 40)
        .put("outer", 28)
        .put("inner", 13);
    fastener.putObject("friction").put("least", 0.10).put("most", 0.14);
  }

  @Nested
  @DisplayName("the whole joint")
  class Whole {

    @Test
    @DisplayName("has every part, each with formula, source and assumption")
    void parts() throws Exception {
      JsonNode figure = json(ALL);
      String headings = String.join(", ", figure.get("parts").findValuesAsText("heading"));
      assertEquals(
          "Springs, Preload, How likely the ends are, Angle window, Elongation by stage, Stress of"
              + " the bolt, nominal, Torque to expect after the angle, Pressure under head or nut,"
              + " Nut, Embedding, Temperature",
          headings);
      for (JsonNode part : figure.get("parts")) {
        for (String each : new String[] {"formula", "source", "assumption"}) {
          assertFalse(part.get(each).asText().isBlank(), each + " of " + part);
        }
        assertFalse(part.get("results").isEmpty());
      }
      assertTrue(figure.get("cannotBeSeen").size() >= 5);
      assertTrue(figure.get("caution").asText().contains("maker's repair data rules"));
    }

    @Test
    @DisplayName("gives least, nominal and most, and they widen with every error")
    void spread() throws Exception {
      JsonNode exact = result(json(JOINT + " --wrench 0.1"), "preload after the torque");
      JsonNode loose =
          result(json(JOINT + " --wrench 6 --plus-minus 5"), "preload after the torque");
      assertAll(
          () -> assertTrue(exact.get("low").asDouble() < exact.get("nominal").asDouble()),
          () -> assertTrue(exact.get("nominal").asDouble() < exact.get("high").asDouble()),
          () -> assertTrue(loose.get("low").asDouble() < exact.get("low").asDouble()),
          () -> assertTrue(loose.get("high").asDouble() > exact.get("high").asDouble()),
          () -> assertEquals("kN", loose.get("unit").asText()));
    }

    @Test
    @DisplayName("draws the same joints from the same seed and others from another")
    void seeded() throws Exception {
      String lots = "joint" + BOLT + SIZES + " --joints 2000";
      String first = text(lots + " --seed 7", "95 of 100 joints");
      assertEquals(first, text(lots + " --seed 7", "95 of 100 joints"));
      double one = high(lots + " --seed 7", "95 of 100 joints");
      assertTrue(one != high(lots + " --seed 8", "95 of 100 joints"));
      assertEquals("2000, seed 7", text(lots + " --seed 7", "joints drawn"));
    }

    @Test
    @DisplayName("tells loose joints only against a wanted preload")
    void loose() throws Exception {
      String torque = "joint" + BOLT + SIZES + " --joints 2000";
      String none = text(torque, "share that stays loose");
      assertTrue(none.contains("not known"), none);
      assertTrue(high(torque + " --wanted 45", "share that stays loose") > 80);
      assertEquals(0.0, high(torque + " --wanted 10", "share that stays loose"));
    }

    @Test
    @DisplayName("finds a seat too soft, a nut too weak and a hole too short")
    void tooWeak() throws Exception {
      assertTrue(text(ALL, "verdict").contains("too much"));
      assertTrue(text(JOINT + " --nut 8", "class 8 under a bolt of 10.9").contains("too low"));
      String hole = JOINT + " --tapped aluminium --strength 230 --engagement ";
      assertTrue(text(hole + "10", "what gives way first").contains("hole"));
      assertTrue(text(hole + "40", "what gives way first").contains("as it should"));
    }

    @Test
    @DisplayName("rubs more on a cone, so that less is left for preload")
    void cone() throws Exception {
      double coned = high(WHEEL, "preload after the torque");
      double flat = high(WHEEL.replace(" --cone 60", ""), "preload after the torque");
      double ball = high(WHEEL.replace("--cone 60", "--ball 14"), "preload after the torque");
      assertTrue(coned < ball && ball < flat, coned + ", " + ball + ", " + flat);
    }

    @Test
    @DisplayName("gains preload when parts of aluminium warm, and none of steel")
    void warm() throws Exception {
      assertEquals(0.0, high(JOINT + " --warmer 80", "change of preload"), 1e-9);
      assertTrue(high(JOINT + " --material aluminium --warmer 80", "change of preload") > 3);
      assertTrue(high(JOINT + " --material aluminium --warmer -40", "change of preload") < -1);
    }

    @Test
    @DisplayName("warns of an angle that is too far")
    void tooFar() throws Exception {
      String far = JOINT.replace("--angle 90", "--angle 400");
      assertTrue(text(far, "verdict on the most").contains("turned too far"));
      assertEquals("beyond what is usual", text(far, "the angle of this joint"));
    }

    @Test
    @DisplayName("takes thread and seat friction apart")
    void apart() throws Exception {
      double both = high(JOINT, "preload after the torque");
      double seat = high(JOINT + " --seat-friction 0.2 0.3", "preload after the torque");
      assertTrue(seat < both);
    }
  }

  @Nested
  @DisplayName("a torque that was read")
  class Reading {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"60Nm,too soft", "130Nm,as expected", "250Nm,too hard"})
    @DisplayName("is a hint and no verdict")
    void hint(String read, String hint) throws Exception {
      String text = text("torque-angle" + TURNED + " --reading " + read, "hint, not a verdict");
      assertTrue(text.contains(hint), text);
    }

    @Test
    @DisplayName("is not needed for the band")
    void none() throws Exception {
      JsonNode figure = json("torque-angle" + TURNED);
      JsonNode band = result(figure, "torque to expect after the angle");
      assertTrue(band.get("low").asDouble() > 70);
      assertFalse(figure.toString().contains("hint,"));
    }
  }

  @Nested
  @DisplayName("two variants")
  class Variants {

    @Test
    @DisplayName("of the same torque, class and angle have the ratio 1")
    void same() throws Exception {
      JsonNode ratio =
          result(
              json(
                  "variants" + TURNED + " --other-class 10.9 --other-torque 70Nm --other-angle 90"),
              "second over first, at the same friction");
      assertEquals(1.0, ratio.get("low").asDouble(), 1e-9);
      assertEquals(1.0, ratio.get("high").asDouble(), 1e-9);
    }

    @Test
    @DisplayName("are both taken from a procedure")
    void fromProcedure() throws Exception {
      Path file = procedure(JointFigureTest::sized);
      String line = "variants --procedure " + file + " --step front-bush --class 8.8";
      assertTrue(high(line, "second over first, at the same friction") > 1.5);
      assertEquals(0, run(line));
      assertTrue(out.toString().contains("second variant: 10.9, 70 N·m and then 90.0°"));
    }
  }

  @Nested
  @DisplayName("from a procedure")
  class FromProcedure {

    @Test
    @DisplayName("takes what is not typed, and what is typed goes before it")
    void taken() throws Exception {
      Path file = procedure(JointFigureTest::sized);
      String line = "joint --procedure " + file + " --step front-bush --class 10.9 --joints 500";
      assertEquals(0, run(line), err::toString);
      String text = out.toString();
      assertAll(
          () -> assertTrue(text.contains("thread and class: M12x1.5 10.9"), text),
          () -> assertTrue(text.contains("torque: 70 N·m"), text),
          () -> assertTrue(text.contains("angle: 90.0°"), text),
          () -> assertTrue(text.contains("error of the angle, either way: 5.0°"), text),
          () -> assertTrue(text.contains("friction of thread and seat: 0.10 to 0.14"), text),
          () -> assertTrue(text.contains("tolerance of the torque, either way: 4.0 N·m"), text));
      assertEquals(0, run(line + " --torque 50Nm --friction 0.12 0.13"), err::toString);
      assertTrue(out.toString().contains("  torque: 50 N·m"));
      assertTrue(out.toString().contains("seat: 0.12 to 0.13"));
    }

    @Test
    @DisplayName("says what it assumes where the procedure is silent")
    void assumed() throws Exception {
      Path file = procedure(f -> f.putObject("clamped").put("unit", "mm").put("length", 60));
      assertEquals(0, run("joint --procedure " + file + " --step front-bush --class 10.9"));
      assertTrue(out.toString().contains("shank: half of the length"), out::toString);
    }

    @Test
    @DisplayName("takes the uncertainty of its wrench and whether yield is meant")
    void wrenchAndYield() throws Exception {
      Path file = procedure(JointFigureTest::sized);
      JsonNode root = JSON.readTree(file.toFile());
      ((ObjectNode) root.at("/tools/0")).put("uncertainty", 2.5);
      JSON.writeValue(file.toFile(), root);
      String of = " --procedure " + file + " --step front-bush --class 10.9";
      String joint = "joint --joints 500" + of;
      assertAll(
          () -> assertEquals("2.5 %", input(joint, "deviation of the wrench, either way")),
          () ->
              assertEquals(
                  "1.0 %", input(joint + " --wrench 1", "deviation of the wrench, either way")),
          () ->
              assertEquals(
                  "1.5 %",
                  input(joint + " --uncertainty 1.5", "expanded uncertainty of the wrench")),
          () -> assertEquals("meant to be reached", input(joint, "yield, as the procedure states")),
          () -> assertEquals("yes, they reach yield", text(joint, "as it is meant")),
          () -> assertEquals("no, some stay below yield", text(joint + LONG, "as it is meant")),
          () ->
              assertEquals(
                  "2.5 %", input("torque-angle" + of, "error of the torque read, either way")),
          () ->
              assertEquals(
                  "meant to be reached",
                  input("torque-angle" + of, "yield, as the procedure states")));
      run("torque-angle" + of + " --angle 30");
      assertFalse(out.toString().contains("as the procedure states: meant"), out::toString);
    }

    @Test
    @DisplayName("says so where yield must not be reached and is")
    void notMeant() throws Exception {
      Path file =
          procedure(
              f -> {
                sized(f);
                ((ObjectNode) f.at("/variants/1/stages/1")).put("beyondYield", false);
              });
      String joint = "joint --joints 500 --procedure " + file + " --step front-bush --class 10.9";
      assertEquals("no, some reach yield", text(joint, "as it is meant"));
      assertEquals("must not be reached", input(joint, "yield, as the procedure states"));
    }

    @Test
    @DisplayName("puts what it says of its values on the sheet")
    void values() throws Exception {
      Path file = procedure(JointFigureTest::sized);
      Path sheet = folder.resolve("s.html");
      String line =
          "angle --procedure " + file + " --step front-bush --class 10.9 --sheet " + sheet;
      assertEquals(0, run(line), err::toString);
      assertTrue(Files.readString(sheet).contains("invented"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
      "'--step front-bush',FIG-013",
      "'--step front-bush --class 9.8',FIG-013",
      "'--step none --class 10.9',FIG-012",
      "'--class 10.9',FIG-012",
      "'--step joint-nut',USE-001",
    })
    @DisplayName("refuses a step or marking that it does not have")
    void refused(String rest, String code) throws Exception {
      run("joint --procedure " + procedure(JointFigureTest::sized) + " " + rest);
      assertTrue(err.toString().startsWith(code + " "), err::toString);
    }
  }

  @Nested
  @DisplayName("a bush with its rubber")
  class Bush {
    private static final String TWIST =
        "twist --arm 350 --ride -20 --droop -120 --bump 60 --at -95";

    @Test
    @DisplayName("keeps a moment, less on the other side that was tightened at ride height")
    void moment() throws Exception {
      String line = TWIST + " --bush 12 36 50 --shear 0.8 --other-at -20";
      double moment = high(line, "moment kept at ride height");
      assertTrue(moment > 1);
      assertEquals(moment, high(line, "moment more than on the other side"), 1e-9);
    }

    @Test
    @DisplayName("is gated where the wheel is measured, not where the joint is")
    void ratio() throws Exception {
      String near = TWIST.replace("--at -95", "--at -28");
      assertEquals("yes", text(near, "within the gate"));
      assertEquals("no", text(near + " --ratio 0.5", "within the gate"));
    }
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "joint --class 10.9,USE-001,2",
    "joint --thread M12 --class 10.9 --clamped 60 --shank 20 --plate 40,USE-001,2",
    "torque-angle" + BOLT + SIZES + ",USE-001,2",
    "joint" + BOLT + ",FIG-018,1",
    "torque-angle" + BOLT + " --angle 90,FIG-018,1",
    "variants" + TURNED + ",FIG-016,1",
    "variants" + TURNED + " --other-class 8.8,FIG-016,1",
    "variants" + TURNED + " --other-class 8.9 --other-torque 9Nm,FIG-008,1",
    JOINT + " --cone 60,FIG-014,1",
    JOINT + " --seat 20 14 --cone 60 --ball 12,FIG-014,1",
    JOINT + " --seat 20 14 --cone 0,FAS-001,1",
    JOINT + " --seat 20 14 --ball 9,FAS-004,1",
    JOINT + " --seat-friction 0.1 7,FIG-011,1",
    JOINT + " --nut ten,FIG-008,1",
    JOINT + " --nut 10 --tapped steel,FIG-015,1",
    JOINT + " --self-locking,FIG-015,1",
    JOINT + " --engagement 20,FIG-015,1",
    JOINT + " --tapped steel --engagement 20,FIG-015,1",
    JOINT + " --tapped steel --strength 500,FIG-015,1",
    JOINT + " --tapped steel --engagement 1 --strength 500,FAS-004,1",
    JOINT + " --wanted 500,FIG-017,1",
    JOINT + " --wanted -3,FIG-017,1",
    JOINT + " --wanted NaN,FIG-017,1",
    JOINT + " --plus-minus 70,FIG-006,1",
    JOINT + " --plus-minus NaN,FIG-006,1",
    JOINT + " --angle-plus-minus 90,FAS-001,1",
    JOINT + " --angle-plus-minus -1,FAS-002,1",
    JOINT + " --wrench 0,FAS-001,1",
    JOINT + " --uncertainty 100,FAS-007,1",
    JOINT + " --joints 5,FAS-018,1",
    JOINT + " --roughness fine --interfaces -1,FAS-037,1",
    JOINT + " --warmer NaN,FAS-003,1",
    JOINT + " --under wood,USE-001,2",
    JOINT + " --sheet x.doc,USE-001,2",
    JOINT + " --sheet none/x.html,RPT-001,1",
    JOINT + " --sheet x.html --date tomorrow,USE-001,2",
    "torque-angle" + TURNED + " --softness 100,FAS-019,1",
    "torque-angle" + TURNED + " --reading 5,USE-001,2",
    "twist --arm 350 --ride 0 --droop -90 --bump 60 --at 0 --ratio 0,FAS-001,1",
    "twist --arm 350 --ride 0 --droop -90 --bump 60 --at 0 --bush 12 36 50,FIG-019,1",
    "twist --arm 350 --ride 0 --droop -90 --bump 60 --at 0 --other-at 5,FIG-019,1",
    "twist --arm 350 --ride 0 --droop -90 --bump 60 --at 0 --bush 36 12 50 --shear 1,FAS-004,1",
  })
  @DisplayName("refuse a bad value with its code")
  void badValue(String line, String code, int status) {
    int seen = run(line);
    assertAll(
        () -> assertTrue(err.toString().startsWith(code + " "), err::toString),
        () -> assertEquals(status, seen),
        () -> assertFalse(err.toString().contains("\tat ")),
        () -> assertEquals("", out.toString()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        ALL,
        ALL + " --picture torque",
        ALL + " --picture springs",
        WHEEL,
        "torque-angle" + TURNED + " --reading 130Nm",
        "variants" + TURNED + " --other-class 8.8 --other-torque 68Nm",
        "preload" + BOLT,
        "preload --thread M12 --class 8.8 --torque 45Nm --friction 0.12 0.12",
        "angle" + TURNED,
      })
  @DisplayName("are drawn, with words for those who do not see the picture and no broken number")
  void drawn(String line) throws Exception {
    Path file = folder.resolve("plot.svg");
    assertEquals(0, run(line + " --plot " + file + " --note invented"), err::toString);
    Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    assertFalse(svg.getDocumentElement().getAttribute("aria-label").isBlank());
    String text = Files.readString(file);
    assertFalse(text.contains("NaN") || text.contains("Infinity"), text);
    assertTrue(svg.getDocumentElement().getTextContent().contains("invented"));
  }

  @Test
  @DisplayName("mark from where on the angle may be too far, and the torque that was read")
  void marked() throws Exception {
    Path file = folder.resolve("plot.svg");
    assertEquals(0, run("angle" + TURNED.replace("--angle 90", "--angle 200") + " --plot " + file));
    assertTrue(Files.readString(file).contains("may be too far from"));
    assertEquals(0, run("torque-angle" + TURNED + " --reading 130Nm --plot " + file));
    assertTrue(Files.readString(file).contains("read: 130 N·m"));
  }

  @Nested
  @DisplayName("a sheet to sign")
  class ASheet {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "convert 62lbf.ft --to Nm",
          "preload" + BOLT,
          "angle" + TURNED,
          "angle" + BOLT + " --angle 90",
          "adaptor --torque 110Nm --wrench 450 --extension 60",
          "twist --arm 350 --ride -20 --droop -120 --bump 60 --at -95",
          "tool --torque 110Nm --most 210Nm --uncertainty 2.5",
          "torque-angle" + TURNED,
          "variants" + TURNED + " --other-class 8.8 --other-torque 68Nm",
          ALL,
          WHEEL
        })
    @DisplayName("has every section, is well formed and says that it is no specification")
    void sections(String line) throws Exception {
      Path file = folder.resolve("sheet.html");
      assertEquals(
          0,
          run(line + " --sheet " + file + " --note Invented<b> --date 2026-03-01"),
          err::toString);
      String page = Files.readString(file);
      for (String id : new String[] {"inputs", "results", "cautions", "signature"}) {
        assertTrue(page.contains("id=\"" + id + "\""), id + " in " + page);
      }
      assertAll(
          () -> assertTrue(page.contains("repair data rules"), page),
          () -> assertTrue(page.contains("Invented&lt;b&gt;"), page),
          () -> assertTrue(page.contains("2026-03-01"), page),
          () -> assertTrue(page.contains("Source: "), page),
          () -> assertTrue(page.contains("size: A4;"), page),
          () -> assertTrue(page.contains("lang=\"en\""), page),
          () -> assertFalse(page.contains("<script"), page));
      DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(
              new java.io.ByteArrayInputStream(
                  page.replace("<!DOCTYPE html>", "")
                      .strip()
                      .getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    }

    @Test
    @DisplayName("leaves a blank for the day if none is given")
    void noDay() throws Exception {
      Path file = folder.resolve("sheet.html");
      assertEquals(0, run("angle" + TURNED + " --paper letter --title Mine --sheet " + file));
      String page = Files.readString(file);
      assertTrue(page.contains("Date: ____"));
      assertTrue(page.contains("size: letter;"));
      assertTrue(page.contains("<h1>Mine</h1>"));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          ALL,
          WHEEL,
          "tool --torque 110Nm --most 210Nm",
          "joint --procedure shared/procedures/front-control-arms.json --step front-bush --class 10.9",
          "torque-angle" + TURNED + " --reading 118Nm"
        })
    @DisplayName("is one sheet of paper as PDF/A-2a")
    void pdf(String line) throws Exception {
      Path file = folder.resolve("sheet.pdf");
      assertEquals(0, run(line + " --sheet " + file), err::toString);
      PdfA.requireConforming(Files.readAllBytes(file));
      try (PDDocument document = Loader.loadPDF(file.toFile())) {
        assertTrue(document.getNumberOfPages() <= 2, document.getNumberOfPages() + " pages");
        assertEquals(595, Math.round(document.getPage(0).getMediaBox().getWidth()));
        String text = new PDFTextStripper().getText(document);
        for (String part : new String[] {"Inputs", "Results", "Cautions", "Signature", "Source"}) {
          assertTrue(text.contains(part), part + " in " + text);
        }
      }
    }
  }
}
