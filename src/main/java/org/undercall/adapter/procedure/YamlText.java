package org.undercall.adapter.procedure;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import org.undercall.adapter.procedure.Faults.Position;
import org.undercall.text.Shown;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/**
 * What YAML has beyond JSON: its own faults, and aliases and tags, which are refused.
 *
 * <p>Without aliases no text can grow while it is read, and an anchor changes nothing.
 */
public final class YamlText {
  private YamlText() {}

  /** Adds a fault if the value or key at hand is an alias or has a tag. */
  static void requirePlain(JsonParser parser, String pointer, Position place, Faults faults)
      throws IOException {
    String found = "";
    if (parser instanceof YAMLParser yaml) {
      boolean key = yaml.currentToken() == JsonToken.FIELD_NAME;
      if (yaml.isCurrentAlias()) {
        found = "an alias";
      } else if (!key && yaml.getTypeId() != null) {
        found = "a tag";
      }
    }
    if (!found.isEmpty()) {
      faults.at(ProcedureCode.YAML_REFERENCE, pointer, place, found, "the value itself");
      faults.ignore(pointer);
    }
  }

  /** Adds the fault that ended the reading. */
  static void fault(JsonProcessingException e, String text, Faults faults) {
    if (e.getCause() instanceof ReaderException reader) {
      String seen = "the character " + Shown.coded(reader.getCodePoint());
      Position place = at(text, reader.getPosition());
      faults.at(ProcedureCode.CONTROL_CHARACTER, "", place, seen, "characters that can be read");
      return;
    }
    JsonLocation location = e.getLocation();
    Position place =
        location == null
            ? Position.START
            : new Position(location.getLineNr(), location.getColumnNr());
    String seen = e.getOriginalMessage();
    boolean atEnd = false;
    if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
      Mark mark = marked.getProblemMark();
      place = new Position(mark.getLine() + 1, mark.getColumn() + 1);
      seen = marked.getProblem();
      String kept = text.stripTrailing();
      atEnd = mark.getIndex() >= kept.codePointCount(0, kept.length());
    }
    if (atEnd) {
      faults.at(ProcedureCode.TRUNCATED, "", place, "the end", "the rest of the YAML");
    } else {
      faults.at(ProcedureCode.NOT_JSON, "", place, Shown.line(seen), "YAML");
    }
  }

  /** The place of a character, counted from 0. */
  private static Position at(String text, int position) {
    String before = text.substring(0, Math.min(position, text.length()));
    int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
    return new Position(line, before.length() - before.lastIndexOf('\n'));
  }
}
