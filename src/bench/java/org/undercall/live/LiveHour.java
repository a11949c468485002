package org.undercall.live;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Long work at real speed at a virtual sound card: a synthetic technician asks and sets timers
 * while people chatter and machines run, then works the procedure to its end. Prints figures and
 * asserts none.
 *
 * <p>Arguments: minutes; then, if there is any, the folder of recordings with {@code chatter} and
 * {@code noise}. It needs the launcher, PulseAudio and Linux (for the memory).
 */
public final class LiveHour {
  private static final List<String> QUESTIONS =
      List.of(
          "what is left", "where am i", "how long have i worked", "say again", "how long is left");
  private static final String TIMER = "start three minutes for the sealant";
  private static final long TIMER_MILLIS = 180_000;
  private static final String OVER = "sealant time is over";
  private static final long PATIENCE_MILLIS = 8_000;
  private static final int BACKGROUNDS = 6;
  private static final int LEAD_MILLIS = 600;
  private static final int MOST_TURNS = 60;

  private final VirtualSound sound;
  private final Technician technician;
  private final SpeakerTap tap;
  private final Program program;
  private final List<Path> background;
  private final List<Long> starts = new ArrayList<>();
  private final List<Long> timers = new ArrayList<>();
  private final long began = System.nanoTime();
  private int asked;
  private int answered;
  private int played;
  private int set;
  private int unplayed;
  private long due;
  private long replied;

  private LiveHour(
      VirtualSound sound,
      Technician technician,
      SpeakerTap tap,
      Program program,
      List<Path> background) {
    this.sound = sound;
    this.technician = technician;
    this.tap = tap;
    this.program = program;
    this.background = background;
  }

  /** Runs it. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("live-hour");
    Path cache = Path.of("target", "speech-cache");
    Path procedure = Path.of("src", "test", "resources", "live", "two-sides.json");
    VirtualSound card = VirtualSound.start(folder.resolve("sound")).orElseThrow();
    try (VirtualSound sound = card;
        Technician technician = new Technician(cache, folder);
        SpeakerTap tap = SpeakerTap.on(sound.recording());
        Program program = Program.launched(procedure, folder.resolve("sessions"), sound, cache)) {
      LiveHour hour =
          new LiveHour(
              sound,
              technician,
              tap,
              program,
              args.length > 1 ? recordings(Path.of(args[1])) : List.of());
      hour.work(Long.parseLong(args[0]) * 60_000);
      hour.print(program.status(PATIENCE_MILLIS));
    }
  }

  private static List<Path> recordings(Path folder) throws IOException {
    List<Path> all = new ArrayList<>();
    for (String kind : List.of("chatter", "noise")) {
      try (Stream<Path> files = Files.list(folder.resolve(kind))) {
        files.filter(file -> file.toString().endsWith(".wav")).sorted().forEach(all::add);
      }
    }
    Collections.shuffle(all, new java.util.Random(7));
    return all;
  }

  private void work(long millis) throws IOException, InterruptedException {
    begin();
    long nextMemory = 0;
    while (elapsed() < millis) {
      if (elapsed() >= nextMemory) {
        say("%2d min: %d MB resident%n", nextMemory / 60_000, program.residentMegabytes());
        nextMemory += 300_000;
      }
      if (due == 0) {
        if (ask(TIMER)) {
          set++;
          due = replied + TIMER_MILLIS * 1_000_000;
        }
      }
      for (int i = 0; i < BACKGROUNDS && !background.isEmpty(); i++) {
        play(background.get(played++ % background.size()));
      }
      ask(QUESTIONS.get(asked % QUESTIONS.size()));
      rest(20_000);
    }
    rest(due == 0 ? 0 : TIMER_MILLIS);
    complete();
  }

  private void play(Path recording) throws InterruptedException {
    try {
      sound.call(recording);
    } catch (IOException e) {
      unplayed++;
    }
  }

  /** Waits, and notes when a timer is said to be over. */
  private void rest(long millis) throws InterruptedException {
    long until = System.nanoTime() + millis * 1_000_000;
    while (System.nanoTime() < until && !(millis == TIMER_MILLIS && due == 0)) {
      await(500);
    }
  }

  private Optional<Program.Line> await(long millis) throws InterruptedException {
    Optional<Program.Line> line = program.await(Program.Line::isReply, millis);
    if (line.isPresent() && line.get().text().contains(OVER)) {
      timers.add((line.get().nanos() - due) / 1_000_000);
      due = 0;
    }
    return line;
  }

  private boolean ask(String words) throws IOException, InterruptedException {
    while (await(1).isPresent()) {
      // What was said before is no answer.
    }
    tap.awaitQuiet(900);
    asked++;
    sound.call(technician.said(words, LEAD_MILLIS));
    Optional<Program.Line> line = await(PATIENCE_MILLIS);
    line.ifPresent(l -> replied = l.nanos());
    line.ifPresent(this::timed);
    boolean counts = line.isPresent() && !line.get().text().matches(".*Say( again|:).*");
    answered += counts ? 1 : 0;
    return counts;
  }

  private void timed(Program.Line line) {
    try {
      tap.from(line.nanos());
      long start = tap.awaitLoud(5_000);
      if (start > 0) {
        starts.add((start - line.nanos()) / 1_000_000);
      }
      tap.awaitQuiet(900);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Says everything once, so that the sentences of both voices are made; nothing is counted. */
  private void begin() throws IOException, InterruptedException {
    await(20_000).ifPresent(this::timed);
    for (int i = 0; i < MOST_TURNS && !ask("cautions understood"); i++) {
      rest(1_000);
    }
    for (String question : QUESTIONS) {
      ask(question);
    }
    starts.clear();
    asked = 0;
    answered = 0;
  }

  private void complete() throws IOException, InterruptedException {
    String reply = "";
    sound.call(technician.said("say again", LEAD_MILLIS));
    for (int turn = 0; turn < MOST_TURNS && !reply.contains("Log closed."); turn++) {
      Optional<Program.Line> line = await(PATIENCE_MILLIS);
      if (line.isPresent()) {
        reply = line.get().text().substring(Program.REPLY.length());
        timed(line.get());
      }
      if (!reply.contains("Log closed.")) {
        sound.call(technician.said(technician.answer(reply), LEAD_MILLIS));
      }
    }
  }

  private long elapsed() {
    return (System.nanoTime() - began) / 1_000_000;
  }

  private void print(int status) {
    Collections.sort(starts);
    say("%d minutes, exit status %d%n", elapsed() / 60_000, status);
    say("%d recordings of chatter and noise played, %d not%n", played - unplayed, unplayed);
    say("%d phrases called, %d answered at the first try%n", asked, answered);
    say("%d timers set, said over after their time by %s ms%n", set, timers);
    say(
        "sound %d ms after a reply was printed in the middle, 95 in 100 below %d ms, %d at most%n",
        starts.get(starts.size() / 2),
        starts.get(starts.size() * 95 / 100),
        starts.get(starts.size() - 1));
  }

  private static void say(String format, Object... args) {
    System.out.printf(Locale.ROOT, "hour: " + format, args);
  }
}
