package org.undercall.adapter.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Makes workbooks in ODS, element by element as OpenDocument 1.3 has them. */
final class Ods {
  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content"
          + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
          + " xmlns:style=\"urn:oasis:names:tc:opendocument:xmlns:style:1.0\""
          + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
          + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\""
          + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
          + " xmlns:calcext=\"urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0\""
          + "><office:automatic-styles><style:style style:name=\"ta1\" style:family=\"table\">"
          + "<style:table-properties table:display=\"true\"/></style:style>"
          + "<style:style style:name=\"ta2\" style:family=\"table\"><style:table-properties"
          + " table:display=\"false\"/></style:style></office:automatic-styles><office:body>"
          + "<office:spreadsheet>";
  private static final String END = "</office:spreadsheet></office:body></office:document-content>";

  private Ods() {}

  /** A file of sheets. */
  static Path book(Path folder, String... tables) throws IOException {
    return Files.write(folder.resolve("t.ods"), bytes(HEAD + String.join("", tables) + END, ""));
  }

  /** The bytes of a file with this content and these entries of its manifest. */
  static byte[] bytes(String content, String manifest) throws IOException {
    return bytes(content.getBytes(StandardCharsets.UTF_8), manifest);
  }

  /** The bytes of a file with this content, whatever its charset. */
  static byte[] bytes(byte[] content, String manifest) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      part(zip, "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write(content);
      part(
          zip,
          "META-INF/manifest.xml",
          "<manifest:manifest"
              + " xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\">"
              + manifest
              + "</manifest:manifest>");
    }
    return out.toByteArray();
  }

  private static void part(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
  }

  static String table(String name, String... rows) {
    return styled(name, "ta1", rows);
  }

  static String hidden(String name, String... rows) {
    return styled(name, "ta2", rows);
  }

  private static String styled(String name, String style, String... rows) {
    return "<table:table table:name=\""
        + name
        + "\" table:style-name=\""
        + style
        + "\">"
        + String.join("", rows)
        + "</table:table>";
  }

  /** A row of texts, or of elements where one begins with its mark. */
  static String row(List<String> cells) {
    return rowWith("", cells);
  }

  static String rowWith(String attributes, List<String> cells) {
    return "<table:table-row "
        + attributes
        + ">"
        + cells.stream()
            .map(c -> c.startsWith("<") ? c : cell("string", "", c))
            .collect(Collectors.joining())
        + "</table:table-row>";
  }

  /** The usual headings. */
  static String headings() {
    return row(Sheets.HEADINGS);
  }

  /** The usual row with other cells at some columns: column, cell, column, cell. */
  static List<String> usual(String... changed) {
    List<String> cells = new java.util.ArrayList<>(Sheets.ROW);
    for (int i = 0; i < changed.length; i += 2) {
      cells.set(Sheets.HEADINGS.indexOf(changed[i]), changed[i + 1]);
    }
    return cells;
  }

  static String cell(String type, String attributes, String shown) {
    return shown.isEmpty()
        ? "<table:table-cell/>"
        : "<table:table-cell office:value-type=\""
            + type
            + "\" calcext:value-type=\""
            + type
            + "\" "
            + attributes
            + "><text:p>"
            + escaped(shown)
            + "</text:p></table:table-cell>";
  }

  static String number(String value, String shown) {
    return cell("float", "office:value=\"" + value + "\"", shown);
  }

  /** A text with a comment of several paragraphs. */
  static String commented(String shown, String... paragraphs) {
    String texts =
        Arrays.stream(paragraphs)
            .map(text -> "<text:p>" + escaped(text) + "</text:p>")
            .collect(Collectors.joining());
    String comment =
        "<office:annotation><dc:creator>Office</dc:creator>"
            + "<dc:date>2026-01-01T00:00:00</dc:date>"
            + texts
            + "</office:annotation>";
    String begin = "<table:table-cell office:value-type=\"string\">";
    return begin + comment + "<text:p>" + escaped(shown) + "</text:p></table:table-cell>";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
