package org.undercall.adapter.files;

import java.nio.file.Path;
import org.undercall.core.procedure.Procedure;

/**
 * A procedure with the file it came from.
 *
 * @param procedure what was read
 * @param file where it was read from, as given
 * @param sha256 SHA-256 of the bytes that were read, 64 small hexadecimal digits
 * @param places where its values stand in the file
 */
public record LoadedProcedure(Procedure procedure, Path file, String sha256, FilePlaces places) {}
