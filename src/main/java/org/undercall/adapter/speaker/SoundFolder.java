package org.undercall.adapter.speaker;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.Pcm;
import org.undercall.sound.WavFile;

/**
 * A folder of WAV files that never grows beyond a size. It helps, but is never needed: what cannot
 * be read or written is treated as not there.
 */
final class SoundFolder {
  private final Path folder;
  private final long maxBytes;
  private final Clock clock = Clock.systemUTC();

  SoundFolder(Path folder, long maxBytes) {
    this.folder = folder;
    this.maxBytes = maxBytes;
  }

  /** The sound under a name; a damaged file is deleted and counts as absent. */
  Optional<Pcm> read(String name) {
    Path file = file(name);
    try {
      Pcm sound = WavFile.read(file);
      touch(file);
      return Optional.of(sound);
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (UncheckedFault e) {
      discard(file);
      return Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Keeps a sound: written aside and moved into place, so that no half file is ever seen. */
  synchronized void write(String name, Pcm sound) {
    Path aside = null;
    try {
      Files.createDirectories(folder);
      aside = Files.createTempFile(folder, "new-", ".tmp");
      WavFile.write(aside, sound);
      Files.move(aside, file(name), StandardCopyOption.ATOMIC_MOVE);
      shrink();
    } catch (IOException e) {
      if (aside != null) {
        discard(aside);
      }
    }
  }

  private Path file(String name) {
    return folder.resolve(name + ".wav");
  }

  private void shrink() throws IOException {
    List<Entry> entries = entries();
    long total = entries.stream().mapToLong(Entry::bytes).sum();
    entries.sort(Comparator.comparing(Entry::used).thenComparing(Entry::file));
    for (Entry entry : entries) {
      if (total <= maxBytes) {
        return;
      }
      discard(entry.file());
      total -= entry.bytes();
    }
  }

  private List<Entry> entries() throws IOException {
    List<Entry> entries = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        if (file.toString().endsWith(".wav")) {
          entries.add(new Entry(file, Files.size(file), Files.getLastModifiedTime(file)));
        }
      }
    }
    return entries;
  }

  private void touch(Path file) {
    try {
      Files.setLastModifiedTime(file, FileTime.from(clock.instant()));
    } catch (IOException e) {
      // A folder that may only be read: the order of use is not kept, nothing else is lost.
      return;
    }
  }

  private static void discard(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // It will be found damaged again, and made again.
      return;
    }
  }

  private record Entry(Path file, long bytes, FileTime used) {}
}
