package org.undercall.hearing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.undercall.port.Fault;

/** The folder of recordings: {@code UNDERCALL_SPEECH}, or {@code ../shared/speech}. */
final class Recordings {
  private final Path folder;
  private final List<Recording> all;

  private Recordings(Path folder, List<Recording> all) {
    this.folder = folder;
    this.all = all;
  }

  /**
   * One line of the folder's list.
   *
   * @param kind the folder within the folder
   * @param spoken the words said; empty where that is not stated
   * @param speaker empty where that is not known
   */
  record Recording(String kind, Path file, String spoken, String speaker) {
    String name() {
      return file.getFileName().toString();
    }

    Sound sound() {
      try {
        return Sound.read(file);
      } catch (Fault e) {
        throw new IllegalStateException(e);
      }
    }
  }

  /** Reads the list; empty if there is no such folder. */
  static Optional<Recordings> find() throws IOException {
    String named = System.getenv("UNDERCALL_SPEECH");
    Path folder = Path.of(named == null || named.isBlank() ? "../shared/speech" : named);
    Path list = folder.resolve("index.tsv");
    if (!Files.isRegularFile(list)) {
      return Optional.empty();
    }
    List<Recording> all = new ArrayList<>();
    List<String> lines = Files.readAllLines(list);
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split("\t", -1);
      Path file = folder.resolve(cells[0]);
      if (Files.isRegularFile(file)) {
        String kind = cells[0].substring(0, cells[0].indexOf('/'));
        all.add(new Recording(kind, file, cells[1], cells[2]));
      }
    }
    return Optional.of(new Recordings(folder, List.copyOf(all)));
  }

  Path folder() {
    return folder;
  }

  /** The recordings of a kind. */
  List<Recording> of(String kind) {
    return all.stream().filter(recording -> recording.kind().equals(kind)).toList();
  }

  /** The recordings of a kind in a mixed order that is always the same, so that a part is fair. */
  List<Recording> mixed(String kind) {
    List<Recording> mixed = new ArrayList<>(of(kind));
    Collections.shuffle(mixed, new Random(5));
    return mixed;
  }
}
