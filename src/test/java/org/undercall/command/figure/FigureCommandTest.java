package org.undercall.command.figure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.command.App;
import org.w3c.dom.Document;

@DisplayName("The figure command")
class FigureCommandTest {
  private static final String ANGLE =
      "angle --thread M12x1.5 --class 8.8 --torque 45Nm --angle 60 --lubrication as_delivered";
  private static final String JOINT = " --clamped 64 --shank 40 --tube 28 13";
  private static final String TWIST = "twist --arm 350 --ride -20 --droop -120 --bump 60 --at -95";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String line) {
    return App.commandLine()
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .execute(("figure " + line).split(" ", -1));
  }

  private JsonNode result(String name) throws Exception {
    for (JsonNode item : new ObjectMapper().readTree(out.toString()).get("results")) {
      if (item.get("name").asText().equals(name)) {
        return item;
      }
    }
    throw new AssertionError("no result " + name + " in " + out);
  }

  @Nested
  @DisplayName("computes")
  class Computes {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
      "convert 62lbf.ft --to Nm,torque,84.0607,84.0607",
      "convert 110Nm --to lbf.in,torque,973.582,973.582",
      "adaptor --torque 110Nm --wrench 450 --extension 60,setting,97.0588,97.0588",
      "adaptor --torque 110Nm --wrench 450 --extension 60 --at 90,setting,110,110",
      "tool --torque 110Nm --most 200Nm,true torque,105.769,114.583",
      "tool --torque 8Nm --most 10Nm,true torque,7.5472,8.5106",
    })
    @DisplayName("as worked out by hand")
    void byHand(String line, String name, double low, double high) throws Exception {
      assertEquals(0, run(line + " --json"), err::toString);
      JsonNode item = result(name);
      assertEquals(low, item.get("low").asDouble(), 1e-3 * low);
      assertEquals(high, item.get("high").asDouble(), 1e-3 * high);
    }

    @Test
    @DisplayName("the preload between the ends of friction")
    void preload() throws Exception {
      String line = "preload --thread M12 --class 8.8 --torque 84Nm --friction 0.12 0.12 --json";
      assertEquals(0, run(line), err::toString);
      // VDI 2230-1:2015, table A1 (from memory): M12, 8.8, 0.12: 43.0 kN; 84 N·m from a published
      // page
      JsonNode item = result("preload");
      assertEquals(43.0, item.get("low").asDouble(), 0.01 * 43.0);
    }

    @Test
    @DisplayName("the twist and says whether the gate lets it pass")
    void twist() throws Exception {
      assertEquals(0, run(TWIST + " --json"), err::toString);
      double by = Math.toDegrees(Math.asin(95 / 350.0) - Math.asin(20 / 350.0));
      assertEquals(by, result("preset twist at ride height").get("low").asDouble(), 1e-9);
      assertEquals("no", result("within the gate").get("text").asText());
    }

    @Test
    @DisplayName("no preload for a joint whose sizes it is not told")
    void unknownJoint() {
      assertEquals(0, run(ANGLE));
      assertTrue(out.toString().contains("the preload cannot be told without"));
    }

    @Test
    @DisplayName("a bolt threaded up to its head")
    void fullyThreaded() throws Exception {
      assertEquals(0, run(ANGLE + JOINT + " --json"), err::toString);
      double shanked = result("angle at which yield begins").get("low").asDouble();
      out.getBuffer().setLength(0);
      assertEquals(0, run(ANGLE + JOINT.replace("40", "0") + " --json"), err::toString);
      double threaded = result("angle at which yield begins").get("low").asDouble();
      assertTrue(threaded > shanked, shanked + " and " + threaded);
    }

    @Test
    @DisplayName("an angle of 700 degrees as turned too far")
    void turnedTooFar() throws Exception {
      assertEquals(0, run(ANGLE.replace("--angle 60", "--angle 700") + JOINT + " --json"));
      String text = result("stretch at most").get("text").asText();
      assertTrue(text.contains("turned too far"), text);
    }

    @Test
    @DisplayName("no preload above the one that breaks the bolt")
    void wouldBreak() throws Exception {
      String line =
          "preload --thread M12x1.5 --class 8.8 --torque 500Nm --lubrication oiled --json";
      assertEquals(0, run(line), err::toString);
      double breaking = 800 * 88.125 / 1000;
      assertTrue(result("preload").get("high").asDouble() < breaking);
      assertTrue(result("judgement").get("text").asText().contains("would break"));
    }

    @Test
    @DisplayName("threadlocker as class C of table A5")
    void threadlocker() throws Exception {
      String line = "preload --thread M12 --class 8.8 --torque 45Nm --json";
      assertEquals(0, run(line + " --lubrication threadlocker"), err::toString);
      double stated = result("preload").get("low").asDouble();
      out.getBuffer().setLength(0);
      assertEquals(0, run(line + " --friction 0.14 0.24"), err::toString);
      assertEquals(stated, result("preload").get("low").asDouble());
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "convert 62lbf.ft --to Nm --step 0.5",
          "preload --thread M14x1.5 --class 10.9 --torque 105Nm",
          ANGLE + JOINT,
          "adaptor --torque 110Nm --wrench 450 --extension 60",
          TWIST,
          "tool --torque 110Nm --most 210Nm --plus-minus 5"
        })
    @DisplayName("with formula, inputs, results, source and caution")
    void complete(String line) {
      assertEquals(0, run(line), err::toString);
      for (String part : new String[] {"Formula: ", "Inputs", "Results", "Source: ", "Caution: "}) {
        assertTrue(out.toString().contains(part), part + " in " + out);
      }
    }
  }

  @Nested
  @DisplayName("refuses")
  class Refuses {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
      "preload --thread M13 --class 8.8 --torque 45Nm,FAS-010,1",
      "preload --thread M12 --class 8.9 --torque 45Nm,FAS-012,1",
      "preload --thread M18 --class 9.8 --torque 45Nm,FAS-011,1",
      "preload --thread M12 --class strong --torque 45Nm,FIG-008,1",
      "preload --thread M12 --class 8.8 --torque 45,USE-001,2",
      "preload --thread M12 --class 8.8 --torque 45Nm --friction 0 0.1,FIG-011,1",
      "preload --thread M12 --class 8.8 --torque 45Nm --friction 0.0001 0.1,FIG-011,1",
      "preload --thread M12 --class 8.8 --torque 45Nm --friction 0.1 5,FIG-011,1",
      "preload --thread M12 --class 8.8 --torque 45Nm --friction 0.1 NaN,FIG-011,1",
      "preload --thread M12 --class 8.8 --torque 45Nm --seat 16 12,FIG-009,1",
      ANGLE + " --clamped 64 --shank 40 --tube 28 8,FIG-009,1",
      ANGLE + " --clamped 64 --shank 40 --tube 28 12,FIG-009,1",
      ANGLE + " --clamped 64 --shank 40 --tube 16 13,FIG-010,1",
      ANGLE + " --clamped 64 --shank 40 --plate 16,FIG-010,1",
      ANGLE + " --clamped 64 --shank -1 --plate 30,FIG-004,1",
      ANGLE + " --clamped 64 --shank NaN --plate 30,FIG-004,1",
      "preload --thread M12 --class 8.8 --torque 45Nm --seat 12 13,FAS-004,1",
      ANGLE + " --clamped 60,FIG-003,1",
      ANGLE + " --clamped 60 --shank 70 --plate 30,FIG-004,1",
      ANGLE + " --plot x.svg,FIG-005,1",
      "tool --torque 110Nm --most 210Nm --plus-minus 110,FIG-006,1",
      "twist --arm 350 --ride -20 --droop -120 --bump 60 --at -195,FIG-007,1",
      "twist --arm 100 --ride -20 --droop -120 --bump 60 --at 0,FAS-050,1",
      "twist --arm 350 --ride 0 --droop 60 --bump -60 --at 0,FAS-005,1",
      "adaptor --torque 110Nm --wrench 50 --extension 60 --at 180,FAS-041,1",
      "adaptor --torque 110Nm --wrench NaN --extension 60,FAS-001,1",
      "convert 0Nm --to lbf.ft,USE-001,2",
      "convert 110Nm --to stone,USE-001,2",
      "convert 1Nm --to Nm --step 0,FAS-021,1",
      "nothing,USE-001,2",
    })
    @DisplayName("a bad value with its code")
    void badValue(String line, String code, int status) {
      int seen = run(line);
      assertAll(
          () -> assertTrue(err.toString().startsWith(code + " "), err::toString),
          () -> assertEquals(status, seen),
          () -> assertFalse(err.toString().contains("\tat ")),
          () -> assertEquals("", out.toString()));
    }
  }

  @Nested
  @DisplayName("draws")
  class Draws {

    private String drawn(String line) throws Exception {
      Path file = folder.resolve("plot.svg");
      assertEquals(0, run(line + " --plot " + file + " --note invented"), err::toString);
      Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
      assertEquals("svg", svg.getDocumentElement().getTagName());
      return svg.getDocumentElement().getTextContent();
    }

    @Test
    @DisplayName("preload against angle with the yield point of both frictions")
    void angle() throws Exception {
      String words = drawn(ANGLE + JOINT);
      assertAll(
          () -> assertTrue(words.contains("yield, 23° and 53 kN"), words),
          () -> assertTrue(words.contains("yield, 36° and 43 kN"), words),
          () -> assertTrue(words.contains("invented"), words));
    }

    @Test
    @DisplayName("no yield point where the turn ends before it")
    void belowYield() throws Exception {
      String words = drawn(ANGLE.replace("--angle 60", "--angle 10") + JOINT);
      assertFalse(words.contains("yield,"), words);
    }

    @Test
    @DisplayName("twist against height with the gate")
    void twist() throws Exception {
      String words = drawn(TWIST + " --gate 15");
      assertAll(
          () -> assertTrue(words.contains("gate ±15 mm"), words),
          () -> assertTrue(words.contains("tightened here: 12.5°"), words));
    }

    @Test
    @DisplayName("nothing into a folder that does not exist")
    void noFolder() {
      Path file = folder.resolve("none").resolve("plot.svg");
      assertEquals(1, run(TWIST + " --plot " + file));
      assertTrue(err.toString().startsWith("FIG-002 "));
      assertFalse(Files.exists(file));
    }
  }
}
