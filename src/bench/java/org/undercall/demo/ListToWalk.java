package org.undercall.demo;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.undercall.command.App;

/**
 * From a list to a procedure that is walked by voice: what is asked and typed on the way, how long
 * a person takes for that by stated assumptions, and the walk of a synthetic technician who only
 * talks, as sound.
 *
 * <p>Arguments: the list, a file of what is typed (a line for each question), a new folder for the
 * procedure, the session and {@code dialogue.wav}.
 */
public final class ListToWalk {
  /** Seconds to read a word, to decide, and to press a key: assumptions, from memory. */
  private static final double WORD = 60.0 / 200;

  private static final double DECISION = 5;
  private static final double KEY = 0.28;

  private ListToWalk() {}

  /** Prints the figures. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of(args[2]));
    Path procedure = folder.resolve("procedure.json");
    double typing = imported(Path.of(args[0]), Files.readAllLines(Path.of(args[1])), procedure);
    System.out.printf(Locale.ROOT, "a person's time for it: %.1f minutes%n", typing / 60);
    new SpokenWalk(procedure, folder).run();
  }

  private static double imported(Path list, List<String> typed, Path procedure) throws IOException {
    Path copy = procedure.resolveSibling(list.getFileName());
    Files.copy(list, copy);
    StringWriter printed = new StringWriter();
    Typist typist = new Typist(printed, typed.iterator());
    InputStream before = System.in;
    System.setIn(typist);
    int status =
        App.commandLine()
            .setOut(new PrintWriter(printed))
            .setErr(new PrintWriter(printed))
            .execute("import", "--ask", "--out", procedure.toString(), copy.toString());
    System.setIn(before);
    System.out.println(printed);
    System.out.printf(
        Locale.ROOT,
        "exit %d, %d answers, %d keys, %d words to read%n",
        status,
        typist.answers,
        typist.keys,
        typist.words);
    return typist.words * WORD + typist.answers * DECISION + typist.keys * KEY;
  }

  /** Types the next line whenever one is waited for, and counts what was read until then. */
  private static final class Typist extends InputStream {
    private final StringWriter printed;
    private final Iterator<String> lines;
    private InputStream line = InputStream.nullInputStream();
    private int read;
    private int words;
    private int keys;
    private int answers;

    Typist(StringWriter printed, Iterator<String> lines) {
      this.printed = printed;
      this.lines = lines;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      int count = line.read(into, from, most);
      if (count >= 0 || !lines.hasNext()) {
        return count;
      }
      String text = printed.toString();
      words += text.substring(read).strip().split("\\s+", -1).length;
      String next = lines.next() + "\n";
      printed.append(next);
      read = printed.toString().length();
      keys += next.length();
      answers++;
      line = new ByteArrayInputStream(next.getBytes(UTF_8));
      return line.read(into, from, most);
    }
  }
}
