package org.undercall.adapter.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipException;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.undercall.port.Fault;

/**
 * Reads the sheets of an ODS (OpenDocument 1.2 to 1.4). Its part {@code content.xml} is read here
 * with the reader of the Java library, since the libraries at hand take rows that a filter hides,
 * and errors of a calculation, for what is shown.
 */
final class OdsGrid {
  private static final String CONTENT = "content.xml";
  private static final String KIND = "application/vnd.oasis.opendocument.spreadsheet";

  private final TableFaults faults;
  private final Set<String> hiddenStyles = new HashSet<>();
  private final List<Sheet> sheets = new ArrayList<>();

  private OdsGrid(TableFaults faults) {
    this.faults = faults;
  }

  /** All sheets, in their order. */
  static List<Sheet> read(byte[] bytes, TableFaults faults) throws Fault {
    OdsGrid grid = new OdsGrid(faults);
    try {
      ZipParts parts = ZipParts.of(bytes, faults);
      faults.throwIfAny();
      grid.requireOpen(parts);
      faults.throwIfAny();
      grid.read(parts);
    } catch (IOException | XMLStreamException | RuntimeException e) {
      faults.file(TableCode.NOT_A_WORKBOOK, Fault.kind(e), "a workbook in ODS");
    }
    faults.throwIfAny();
    return grid.sheets;
  }

  private void requireOpen(ZipParts parts) throws IOException {
    if (!parts.text("mimetype").orElse(KIND).strip().startsWith(KIND)) {
      String found = "a document of another kind";
      faults.file(TableCode.NOT_A_WORKBOOK, found, "a workbook in ODS");
      return;
    }
    boolean[] encrypted = {parts.names().contains("encrypted-package")};
    if (parts.names().contains("META-INF/manifest.xml")) {
      parts.each("META-INF/manifest.xml", "encryption-data", any -> encrypted[0] = true);
    }
    if (encrypted[0]) {
      faults.file(TableCode.NOT_A_WORKBOOK, "a workbook with a password", "one without a password");
    } else if (!parts.names().contains(CONTENT)) {
      throw new ZipException("no " + CONTENT);
    }
  }

  private void read(ZipParts parts) throws IOException, XMLStreamException {
    XMLStreamReader xml = parts.xml(CONTENT);
    String style = "";
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        Map<String, String> attributes = ZipParts.attributes(xml);
        switch (xml.getLocalName()) {
          case "style" -> style = attributes.getOrDefault("name", "");
          case "table-properties" -> {
            if (attributes.getOrDefault("display", "true").equals("false")) {
              hiddenStyles.add(style);
            }
          }
          case "tracked-changes", "dde-links" -> OdsSheet.skip(xml);
          case "table" -> add(xml, attributes);
          default -> {}
        }
      }
    }
    if (sheets.isEmpty()) {
      throw new ZipException("no sheet");
    }
  }

  private void add(XMLStreamReader xml, Map<String, String> attributes) throws XMLStreamException {
    String name = attributes.getOrDefault("name", "");
    boolean hidden = hiddenStyles.contains(attributes.getOrDefault("style-name", ""));
    new OdsSheet(xml, name, faults.ofSheet()).read(hidden).ifPresent(sheets::add);
  }
}
