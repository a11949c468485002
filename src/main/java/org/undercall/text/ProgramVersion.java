package org.undercall.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The version of the program, such as 0.1.0: the one that the build's description gives. */
public final class ProgramVersion {
  /** Written into logs and told by {@code --version}. */
  public static final String TEXT = read();

  private ProgramVersion() {}

  private static String read() {
    try (InputStream in = ProgramVersion.class.getResourceAsStream("/org/undercall/version.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
