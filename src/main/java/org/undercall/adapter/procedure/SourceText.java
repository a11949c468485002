package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.port.Fault;
import org.undercall.text.Shown;
import org.undercall.text.Yaml;

/**
 * The file of a procedure as it is written, includes and references as they stand, for who changes
 * it.
 *
 * @param name of the file; it tells the language
 * @param read its text, with its byte order mark if it has one; empty for a file that is new
 * @param sha256 of its bytes; empty for a file that is new
 * @param tree what it holds
 */
public record SourceText(String name, String read, String sha256, JsonNode tree) {
  private static final String MARK = "\uFEFF";

  /**
   * Reads a file. That it can be read as JSON or YAML is enough: what it holds is not judged.
   *
   * @throws Fault with every fault for which nothing can be written into it
   */
  public static SourceText read(Path file) throws Fault {
    String name = Shown.plain(String.valueOf(file.getFileName()));
    Faults faults = new Faults(name);
    return of(name, FileText.read(file, faults), faults);
  }

  /**
   * The same for a text that is to be written: whether it could be read again.
   *
   * @param file where it is to be written
   */
  public static SourceText of(Path file, String text) throws Fault {
    String name = Shown.plain(String.valueOf(file.getFileName()));
    Faults faults = new Faults(name);
    return of(name, FileText.of(bytes(text), faults), faults);
  }

  private static SourceText of(String name, FileText text, Faults faults) throws Fault {
    JsonNode tree = LocatedJson.read(name, text.text(), faults);
    if (!tree.isObject()) {
      faults.value(ProcedureCode.WRONG_TYPE, "", Shown.value(tree), "an object: a procedure");
    } else if (tree.has("takes")) {
      faults.at(
          ProcedureCode.BLOCK_ALONE,
          faults.keySpot("/takes"),
          "a block",
          "a procedure that includes it");
    }
    faults.throwIfAny();
    return new SourceText(name, text.read(), text.sha256(), tree);
  }

  /** A file that is not there yet. */
  public static SourceText fresh(Path file) {
    String name = Shown.plain(String.valueOf(file.getFileName()));
    return new SourceText(name, "", "", LocatedJson.NODES.objectNode());
  }

  /**
   * The text with another content. What did not change stays as it is written; where that cannot be
   * done, the whole is written anew.
   */
  public String with(JsonNode now) {
    boolean yaml = Yaml.named(name);
    String eol = read.contains("\r\n") ? "\r\n" : "\n";
    FreshText fresh = new FreshText(yaml, eol);
    String anew = fresh.whole(now);
    if (read.isEmpty()) {
      return anew;
    }
    String mark = read.startsWith(MARK) ? MARK : "";
    String text = read.substring(mark.length());
    Optional<Stretch> root =
        yaml ? YamlStretches.of(text, tree) : Optional.of(JsonStretches.of(text, tree));
    return mark
        + root.map(of -> new ChangedText(text, fresh).with(of, now))
            .filter(changed -> reads(changed, now))
            .orElse(anew);
  }

  private boolean reads(String changed, JsonNode wanted) {
    try {
      return ChangedText.same(LocatedJson.read(name, changed, new Faults(name)), wanted);
    } catch (Fault e) {
      return false;
    }
  }

  /** The comments of this text that another one lacks; JSON has none. */
  public List<String> lostIn(String changed) {
    if (!Yaml.named(name) || read.isEmpty()) {
      return List.of();
    }
    List<String> lost = new ArrayList<>(YamlStretches.comments(read));
    YamlStretches.comments(changed).forEach(lost::remove);
    return lost;
  }

  /** Whether this holds the same as another tree, however it is written. */
  public boolean holds(JsonNode other) {
    return ChangedText.same(tree, other);
  }

  /** The bytes of a text, as they are written. */
  public static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
