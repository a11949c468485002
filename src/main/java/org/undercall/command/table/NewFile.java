package org.undercall.command.table;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.undercall.adapter.table.TableCode;
import org.undercall.port.Fault;

/** Writes a file as a whole, over another one only if that is wanted. */
public final class NewFile {
  private NewFile() {}

  /**
   * Finds out before the work that a file could not be written after it.
   *
   * @throws Fault TAB-029 if the file is there, TAB-030 if it cannot be written
   */
  static void require(Path file, boolean overwrite) throws Fault {
    String name = String.valueOf(file.getFileName());
    Path folder = file.toAbsolutePath().getParent();
    if (Files.isDirectory(file) || folder == null || !Files.isWritable(folder)) {
      String found = Files.isDirectory(file) ? "a folder" : "no folder that can be written";
      throw new Fault(TableCode.CANNOT_WRITE, name, found, "a place that can be written");
    }
    if (Files.exists(file) && !overwrite) {
      throw new Fault(TableCode.EXISTS, name, "a file that is there", "--force or another name");
    }
  }

  /**
   * Writes a text in UTF-8 in the place of a file that is there, which is kept beside it.
   *
   * @return where the old one is kept
   * @throws Fault TAB-030 if one of them cannot be written; the old one is there as it was then
   */
  static Path replace(Path file, String text) throws Fault {
    Path aside = aside(file);
    try {
      Files.copy(file, aside, StandardCopyOption.COPY_ATTRIBUTES);
    } catch (IOException e) {
      String name = String.valueOf(aside.getFileName());
      throw new Fault(TableCode.CANNOT_WRITE, name, Fault.kind(e), "a place that can be written");
    }
    write(file, text, true);
    return aside;
  }

  /** A free name beside a file, for what it was before. */
  static Path aside(Path file) {
    Path aside = Path.of(file + ".old");
    for (int i = 2; Files.exists(aside); i++) {
      aside = Path.of(file + ".old" + i);
    }
    return aside;
  }

  /**
   * Writes a text in UTF-8.
   *
   * @throws Fault TAB-029 if the file is there, TAB-030 if it cannot be written
   */
  public static void write(Path file, String text, boolean overwrite) throws Fault {
    String name = String.valueOf(file.getFileName());
    Path part = file.resolveSibling(name + ".part");
    try {
      if (!overwrite) {
        Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        return;
      }
      Files.writeString(
          part,
          text,
          StandardCharsets.UTF_8,
          StandardOpenOption.CREATE,
          StandardOpenOption.TRUNCATE_EXISTING,
          StandardOpenOption.WRITE,
          LinkOption.NOFOLLOW_LINKS);
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (FileAlreadyExistsException e) {
      throw new Fault(TableCode.EXISTS, name, "a file that is there", "--force or another name");
    } catch (IOException e) {
      drop(part);
      throw new Fault(TableCode.CANNOT_WRITE, name, Fault.kind(e), "a place that can be written");
    }
  }

  /** Leaves nothing half written; that it cannot be taken away is no second fault. */
  private static void drop(Path part) {
    try {
      if (Files.isRegularFile(part, LinkOption.NOFOLLOW_LINKS)) {
        Files.delete(part);
      }
    } catch (IOException e) {
      part.toFile().deleteOnExit();
    }
  }
}
