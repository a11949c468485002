package org.undercall.hearing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.undercall.port.Fault;

/**
 * A program that writes a WAV file, with its files kept.
 *
 * @param command the program and its options, the voice behind the first of them; {@code {file}}
 *     and {@code {words}} are filled in
 * @param cache where the files are kept
 */
record CommandSpeaker(Group group, List<String> command, Path cache) implements Speaker {
  private static final long PATIENCE_SECONDS = 20;

  @Override
  public String name() {
    return command.get(2);
  }

  @Override
  public Speech say(String words) {
    String key = String.join(" ", command) + " " + words;
    String name = UUID.nameUUIDFromBytes(key.getBytes(StandardCharsets.UTF_8)) + ".wav";
    Path file = cache.resolve(name);
    try {
      if (!Files.isRegularFile(file)) {
        Files.createDirectories(cache);
        Path fresh = Files.createTempFile(cache, "new", ".wav");
        make(words, fresh);
        Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
      }
      return Speech.in(Sound.read(file));
    } catch (IOException | Fault e) {
      throw new IllegalStateException(key, e);
    }
  }

  private void make(String words, Path file) throws IOException {
    List<String> filled = new ArrayList<>();
    command.forEach(
        part -> filled.add(part.replace("{file}", file.toString()).replace("{words}", words)));
    Process process =
        new ProcessBuilder(filled)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
        process.destroyForcibly();
        throw new IOException("failed: " + filled);
      }
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
  }
}
