package org.undercall.adapter.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamReader;

/**
 * The comments of one sheet of an XLSX. A thread is kept in a part of its own, every answer under
 * the same address; beside it stands a note for programs that know no threads, which is left out.
 */
final class XlsxComments {
  private static final Pattern PLACE = Pattern.compile("([A-Z]{1,3})(\\d{1,7})");

  private final ZipParts parts;
  private final Map<String, String> threads = new LinkedHashMap<>();
  private final Map<String, String> notes = new LinkedHashMap<>();

  XlsxComments(ZipParts parts) {
    this.parts = parts;
  }

  void addThreads(String part) throws IOException {
    parts.each(part, new Texts("threadedComment", "text", threads));
  }

  void addNotes(String part) throws IOException {
    parts.each(part, new Texts("comment", "t", notes));
  }

  /** All of them, without who wrote them. */
  List<Grid.Comment> all() {
    notes.keySet().removeAll(threads.keySet());
    return Stream.of(threads, notes)
        .flatMap(texts -> texts.entrySet().stream())
        .flatMap(entry -> comment(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static Stream<Grid.Comment> comment(String ref, String text) {
    Matcher place = PLACE.matcher(ref);
    return place.matches()
        ? Stream.of(
            Grid.Comment.of(
                Integer.parseInt(place.group(2)) - 1, Cell.column(place.group(1)), text))
        : Stream.empty();
  }

  /** Collects texts by the address of their cell. */
  private static final class Texts implements ZipParts.Taken {
    private final String element;
    private final String textElement;
    private final Map<String, String> texts;
    private final List<String> authors = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private Map<String, String> comment = Map.of();
    private boolean open;
    private boolean phonetic;

    Texts(String element, String textElement, Map<String, String> texts) {
      this.element = element;
      this.textElement = textElement;
      this.texts = texts;
    }

    @Override
    public void event(XMLStreamReader xml, int kind) {
      switch (kind) {
        case XMLStreamConstants.START_ELEMENT -> begin(xml);
        case XMLStreamConstants.END_ELEMENT -> end(xml.getLocalName());
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
          if (open && !phonetic) {
            text.append(xml.getText());
          }
        }
        default -> {}
      }
    }

    private void begin(XMLStreamReader xml) {
      String name = xml.getLocalName();
      if (name.equals(element)) {
        comment = ZipParts.attributes(xml);
      }
      phonetic |= name.equals("rPh");
      open |= name.equals(textElement) || name.equals("author");
    }

    private void end(String name) {
      phonetic &= !name.equals("rPh");
      if (name.equals(textElement) || name.equals("author")) {
        open = false;
      }
      if (name.equals("author")) {
        authors.add(text.toString().strip());
        text.setLength(0);
      } else if (name.equals(element)) {
        String said = withoutAuthor(text.toString().strip());
        texts.merge(comment.getOrDefault("ref", ""), said, (a, b) -> a + " | " + b);
        text.setLength(0);
      }
    }

    /** A spreadsheet begins a comment with the name of who writes it. */
    private String withoutAuthor(String said) {
      String id = comment.getOrDefault("authorId", "");
      boolean known = id.matches("\\d{1,4}") && Integer.parseInt(id) < authors.size();
      String author = known ? authors.get(Integer.parseInt(id)) + ":" : ":";
      return author.length() > 1 && said.startsWith(author)
          ? said.substring(author.length()).strip()
          : said;
    }
  }
}
