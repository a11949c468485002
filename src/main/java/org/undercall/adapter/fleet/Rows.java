package org.undercall.adapter.fleet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;

/** The lines of an index that still hold, asked for in their order. */
final class Rows implements AutoCloseable {
  private final BufferedReader lines;

  Rows(Path index) throws IOException {
    this(Files.newBufferedReader(index, UTF_8));
  }

  private Rows(BufferedReader lines) {
    this.lines = lines;
  }

  static Rows none() {
    return new Rows(new BufferedReader(Reader.nullReader()));
  }

  /** The line of a session, which is there after that of the session asked for before. */
  String of(String session) throws IOException {
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      if (IndexRow.Head.of(line).session().equals(session)) {
        return line;
      }
    }
    throw new IOException("an index that another program changed");
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
