package org.undercall.command.front;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Reads one line and not a byte more: what follows is for whoever reads next. */
final class TypedLine {
  private TypedLine() {}

  /** The next line without its end; empty at the end of the input. */
  static Optional<String> read(InputStream in) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    int next = in.read();
    if (next < 0) {
      return Optional.empty();
    }
    while (next >= 0 && next != '\n') {
      bytes.write(next);
      next = in.read();
    }
    return Optional.of(bytes.toString(StandardCharsets.UTF_8).stripTrailing());
  }
}
