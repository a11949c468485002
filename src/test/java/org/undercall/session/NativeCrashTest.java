package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;
import org.undercall.sound.WavBytes;
import org.undercall.text.ProgramVersion;

/** A native library that fails ends the whole process, with SIGSEGV or with SIGABRT. */
@DisplayName("The program, ended by a crash of native code")
@Timeout(300)
class NativeCrashTest {
  /** Before each reply that is printed. */
  static final String SAID = "said: ";

  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final List<String> SIGNALS = List.of("SEGV", "ABRT", "SEGV", "ABRT");
  private static final List<String> SPOKEN =
      List.of("cautions understood", "three eight two", "that is correct", "say again");
  private static final Set<String> KNOWN =
      Set.of(
          "log.jsonl",
          "log.jsonl.lock",
          "log.jsonl.sha256",
          "log.jsonl.sha256.new",
          "procedure.json");

  @TempDir private Path folder;
  private Path sessions;
  private Path here;
  private Procedure procedure;

  @BeforeEach
  void prepare() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/kill")), "no /bin/kill to send signals with");
    sessions = folder.resolve("sessions");
    here = Files.createDirectory(folder.resolve("here"));
    procedure = ProcedureFile.load(DEMO).procedure();
  }

  /** Starts a program in a folder of its own, with the class path of the test. */
  private Process started(String main, String... args) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx256m", "-XX:TieredStopAtLevel=1", "-XX:-CreateCoredumpOnCrash"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
    command.addAll(Arrays.asList(args));
    return new ProcessBuilder(command).directory(here.toFile()).redirectErrorStream(true).start();
  }

  private static String ended(Process process, BufferedReader lines, String signal)
      throws Exception {
    new ProcessBuilder("/bin/kill", "-" + signal, Long.toString(process.pid())).start().waitFor();
    String rest = lines.lines().collect(Collectors.joining("\n"));
    assertNotEquals(0, process.waitFor());
    return rest;
  }

  @Test
  @DisplayName("while it hears, loses nothing that it said, and goes on where its log ends")
  void hearing() throws Exception {
    double[] quiet = new double[24_000];
    double[] sound =
        SPOKEN.stream()
            .flatMapToDouble(
                words ->
                    Arrays.stream(new double[][] {quiet, Voiced.said(words)})
                        .flatMapToDouble(Arrays::stream))
            .toArray();
    Path wav = Files.write(folder.resolve("spoken.wav"), new WavBytes().sound(sound));
    String model = ModelFolder.standard().toAbsolutePath().toString();
    String file = DEMO.toAbsolutePath().toString();
    List<Recorded> kept = List.of();
    for (int round = 0; round < SIGNALS.size(); round++) {
      Process process =
          started(HeardWork.class.getName(), file, sessions.toString(), wav.toString(), model);
      List<String> said = new ArrayList<>();
      BufferedReader lines = process.inputReader(StandardCharsets.UTF_8);
      int wanted = kept.isEmpty() ? SPOKEN.size() : 2;
      while (said.size() < wanted) {
        String line = lines.readLine();
        assertTrue(line != null, () -> "it ended by itself after " + said);
        if (line.startsWith(SAID)) {
          said.add(line.substring(SAID.length()));
        }
      }
      String rest = ended(process, lines, SIGNALS.get(round));
      rest.lines().filter(l -> l.startsWith(SAID)).map(l -> l.substring(6)).forEach(said::add);
      kept = whole(kept, said);
      reported(SIGNALS.get(round), rest);
    }
    System.out.printf("%d crashes while hearing, %d decisions%n", SIGNALS.size(), kept.size());
  }

  @Test
  @DisplayName("while phrases are typed, loses nothing that it printed, and goes on")
  void typing() throws Exception {
    List<Recorded> kept = List.of();
    TypedTechnician technician = new TypedTechnician();
    for (String signal : SIGNALS) {
      Process process =
          started(
              "org.undercall.command.App",
              "rehearse",
              DEMO.toAbsolutePath().toString(),
              "--sessions",
              sessions.toString());
      BufferedReader lines = process.inputReader(StandardCharsets.UTF_8);
      var in = process.outputWriter(StandardCharsets.UTF_8);
      List<String> said = new ArrayList<>();
      said.add(reply(lines));
      for (int i = 0; i < 3; i++) {
        in.write(technician.says(OpenSession.replay(procedure, log())) + "\n");
        in.flush();
        said.add(reply(lines));
      }
      String rest = ended(process, lines, signal);
      kept = whole(kept, said);
      reported(signal, rest);
    }
    System.out.printf("%d crashes while typing, %d decisions%n", SIGNALS.size(), kept.size());
  }

  /** The next reply that is printed after a prompt. */
  private static String reply(BufferedReader lines) throws IOException {
    while (true) {
      String line = lines.readLine();
      assertTrue(line != null, "it ended by itself");
      String words = line.replaceFirst("^(> )+", "").strip();
      if (!words.isEmpty()
          && !words.startsWith("New rehearsal: ")
          && !words.startsWith("Rehearsal taken up: ")
          && !words.startsWith("A rehearsal is no record ")
          && !words.startsWith("so far ")) {
        return words;
      }
    }
  }

  private List<Recorded> log() throws Fault {
    return SessionLogFile.read(SessionFolder.find(sessions, SessionFolder.LAST).log()).decisions();
  }

  /** All that was said stands in the log, and what stood there before still does; gives the log. */
  private List<Recorded> whole(List<Recorded> kept, List<String> said) throws Fault {
    List<Recorded> now = log();
    assertEquals(kept, now.subList(0, kept.size()), "decisions were lost");
    List<String> logged =
        now.subList(kept.size(), now.size()).stream()
            .map(Recorded::said)
            .filter(words -> !words.isEmpty())
            .toList();
    assertEquals(said, logged.subList(0, Math.min(said.size(), logged.size())));
    if (!kept.isEmpty()) {
      Session session = OpenSession.replay(procedure, kept);
      Decision expected = Decider.takeUp(session, ProgramVersion.TEXT, Duration.ofSeconds(1));
      assertEquals(expected.events(), now.get(kept.size()).events());
    }
    return now;
  }

  /** The report of the crash is not among the session's files, and the user is told its name. */
  private void reported(String signal, String printed) throws IOException {
    try (Stream<Path> files = Files.walk(sessions)) {
      List<String> strange =
          files
              .filter(Files::isRegularFile)
              .map(f -> f.getFileName().toString())
              .filter(name -> !KNOWN.contains(name))
              .toList();
      assertEquals(List.of(), strange);
    }
    if (signal.equals("SEGV")) {
      try (Stream<Path> files = Files.list(here)) {
        List<Path> reports = files.toList();
        assertTrue(!reports.isEmpty(), printed);
        assertTrue(
            reports.stream().anyMatch(r -> printed.contains(r.getFileName().toString())), printed);
      }
    }
  }
}
