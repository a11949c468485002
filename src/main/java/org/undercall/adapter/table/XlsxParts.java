package org.undercall.adapter.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipException;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * The parts of a workbook, unpacked within limits before anything else reads them; and the joined
 * cells of a sheet, which the reader of cells does not tell.
 */
final class XlsxParts {
  /** The most that a workbook may unpack to, in bytes. */
  static final int MOST_UNPACKED = 20 * 1024 * 1024;

  private static final int MOST_PARTS = 1000;
  private static final Pattern AREA =
      Pattern.compile("([A-Z]{1,3})(\\d{1,7}):([A-Z]{1,3})(\\d{1,7})");

  private final Map<String, byte[]> parts = new HashMap<>();

  private XlsxParts() {}

  /** Unpacks a workbook; a fault if it is too large. */
  static XlsxParts of(byte[] bytes, TableFaults faults) throws IOException {
    XlsxParts all = new XlsxParts();
    int room = MOST_UNPACKED;
    int count = 0;
    try (ZipFile zip = ZipFile.builder().setByteArray(bytes).get()) {
      for (ZipArchiveEntry part : Collections.list(zip.getEntries())) {
        byte[] content = content(zip, part, room);
        room -= content.length;
        if (room < 0 || ++count > MOST_PARTS) {
          faults.file(
              TableCode.TOO_LARGE,
              "a workbook that unpacks to more than 20 MB or 1000 parts",
              "at most that");
          return all;
        }
        if (part.getName().startsWith("xl/")) {
          all.parts.put(part.getName(), content);
        }
      }
    }
    if (!all.parts.containsKey("xl/workbook.xml")) {
      throw new ZipException("no workbook in it");
    }
    return all;
  }

  /** A part, cut when it has more bytes than there is room for. */
  private static byte[] content(ZipFile zip, ZipArchiveEntry part, int room) throws IOException {
    try (InputStream in = zip.getInputStream(part)) {
      return in.readNBytes(room + 1);
    }
  }

  /** The joined cells of a sheet. */
  List<Grid.Merge> merges(String sheet) throws IOException {
    Map<String, String> ids = new HashMap<>();
    each("xl/workbook.xml", "sheet", part -> ids.put(part.get("name"), part.get("id")));
    Map<String, String> targets = new HashMap<>();
    each(
        "xl/_rels/workbook.xml.rels",
        "Relationship",
        part -> targets.put(part.get("Id"), part.get("Target")));
    String target = targets.getOrDefault(ids.get(sheet), "");
    String name = target.startsWith("/") ? target.substring(1) : "xl/" + target;
    List<Grid.Merge> merges = new ArrayList<>();
    each(name, "mergeCell", part -> area(part.getOrDefault("ref", ""), merges));
    return merges;
  }

  private static void area(String ref, List<Grid.Merge> merges) {
    Matcher area = AREA.matcher(ref);
    if (area.matches() && merges.size() < Grid.MOST_ROWS) {
      merges.add(
          new Grid.Merge(
              Integer.parseInt(area.group(2)) - 1,
              Cell.column(area.group(1)),
              Integer.parseInt(area.group(4)) - 1,
              Cell.column(area.group(3))));
    }
  }

  /** Takes the attributes of one element, by their local names. */
  private interface Taken {
    void attributes(Map<String, String> attributes);
  }

  private void each(String part, String element, Taken taken) throws IOException {
    byte[] content = parts.get(part);
    if (content == null) {
      throw new ZipException("no " + part);
    }
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(content));
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals(element)) {
          Map<String, String> attributes = new HashMap<>();
          for (int i = 0; i < xml.getAttributeCount(); i++) {
            attributes.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
          }
          taken.attributes(attributes);
        }
      }
    } catch (XMLStreamException e) {
      throw new IOException("the part " + part + " is damaged", e);
    }
  }
}
