package org.undercall.hearing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether memory stays as it is over an hour of listening. */
final class MemoryFigures {
  private static final Path LAUNCHER = Path.of("undercall");
  private static final Pattern FLAG = Pattern.compile("-X(?:mx|ms|mn|ss|X:)[^\\s\"$]+(?=\\s)");
  private static final Pattern SETTING = Pattern.compile("export (MALLOC_\\w+)=(\\S+)");
  private static final int MINUTES = 60;
  private static final int BETWEEN = 10;

  private final Bench bench;
  private final List<String> command;
  private final CompletableFuture<List<String>> lines;

  /** Starts the hour; it goes on beside the other parts. */
  MemoryFigures(Bench bench) {
    this.bench = bench;
    this.command = command();
    this.lines = CompletableFuture.supplyAsync(() -> lines(command));
  }

  /** Waits for the hour's end. */
  Table table() {
    Table table =
        new Table(
            "Memory over an hour of sound",
            "A process of its own with the launcher's settings ("
                + String.join(" ", command.subList(1, command.size() - 5))
                + "), the program's ear and voice: chatter, silence, noise and values in turn, a"
                + " new recogniser for each phrase, a new sentence spoken after each; the sound"
                + " comes faster than real time. Memory in RAM of the whole process, in MB.",
            List.of("minutes heard", "resident", "peak so far", "heap in use", "phrases"));
    List<String[]> rows = lines.join().stream().map(line -> line.split(" ", -1)).toList();
    rows.forEach(cells -> table.row(cells[1], cells[2], cells[3], cells[4], cells[5]));
    if (rows.size() > 1) {
      String[] last = rows.get(rows.size() - 1);
      String[] middle = rows.get(rows.size() / 2);
      bench
          .goals()
          .reached(
              Goal.MEMORY,
              String.format(
                  "%s MB after %s minutes of sound, %s MB after %s",
                  last[2], last[1], middle[2], middle[1]));
    }
    return table;
  }

  private List<String> command() {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    Matcher flag = FLAG.matcher(launcher());
    while (flag.find()) {
      command.add(flag.group());
    }
    int minutes = Math.max(1, MINUTES * bench.trials().count(100) / 100);
    command.addAll(
        List.of(
            "-cp",
            System.getProperty("java.class.path"),
            HourOfSound.class.getName(),
            Integer.toString(minutes),
            Integer.toString(BETWEEN)));
    return command;
  }

  private static List<String> lines(List<String> command) {
    try {
      return started(command);
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> started(List<String> command)
      throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command);
    Map<String, String> settings = builder.environment();
    Matcher setting = SETTING.matcher(launcher());
    while (setting.find()) {
      settings.put(setting.group(1), setting.group(2));
    }
    Process process = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
    List<String> lines = new ArrayList<>();
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        if (line.startsWith("at ")) {
          lines.add(line);
        }
      }
    }
    if (process.waitFor() != 0) {
      throw new IOException("the hour of sound ended with status " + process.exitValue());
    }
    return lines;
  }

  /** The launcher's last command, the one that runs the program. */
  private static String launcher() {
    try {
      String text = Files.readString(LAUNCHER);
      return text.substring(text.lastIndexOf("\n# Runs"));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
