package org.undercall.adapter.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipException;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** The parts of a workbook, unpacked within limits before anything reads them. */
final class ZipParts {
  /** The most that a workbook may unpack to, in bytes. */
  static final int MOST_UNPACKED = 20 * 1024 * 1024;

  private static final int MOST_PARTS = 1000;
  private static final int OLD_CONTAINER = 0xD0CF11E0;

  private final Map<String, byte[]> parts = new HashMap<>();

  private ZipParts() {}

  /**
   * Unpacks a workbook; a fault if it is too large or kept by a password.
   *
   * @throws IOException if it is no whole file of that kind
   */
  static ZipParts of(byte[] bytes, TableFaults faults) throws IOException {
    ZipParts all = new ZipParts();
    if (begins(bytes) == OLD_CONTAINER) {
      String found = "a workbook with a password, or in a format before XLSX";
      faults.file(TableCode.NOT_A_WORKBOOK, found, "one without a password, in XLSX or ODS");
      return all;
    }
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
        all.parts.put(part.getName(), content);
      }
    }
    return all;
  }

  private static int begins(byte[] bytes) {
    int first = 0;
    for (int i = 0; i < 4 && bytes.length >= 4; i++) {
      first = (first << 8) | (bytes[i] & 0xFF);
    }
    return first;
  }

  /** A part, cut when it has more bytes than there is room for. */
  private static byte[] content(ZipFile zip, ZipArchiveEntry part, int room) throws IOException {
    try (InputStream in = zip.getInputStream(part)) {
      return in.readNBytes(room + 1);
    }
  }

  /** The names of all parts. */
  Set<String> names() {
    return parts.keySet();
  }

  /** A part as text in UTF-8; empty if there is none. */
  Optional<String> text(String part) {
    return Optional.ofNullable(parts.get(part)).map(b -> new String(b, StandardCharsets.UTF_8));
  }

  /** A reader of a part that follows no reference to anything outside and expands nothing. */
  XMLStreamReader xml(String part) throws IOException, XMLStreamException {
    byte[] content = parts.get(part);
    if (content == null) {
      throw new ZipException("no " + part);
    }
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    return factory.createXMLStreamReader(new StringReader(strict(content)));
  }

  /** Text in UTF-8, or UTF-16 with its mark: what both formats are written in. */
  private static String strict(byte[] content) throws CharacterCodingException {
    boolean wide = content.length > 1 && (content[0] & content[1] & 0xFE) == 0xFE;
    Charset charset = wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    String text = charset.newDecoder().decode(ByteBuffer.wrap(content)).toString();
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** Takes one event of a reader. */
  interface Taken {
    void event(XMLStreamReader xml, int kind) throws XMLStreamException, IOException;
  }

  /** Goes through a part. */
  void each(String part, Taken taken) throws IOException {
    try {
      XMLStreamReader xml = xml(part);
      while (xml.hasNext()) {
        taken.event(xml, xml.next());
      }
    } catch (XMLStreamException e) {
      throw new IOException("the part " + part + " is damaged", e);
    }
  }

  /** Takes the attributes of one element. */
  interface Attributes {
    void of(Map<String, String> attributes);
  }

  /** Goes through all elements of a name, with their attributes by their local names. */
  void each(String part, String element, Attributes taken) throws IOException {
    each(
        part,
        (xml, kind) -> {
          if (kind == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals(element)) {
            taken.of(attributes(xml));
          }
        });
  }

  /** The attributes of the element at hand, by their local names. */
  static Map<String, String> attributes(XMLStreamReader xml) {
    Map<String, String> attributes = new HashMap<>();
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      attributes.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
    }
    return attributes;
  }
}
