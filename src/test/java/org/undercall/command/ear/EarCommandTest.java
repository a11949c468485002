package org.undercall.command.ear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.command.App;
import org.undercall.demo.DemoVoices;
import org.undercall.sound.Pcm;
import org.undercall.sound.WavTimeline;
import picocli.CommandLine;

@DisplayName("The command ear")
class EarCommandTest {
  private static final int PAUSE_MILLIS = 1_500;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  private int run(String... args) {
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return line.execute(args);
  }

  /** The phrases spoken by an invented speaker, with pauses between them. */
  private String spoken(List<String> phrases) throws IOException {
    Path file = folder.resolve("spoken.wav");
    try (SpokenCache speaker = DemoVoices.speaker("tenor", folder.resolve("cache"));
        WavTimeline timeline = new WavTimeline(file, DemoVoices.RATE)) {
      long at = PAUSE_MILLIS;
      for (String phrase : phrases) {
        Pcm sound = speaker.speak(phrase);
        timeline.add(at, sound);
        at += sound.bytes().length / 2 * 1000L / DemoVoices.RATE + PAUSE_MILLIS;
      }
    }
    return file.toString();
  }

  @Test
  @DisplayName("hears ten spoken phrases in a file, measures them and keeps the result if asked")
  void heard() throws IOException {
    List<String> phrases = CheckPhrase.ALL.stream().map(CheckPhrase::words).toList();
    Path kept = folder.resolve("kept");
    int status = run("ear", "--json", "--sound", spoken(phrases), "--keep", kept.toString());
    JsonNode result = new JsonMapper().readTree(out.toString());
    assertEquals(0, status, () -> out + " " + err);
    assertTrue(result.get("usable").asBoolean());
    assertEquals(10, result.get("phrases").size());
    for (JsonNode phrase : result.get("phrases")) {
      assertEquals(1, phrase.get("tries").asInt());
    }
    JsonNode first = result.get("phrases").get(0);
    assertTrue(first.get("speech").asDouble() > -40, first::toString);
    assertTrue(first.get("distance").asDouble() > 20, first::toString);
    try (Stream<Path> files = Files.list(kept)) {
      Path file = files.findFirst().orElseThrow();
      assertEquals(result, new JsonMapper().readTree(file.toFile()));
    }
  }

  @Test
  @DisplayName("tells a file with other phrases apart")
  void otherPhrases() throws IOException {
    String file = spoken(List.of("say again", "what is left", "where am i"));
    assertEquals(3, run("ear", "--sound", file));
    assertTrue(out.toString().contains("Heard right: 0 of 10."), out::toString);
    assertTrue(out.toString().contains("not heard"), out::toString);
    assertEquals("", err.toString());
  }

  @Test
  @DisplayName("answers a file that is not there with one line")
  void noFile() {
    assertEquals(1, run("ear", "--sound", "none.wav"));
    assertTrue(err.toString().startsWith("SND-001 none.wav: "), err::toString);
  }
}
