package org.undercall.adapter.table;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.undercall.adapter.log.Coded;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.port.Fault;

/**
 * Any bytes as a table to be imported: as a workbook if they begin like a zip file; after a first
 * byte {@code +} as the sheet in a workbook that is whole, so that what is in it is reached; after
 * {@code ~} as the content of an ODS; otherwise as CSV. A table without a doubt must make a
 * procedure, or one with coded faults.
 */
public final class TableTarget {
  private static final Path FOLDER = folder();
  private static final Path CSV = FOLDER.resolve("table.csv");
  private static final Path XLSX = FOLDER.resolve("table.xlsx");
  private static final Path ODS = FOLDER.resolve("table.ods");
  private static final String SHEET = "xl/worksheets/sheet1.xml";
  private static final Map<String, byte[]> PARTS = parts();

  private TableTarget() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    boolean sheet = data.length > 0 && data[0] == '+';
    boolean zip = data.length > 1 && data[0] == 'P' && data[1] == 'K';
    boolean content = data.length > 0 && data[0] == '~';
    Path file = content ? ODS : sheet || zip ? XLSX : CSV;
    byte[] rest = Arrays.copyOfRange(data, Math.min(1, data.length), data.length);
    Files.write(file, content ? Ods.bytes(rest, "") : sheet ? workbook(rest) : data);
    try {
      TorqueTable table = TorqueTable.read(file, Sheets.wishes());
      table.faults().forEach(fault -> Coded.requireCode("TAB", fault.toString()));
      if (table.faults().isEmpty()) {
        ProcedureFile.of(FOLDER.resolve("table.json"), table.json());
      }
    } catch (Fault e) {
      String part = e.code() instanceof TableCode ? "TAB" : "PRO";
      e.findings().forEach(fault -> Coded.requireCode(part, fault.toString()));
    }
  }

  private static byte[] workbook(byte[] sheet) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.setMethod(ZipOutputStream.STORED);
      for (Map.Entry<String, byte[]> part : PARTS.entrySet()) {
        byte[] content = part.getKey().equals(SHEET) ? sheet : part.getValue();
        ZipEntry entry = new ZipEntry(part.getKey());
        CRC32 sum = new CRC32();
        sum.update(content);
        entry.setSize(content.length);
        entry.setCrc(sum.getValue());
        zip.putNextEntry(entry);
        zip.write(content);
      }
    }
    return out.toByteArray();
  }

  private static Map<String, byte[]> parts() {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(Sheets.usual(FOLDER, cells -> {}).toFile(), UTF_8)) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    if (!parts.containsKey(SHEET)) {
      throw new IllegalStateException("no " + SHEET + " in " + parts.keySet());
    }
    return parts;
  }

  private static Path folder() {
    try {
      Path folder = Files.createTempDirectory("undercall-table");
      folder.toFile().deleteOnExit();
      return folder;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
