package org.undercall.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;

/**
 * The whole program at a virtual sound card: a synthetic technician answers while the program still
 * speaks, and the microphone hears the loudspeaker as in a small room, or wears a headset.
 */
@DisplayName("At a virtual sound card, with answers over the prompts")
@Tag("alone")
class LiveOverTest {
  private static final Path PROCEDURE =
      Path.of("src", "test", "resources", "live", "two-sides.json");
  private static final Path CACHE = Path.of("target", "speech-cache");
  private static final String HEARD = "  heard  ";
  private static final long PATIENCE_MILLIS = 20_000;
  private static final int MOST_TURNS = 60;
  private static final int MOST_TRIES = 4;

  @TempDir private Path folder;

  private final List<String> said = new ArrayList<>();
  private final List<String> wrong = new ArrayList<>();
  private int over;
  private int first;
  private int cut;
  private int mute;

  @ParameterizedTest(name = "echo {0}, options {1}")
  @CsvSource({"0.3, --barge-in", "0, --headset"})
  @DisplayName("work is done, and nothing closes that was not said")
  void work(double echo, String option) throws Exception {
    Optional<VirtualSound> started = VirtualSound.start(folder.resolve("sound"));
    Assumptions.assumeTrue(started.isPresent(), "no virtual sound card can be made here");
    try (VirtualSound sound = started.get();
        AutoCloseable heard = echo > 0 ? sound.echoing(echo) : () -> {};
        Technician technician = new Technician(CACHE, folder);
        SpeakerTap tap = SpeakerTap.on(sound.recording());
        Program program =
            Program.work(PROCEDURE, folder.resolve("sessions"), sound, CACHE, option)) {
      assertTrue(heard != null);
      talk(sound, technician, tap, program);
      print(option, echo);
      assertEquals(0, program.status(PATIENCE_MILLIS), "exit status");
    }
    assertEquals(List.of(), wrong, "closing and never said");
    assertTrue(mute < 2, "replies are not spoken");
  }

  private void print(String option, double echo) {
    System.out.printf(
        Locale.ROOT,
        "live: %s, echo %.1f: %d of %d answers over a prompt heard at the first try, voice cut"
            + " short %d times, %d replies not spoken, closing and never said %s%n",
        option,
        echo,
        first,
        over,
        cut,
        mute,
        wrong);
  }

  private void talk(VirtualSound sound, Technician technician, SpeakerTap tap, Program program)
      throws IOException, InterruptedException {
    Optional<Program.Line> line = program.await(Program.Line::isReply, PATIENCE_MILLIS);
    for (int turn = 0; turn < MOST_TURNS && line.isPresent(); turn++) {
      String reply = line.get().text().substring(Program.REPLY.length());
      tap.from(line.get().nanos());
      mute += tap.awaitLoud(5_000) > 0 ? 0 : 1;
      if (reply.startsWith("Work complete.")) {
        return;
      }
      String answer = technician.answer(reply);
      said.add(answer);
      over++;
      sound.call(technician.said(answer, 600));
      long spoken = System.nanoTime();
      line = next(program, 2_500);
      if (line.isPresent()) {
        first++;
        cut += line.get().nanos() - spoken < 2_500_000_000L ? 1 : 0;
        continue;
      }
      for (int again = 0; again < MOST_TRIES && line.isEmpty(); again++) {
        tap.awaitQuiet(900);
        said.add(answer);
        sound.call(technician.said(answer, 600));
        line = next(program, 6_000);
      }
    }
  }

  /** The next reply; what is heard on the way must have been said. */
  private Optional<Program.Line> next(Program program, long millis) throws InterruptedException {
    Optional<Program.Line> line =
        program.await(l -> l.isReply() || l.text().startsWith(HEARD), millis);
    while (line.isPresent() && !line.get().isReply()) {
      String heard = line.get().text().substring(HEARD.length());
      if (!said.remove(heard) && closes(heard)) {
        wrong.add(heard);
      }
      line = program.await(l -> l.isReply() || l.text().startsWith(HEARD), millis);
    }
    return line;
  }

  private static boolean closes(String heard) {
    Set<IntentKind> all = EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));
    return Interpreter.interpret(RecognisedPhrase.typed(heard), all, 0).kind().closes();
  }
}
