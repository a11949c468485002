package org.undercall.adapter.procedure;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
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

  /** The whole procedure, which needs no other file: the bytes that were read if they are whole. */
  public byte[] wholeBytes() {
    return assembled.text().getBytes(StandardCharsets.UTF_8);
  }

  /** A name for the whole procedure: that of the file, with the ending of its language. */
  public String wholeName() {
    String name = String.valueOf(file.getFileName());
    return assembled.made() ? name.replaceFirst("(?i)\\.ya?ml$", ".json") : name;
  }
}
