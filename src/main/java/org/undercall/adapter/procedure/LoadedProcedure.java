package org.undercall.adapter.procedure;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.undercall.core.procedure.Procedure;

/**
 * A procedure with the file it came from.
 *
 * @param procedure what was read
 * @param file where it was read from, as given
 * @param sha256 SHA-256 of the bytes that a session keeps, 64 small hexadecimal digits: those of
 *     the file, or of the whole procedure if it was put together
 * @param places where its values are written
 * @param assembled how it was put together
 */
public record LoadedProcedure(
    Procedure procedure, Path file, String sha256, FilePlaces places, Assembled assembled) {

  /** The whole procedure, which needs no other file: the bytes of the file if it is whole. */
  public byte[] wholeBytes() throws IOException {
    Optional<String> text = assembled.text();
    return text.isPresent()
        ? text.get().getBytes(StandardCharsets.UTF_8)
        : Files.readAllBytes(file);
  }

  /** A name for the whole procedure: that of the file, with the ending of its language. */
  public String wholeName() {
    String name = String.valueOf(file.getFileName());
    return assembled.text().isPresent() ? name.replaceFirst("(?i)\\.ya?ml$", ".json") : name;
  }
}
