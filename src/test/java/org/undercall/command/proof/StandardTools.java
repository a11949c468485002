package org.undercall.command.proof;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** Programs that every reader has, and what they print; a test without them is skipped. */
public final class StandardTools {
  private StandardTools() {}

  /** The program {@code sha256sum}. */
  static Path sha256sum() {
    return found("sha256sum");
  }

  /** OpenSSL from version 3 on, which alone signs and checks with Ed25519 in {@code pkeyutl}. */
  static Path openssl() {
    return found("openssl");
  }

  /** Skips the test unless a program is there. */
  public static Path found(String name) {
    Path program = Path.of("/usr/bin", name);
    assumeTrue(Files.isExecutable(program), "no " + name + ": it is not tried");
    return program;
  }

  /**
   * Runs a line of a shell in a folder.
   *
   * @return what it printed, before it {@code 0: } or another exit status
   */
  public static String shell(Path folder, String line) throws Exception {
    Path printed = Files.createTempFile("shell", ".txt");
    Process process =
        new ProcessBuilder("sh", "-c", line)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(printed.toFile())
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), line);
    String text = Files.readString(printed, StandardCharsets.UTF_8);
    Files.delete(printed);
    return process.exitValue() + ": " + text.strip();
  }
}
