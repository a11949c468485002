package org.undercall.session;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** The program as a process of its own, with typed phrases. */
final class Rehearsal implements AutoCloseable {
  private final Process process;
  private final BufferedReader out;
  private final Writer in;
  private final StringBuilder printed = new StringBuilder();

  private Rehearsal(Process process) {
    this.process = process;
    this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), charset()));
    this.in = process.outputWriter(charset());
  }

  private static java.nio.charset.Charset charset() {
    return StandardCharsets.UTF_8;
  }

  /** Starts it on a procedure, with the class path of the test. */
  static Rehearsal start(Path procedure, Path sessions) throws IOException {
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx128m",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            "org.undercall.command.App",
            "rehearse",
            procedure.toAbsolutePath().toString(),
            "--sessions",
            sessions.toString());
    return new Rehearsal(new ProcessBuilder(command).redirectErrorStream(true).start());
  }

  /** Waits until it asks for a phrase; false if it ended instead. */
  boolean ready() throws IOException {
    return await("");
  }

  /** Waits until it has printed these words from now on, and then asks for a phrase. */
  boolean await(String words) throws IOException {
    int from = printed.length();
    for (int c = out.read(); c >= 0; c = out.read()) {
      printed.append((char) c);
      String now = printed.substring(from);
      if (now.endsWith("> ") && now.contains(words)) {
        return true;
      }
    }
    return false;
  }

  /** Types a phrase. */
  void type(String phrase) throws IOException {
    in.write(phrase + "\n");
    in.flush();
  }

  /** Kills it after it has printed so many more characters, and keeps what else was printed. */
  void kill(int after) throws IOException, InterruptedException {
    for (int i = 0; i < after; i++) {
      int c = out.read();
      if (c < 0) {
        break;
      }
      printed.append((char) c);
      if (printed.toString().endsWith("> ")) {
        break;
      }
    }
    process.destroyForcibly().waitFor();
    try {
      for (int c = out.read(); c >= 0; c = out.read()) {
        printed.append((char) c);
      }
    } catch (IOException e) {
      // The pipe broke with the process.
    }
    printed.append('\n');
  }

  /** Its exit status. */
  int status() throws InterruptedException {
    return process.waitFor();
  }

  /** Everything it printed. */
  String printed() {
    return printed.toString();
  }

  @Override
  public void close() {
    process.destroyForcibly().onExit().join();
  }
}
