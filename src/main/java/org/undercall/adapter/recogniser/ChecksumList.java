package org.undercall.adapter.recogniser;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

/** File names and their SHA-256, in the format of sha256sum. */
final class ChecksumList {
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) [ *](\\S.*)");

  private final Map<String, String> sums;

  private ChecksumList(Map<String, String> sums) {
    this.sums = sums;
  }

  static ChecksumList read(Path file) throws Fault, IOException {
    List<String> lines;
    try {
      lines = Files.readAllLines(file);
    } catch (CharacterCodingException e) {
      throw new Fault(ModelCode.LIST_DAMAGED, file.toString(), "is no text, expected UTF-8");
    }
    var sums = new TreeMap<String, String>();
    for (int i = 0; i < lines.size(); i++) {
      Matcher line = LINE.matcher(lines.get(i));
      if (!line.matches() || sums.put(line.group(2), line.group(1)) != null) {
        throw new Fault(
            ModelCode.LIST_DAMAGED,
            file + " line " + (i + 1),
            "\"" + lines.get(i) + "\"",
            "64 hex digits, two blanks and a new name");
      }
    }
    if (sums.isEmpty()) {
      throw new Fault(
          ModelCode.LIST_DAMAGED, file.toString(), "is empty, expected one line a file");
    }
    return new ChecksumList(sums);
  }

  Set<String> names() {
    return sums.keySet();
  }

  String of(String name) {
    return sums.get(name);
  }

  static String sha256(Path file) throws IOException {
    MessageDigest digest = Sha256.digest();
    byte[] block = new byte[1 << 16];
    try (InputStream in = Files.newInputStream(file)) {
      for (int n = in.read(block); n >= 0; n = in.read(block)) {
        digest.update(block, 0, n);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
