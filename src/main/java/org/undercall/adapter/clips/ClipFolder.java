package org.undercall.adapter.clips;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.undercall.core.event.Clip;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

/**
 * The clips of a session, looked at afterwards.
 *
 * @param path the folder, which may be absent
 */
public record ClipFolder(Path path) {

  /** How a clip that the log names stands on the disk. */
  public enum State {
    /** Its hash is the one in the log. */
    WHOLE,
    /** It was deleted. */
    ABSENT,
    /** Its hash is another one. */
    CHANGED
  }

  /**
   * A clip on the disk.
   *
   * @param state how it stands
   * @param bytes its size; 0 if it is absent
   */
  public record Found(State state, long bytes) {}

  /**
   * Looks at a clip.
   *
   * @throws Fault if it cannot be read
   */
  public Found look(Clip clip) throws Fault {
    try {
      byte[] bytes = Files.readAllBytes(path.resolve(clip.file()));
      boolean whole = Sha256.hex(bytes).equals(clip.sha256());
      return new Found(whole ? State.WHOLE : State.CHANGED, bytes.length);
    } catch (NoSuchFileException e) {
      return new Found(State.ABSENT, 0);
    } catch (IOException e) {
      throw new Fault(ClipCode.CANNOT_READ, "clip " + clip.file(), e, "a readable file");
    }
  }

  /** The fault of a clip that was changed. */
  public static Fault changed(Clip clip) {
    return new Fault(
        ClipCode.CHANGED,
        "clip " + clip.file(),
        "another sound",
        "the one the log names by its hash");
  }

  /**
   * Files that look like clips, or like parts of one, and that the log does not name: left by a
   * crash between clip and log.
   *
   * @param named the files that it names
   */
  public List<String> others(Set<String> named) throws Fault {
    if (!Files.isDirectory(path)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(path)) {
      return files
          .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
          .map(file -> file.getFileName().toString())
          .filter(name -> !named.contains(name))
          .filter(name -> Clip.isFile(name.replaceFirst("\\.part$", "")))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new Fault(ClipCode.CANNOT_READ, "clips", e, "a readable folder");
    }
  }

  /**
   * Refuses a folder of clips that is a link: what is written or deleted there could be anywhere.
   */
  static void requireOwn(Path folder) throws IOException {
    if (Files.isSymbolicLink(folder)) {
      throw new IOException("a link in the place of the folder of clips");
    }
  }

  /**
   * Deletes a file; one that is absent is passed over.
   *
   * @return whether it was there
   */
  public boolean remove(String file) throws Fault {
    try {
      requireOwn(path);
      return Files.deleteIfExists(path.resolve(file));
    } catch (IOException e) {
      throw new Fault(ClipCode.CANNOT_REMOVE, "clip " + file, e, "a file that can be deleted");
    }
  }
}
