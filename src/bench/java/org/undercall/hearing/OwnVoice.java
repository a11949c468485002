package org.undercall.hearing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.undercall.adapter.speaker.MarySynthesiser;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.adapter.speaker.SpokenText;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import org.undercall.session.Work;
import org.undercall.sound.Frames;

/** Everything the program says in the demonstration, as sound. */
final class OwnVoice {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final Path SCRIPT = Path.of("shared", "demo", "spoken-run.json");
  private static final Path CACHE = Path.of("target", "hearing-voices", "mary");
  private static final long CACHE_BYTES = 200L << 20;

  private OwnVoice() {}

  /** Types the script's lines. */
  private record Typing(Iterator<String> lines) implements Ear {
    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
      if (!lines.hasNext()) {
        throw new EndOfInput();
      }
      return Optional.of(Heard.typed(lines.next()));
    }

    @Override
    public void close() {}
  }

  /** Keeps the sentences. */
  private record Keeping(Set<String> sentences) implements Voice {
    @Override
    public void say(String words) {
      sentences.addAll(SpokenText.sentences(words));
    }

    @Override
    public void close() {}
  }

  /** Every different sentence, spoken by the program's voice. */
  static List<Sound> sentences() {
    return List.copyOf(spoken().values());
  }

  /** The words of every different sentence, and their sound. */
  static Map<String, Sound> spoken() {
    Map<String, Sound> sounds = new LinkedHashMap<>();
    try (SpokenCache voice =
        new SpokenCache(MarySynthesiser.plain(Frames.RATE), CACHE, CACHE_BYTES)) {
      for (String sentence : said()) {
        sounds.put(sentence, new Sound(voice.speak(sentence).samples()));
      }
    }
    return sounds;
  }

  private static Set<String> said() {
    Set<String> sentences = new TreeSet<>();
    try {
      Path sessions = Files.createTempDirectory("hearing");
      try (Work work = Work.on(PROCEDURE, sessions, Job.NOT_GIVEN, Occasion.WORK, true)) {
        work.run(new Typing(lines().iterator()), new Keeping(sentences), Time.ofMachine());
      }
    } catch (IOException | Fault e) {
      throw new IllegalStateException(e);
    }
    return sentences;
  }

  private static List<String> lines() throws IOException {
    List<String> lines = new ArrayList<>();
    for (JsonNode line : new JsonMapper().readTree(SCRIPT.toFile()).path("lines")) {
      if (line.hasNonNull("words")) {
        lines.add(line.path("words").asText());
      }
    }
    return lines;
  }
}
