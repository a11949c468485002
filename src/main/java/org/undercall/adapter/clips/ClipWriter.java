package org.undercall.adapter.clips;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.undercall.core.event.Clip;
import org.undercall.port.Clips;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

/**
 * Writes clips into a folder: under another name first, forced to the disk, then renamed. The first
 * clip that cannot be written is told, once.
 */
public final class ClipWriter implements Clips {
  private static final String PART = ".part";

  /** What clips leave free for the log, in bytes: ten thousand decisions and more. */
  static final long SPARE = 10_000_000;

  private final Path folder;
  private final Settings settings;
  private final Consumer<String> problems;
  private final Space space;
  private boolean told;

  /** How many bytes are free where a folder is. */
  interface Space {
    long free(Path folder) throws IOException;
  }

  /**
   * What to keep.
   *
   * @param format how a clip is stored
   * @param ofAll whether phrases that were refused, asked again or left alone are kept too
   */
  public record Settings(ClipFormat format, boolean ofAll) {
    /** What is kept if nothing else is said: phrases that were taken up, as FLAC. */
    public static final Settings STANDARD = new Settings(ClipFormat.FLAC, false);
  }

  /**
   * A writer.
   *
   * @param folder is created with the first clip
   * @param problems takes a line with a code if clips cannot be written
   */
  public ClipWriter(Path folder, Settings settings, Consumer<String> problems) {
    this(folder, settings, problems, where -> Files.getFileStore(where).getUsableSpace());
  }

  ClipWriter(Path folder, Settings settings, Consumer<String> problems, Space space) {
    this.folder = folder;
    this.settings = settings;
    this.problems = problems;
    this.space = space;
  }

  @Override
  public Optional<Clip> keep(long seq, byte[] sound) {
    ClipFormat format = settings.format();
    String name = String.format(Locale.ROOT, "%06d.%s", seq, format.ending());
    Path part = folder.resolve(name + PART);
    try {
      byte[] bytes = format.encode(sound);
      ClipFolder.requireOwn(folder);
      Files.createDirectories(folder);
      if (space.free(folder) < SPARE + bytes.length) {
        throw new IOException("a disk nearly full; what is left is for the log");
      }
      write(part, bytes);
      Files.move(
          part,
          folder.resolve(name),
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
      return Optional.of(new Clip(name, Sha256.hex(bytes)));
    } catch (IOException e) {
      tell(name, e);
      deleteQuietly(part);
      return Optional.empty();
    }
  }

  @Override
  public void discard(Clip clip) {
    deleteQuietly(folder.resolve(clip.file()));
  }

  @Override
  public boolean ofAll() {
    return settings.ofAll();
  }

  private void tell(String name, IOException cause) {
    if (!told) {
      String place = "clip " + name;
      problems.accept(
          new Fault(ClipCode.CANNOT_KEEP, place, cause, "a folder that takes it").getMessage());
    }
    told = true;
  }

  private static void write(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  private static void deleteQuietly(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // The log does not name it: it is listed and removed as a file of no decision.
    }
  }
}
