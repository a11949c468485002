package org.undercall.adapter.procedure;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import org.undercall.adapter.procedure.Faults.Position;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

/**
 * The text of a file with the fingerprint of its bytes.
 *
 * @param read the text as it was read, with its byte order mark if it has one
 * @param sha256 of the bytes read, small hexadecimal digits
 */
record FileText(String read, String sha256) {
  /** The largest file read, in bytes. */
  static final int MOST_BYTES = 2 * 1024 * 1024;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** Reads a file of UTF-8 text. */
  static FileText read(Path file, Faults faults) throws Fault {
    byte[] bytes = bytes(file, faults);
    faults.throwIfAny();
    return of(bytes, faults);
  }

  /** The text of the bytes of a file. */
  static FileText of(byte[] bytes, Faults faults) throws Fault {
    if (bytes.length > MOST_BYTES) {
      String size = "a file of more than " + MOST_BYTES + " bytes";
      faults.at(ProcedureCode.FILE_TOO_LARGE, "", Position.NONE, size, "at most 2 MB");
      faults.throwIfAny();
    }
    String text = decode(bytes, faults);
    faults.throwIfAny();
    return new FileText(text, Sha256.hex(bytes));
  }

  /** The text without a byte order mark. */
  String text() {
    return read.startsWith(BYTE_ORDER_MARK) ? read.substring(1) : read;
  }

  private static byte[] bytes(Path file, Faults faults) {
    String seen;
    try {
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        seen = "a folder or device";
      } else {
        try (InputStream in = Files.newInputStream(file)) {
          return in.readNBytes(MOST_BYTES + 1);
        }
      }
    } catch (NoSuchFileException e) {
      seen = "no such file";
    } catch (IOException e) {
      seen = "a file that cannot be read (" + Fault.kind(e) + ")";
    }
    faults.at(
        ProcedureCode.FILE_NOT_READABLE, "", Position.NONE, seen, "a readable procedure file");
    return new byte[0];
  }

  private static String decode(byte[] bytes, Faults faults) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      String seen = String.format(Locale.ROOT, "byte 0x%02X", in.get(in.position()));
      faults.at(ProcedureCode.NOT_UTF_8, "", end(text), seen, "UTF-8 text");
    }
    return text;
  }

  /** The place just after a text. */
  private static Position end(String text) {
    int line = (int) text.chars().filter(c -> c == '\n').count() + 1;
    return new Position(line, text.length() - text.lastIndexOf('\n'));
  }
}
