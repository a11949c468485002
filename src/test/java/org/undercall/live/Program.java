package org.undercall.live;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** The program in a process of its own, with the default devices, and the lines it prints. */
final class Program implements AutoCloseable {
  static final String REPLY = "  reply  ";

  private final Process process;
  private final BlockingQueue<Line> lines = new LinkedBlockingQueue<>();

  /** A printed line and when it came, in nanoseconds. */
  record Line(String text, long nanos) {
    boolean isReply() {
      return text.startsWith(REPLY);
    }
  }

  private Program(Process process) {
    this.process = process;
  }

  /** Starts to work on a procedure, with more options if there are any. */
  static Program work(
      Path procedure, Path sessions, VirtualSound sound, Path cache, String... options)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp"));
    command.add(
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    command.addAll(List.of("org.undercall.command.App", "work", procedure.toString()));
    command.addAll(List.of("--sessions", sessions.toString()));
    command.addAll(List.of(options));
    return started(command, sound, cache);
  }

  /** Starts to work on a procedure as a user does, with the launcher. */
  static Program launched(Path procedure, Path sessions, VirtualSound sound, Path cache)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.addAll(List.of("./undercall", "work", procedure.toString()));
    command.addAll(List.of("--sessions", sessions.toString()));
    return started(command, sound, cache);
  }

  private static Program started(List<String> command, VirtualSound sound, Path cache)
      throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("ALSA_CONFIG_PATH", sound.alsa());
    builder.environment().put("UNDERCALL_SPEECH_CACHE", cache.toAbsolutePath().toString());
    Program program = new Program(builder.start());
    Thread reader = new Thread(program::read, "program");
    reader.setDaemon(true);
    reader.start();
    return program;
  }

  private void read() {
    try (BufferedReader in = process.inputReader(StandardCharsets.UTF_8)) {
      for (String text = in.readLine(); text != null; text = in.readLine()) {
        System.out.println("live: " + text);
        lines.add(new Line(text, System.nanoTime()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The next line of a kind; those before it are dropped. Empty if none comes in time. */
  Optional<Line> await(Predicate<Line> wanted, long millis) throws InterruptedException {
    long until = System.nanoTime() + millis * 1_000_000;
    for (long left = until - System.nanoTime(); left > 0; left = until - System.nanoTime()) {
      Line line = lines.poll(left, TimeUnit.NANOSECONDS);
      if (line != null && wanted.test(line)) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  /** Its resident memory in megabytes, as Linux tells it. */
  long residentMegabytes() throws IOException {
    Path status = Path.of("/proc", Long.toString(process.pid()), "status");
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("VmRSS:"))
        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
        .findFirst()
        .orElseThrow();
  }

  /** Its exit status; -1 if it does not end in time. */
  int status(long millis) throws InterruptedException {
    return process.waitFor(millis, TimeUnit.MILLISECONDS) ? process.exitValue() : -1;
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
