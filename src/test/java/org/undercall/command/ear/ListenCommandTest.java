package org.undercall.command.ear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.command.App;
import picocli.CommandLine;

class ListenCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return line.execute(args);
  }

  private static String sound(String name) {
    return Path.of("src", "test", "resources", "sound", name).toString();
  }

  @Nested
  class WhatIsHeard {
    @Test
    void aValueComesAsOneJsonObject() throws Exception {
      assertEquals(
          0, run("listen", "--json", "--sound", sound("one-seven-five.wav")), err::toString);
      assertEquals(1, out.toString().lines().count());
      JsonNode heard = new JsonMapper().readTree(out.toString());
      assertEquals("one seven five", heard.get("text").asText());
      assertEquals("VALUE_CALLED", heard.get("intent").asText());
      assertEquals(175, heard.get("number").asInt());
      assertEquals(3, heard.get("words").size());
      double last = heard.get("words").get(2).get("end").asDouble();
      assertTrue(last > 0.5 && last < 1.6, "ends at " + last);
      assertEquals("", err.toString());
    }

    @Test
    void plainTextNamesTheMeaning() {
      assertEquals(0, run("listen", "--sound", sound("go-to-step-four.wav")));
      assertTrue(
          out.toString().contains("go to step four -> GO_TO_STEP {\"step\":4}"), out::toString);
    }

    @Test
    void whatMayNotBeSaidIsNotUnderstood() {
      assertEquals(0, run("listen", "--sound", sound("say-again.wav"), "--intents", "hold,resume"));
      assertTrue(!out.toString().contains("REPEAT"), out::toString);
    }

    @Test
    void whatMayBeSaidIsUnderstood() {
      assertEquals(0, run("listen", "--sound", sound("say-again.wav"), "--intents", "hold,repeat"));
      assertTrue(out.toString().contains("say again -> REPEAT"), out::toString);
    }
  }

  @Nested
  class Faults {
    private void oneLine(int status, String start, String... args) {
      err.getBuffer().setLength(0);
      assertEquals(status, run(args));
      assertTrue(err.toString().startsWith(start), err::toString);
      assertEquals(1, err.toString().lines().count(), err::toString);
      assertEquals("", out.toString());
    }

    @Test
    void aFileThatIsNotThere() {
      oneLine(1, "SND-001 none.wav: ", "listen", "--sound", "none.wav");
    }

    @Test
    void aFileThatIsNoSound() {
      oneLine(1, "SND-002 pom.xml: ", "listen", "--sound", "pom.xml");
    }

    @Test
    void aModelThatIsNotThere() {
      oneLine(1, "MOD-001 no", "listen", "--sound", sound("say-again.wav"), "--model", "no");
    }

    @Test
    void wrongUsage() {
      oneLine(2, "USE-001 ", "listen");
      oneLine(2, "USE-001 ", "listen", "--sound", "a.wav", "--microphone", "b");
      oneLine(2, "USE-001 ", "listen", "--sound", "a.wav", "--intents", "sing");
      oneLine(2, "USE-001 ", "listen", "--sound", "a.wav", "--confidence", "NaN");
    }
  }
}
