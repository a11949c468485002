package org.undercall.command.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.undercall.adapter.desk.DeskCode;
import org.undercall.adapter.procedure.Library;
import org.undercall.adapter.procedure.SourceText;
import org.undercall.command.table.NewFile;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

/**
 * The one file of a desk. It is read anew for each act, so that two pages, or an editor beside the
 * page, cannot overwrite each other: what is saved states what it was made from.
 */
final class DeskFile {
  private static final int MOST_NAMES = 100;

  private final Path file;
  private final Clock clock;

  DeskFile(Path file, Clock clock) {
    this.file = file;
    this.clock = clock;
  }

  /** The file as it is on the disk; an empty one if it is not there. */
  SourceText source() throws Fault {
    return Files.notExists(file) ? SourceText.fresh(file) : SourceText.read(file);
  }

  /** What the page begins with. */
  JsonNode read() throws Fault {
    SourceText source = source();
    ObjectNode json = object();
    json.put("name", source.name()).put("path", file.toAbsolutePath().normalize().toString());
    json.put("base", source.sha256());
    json.set("tree", source.tree());
    ArrayNode blocks = json.putArray("blocks");
    for (Library.Block block : Library.below(folder())) {
      blocks.addObject().put("path", block.path()).set("tree", block.tree());
    }
    return json;
  }

  private Path folder() {
    return file.toAbsolutePath().normalize().getParent();
  }

  Judged judged(JsonNode asked) throws Fault {
    JsonNode tree = tree(asked);
    return Judged.of(file, SourceText.fresh(file).with(tree), tree, LocalDate.now(clock));
  }

  /** The text that would be saved. */
  JsonNode text(JsonNode asked) throws Fault {
    return object().put("text", asNear(tree(asked)));
  }

  private static JsonNode tree(JsonNode asked) throws Fault {
    JsonNode tree = asked.path("tree");
    if (!tree.isObject()) {
      throw new Fault(DeskCode.NOT_READ, "the page", "no procedure", "an object named \"tree\"");
    }
    return tree;
  }

  /**
   * Saves: {@code tree}, {@code base} as it was read, and whether it may be a {@code draft} with
   * faults, and without the {@code comments} that it has.
   *
   * @throws Fault DSK-002, DSK-003 or DSK-004 with nothing written; TAB-030 if the disk refuses
   */
  synchronized JsonNode save(JsonNode asked) throws Fault {
    JsonNode tree = tree(asked);
    requireUnchanged(asked.path("base").asText());
    SourceText source = source();
    String text = source.with(tree);
    requireComments(source, text, asked.path("comments").asBoolean());
    Judged judged = Judged.of(file, text, tree, LocalDate.now(clock));
    boolean draft = judged.procedure().isEmpty();
    if (draft && !asked.path("draft").asBoolean()) {
      int count = judged.json().path("findings").size();
      throw new Fault(
          DeskCode.FAULTY,
          source.name(),
          count + (count == 1 ? " fault" : " faults"),
          "none, or a draft: it can be worked on here, and no work begins with it");
    }
    requireReadable(text, tree);
    NewFile.write(target(), text, !source.sha256().isEmpty());
    return object().put("base", Sha256.hex(SourceText.bytes(text))).put("draft", draft);
  }

  private void requireUnchanged(String base) throws Fault {
    String now = onDisk();
    if (!now.equals(base)) {
      throw new Fault(
          DeskCode.CHANGED,
          String.valueOf(file.getFileName()),
          now.isEmpty() ? "no file any more" : "another text than the page read",
          "the text that the page read; nothing was written");
    }
  }

  /** The checksum of the file as it is now; empty if it is not there. */
  private String onDisk() throws Fault {
    try {
      return Files.notExists(file) ? "" : Sha256.hex(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new Fault(DeskCode.CHANGED, String.valueOf(file.getFileName()), e, "a file to read");
    }
  }

  private static void requireComments(SourceText source, String text, boolean may) throws Fault {
    List<String> lost = source.lostIn(text);
    if (!lost.isEmpty() && !may) {
      throw new Fault(
          DeskCode.COMMENTS,
          source.name(),
          lost.size() + " that would be lost: " + String.join("; ", lost),
          "none, or that they may be lost");
    }
  }

  /** The file itself where the name is a link to it, so that the link stays one. */
  private Path target() {
    try {
      return file.toRealPath();
    } catch (IOException e) {
      return file;
    }
  }

  /** What could not be opened again is not written, not as a draft either. */
  private void requireReadable(String text, JsonNode tree) throws Fault {
    if (!SourceText.of(file, text).holds(tree)) {
      throw new IllegalStateException("another procedure would be written");
    }
  }

  /** Saves what a page has beside the file, under a name that is free. */
  synchronized JsonNode beside(JsonNode asked) throws Fault {
    JsonNode tree = tree(asked);
    String text = asNear(tree);
    requireReadable(text, tree);
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    for (int number = 2; ; number++) {
      Path other = file.resolveSibling(name.substring(0, dot) + "-" + number + name.substring(dot));
      if (Files.notExists(other) || number == MOST_NAMES) {
        NewFile.write(other, text, false);
        return object().put("name", String.valueOf(other.getFileName()));
      }
    }
  }

  /** As near to the file as that goes: it may be of another kind by now. */
  private String asNear(JsonNode tree) {
    try {
      return source().with(tree);
    } catch (Fault e) {
      return SourceText.fresh(file).with(tree);
    }
  }

  private static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }
}
