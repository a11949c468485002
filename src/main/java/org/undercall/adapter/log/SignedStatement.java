package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;
import org.undercall.text.Shown;

/**
 * What a signer states about files: who signs, when, with which key, and the sum of each file. As a
 * file it is what {@code sha256sum -c} reads, with the rest in comments; its signature lies beside
 * it ({@link LogSignature}), so that name and time cannot be changed without the key.
 *
 * @param name the signer's name; empty if none was given
 * @param at when, by the clock of the signer's machine
 * @param key SHA-256 of the public key in DER form, in lower-case hex
 * @param sums SHA-256 of each file, by its name, in lower-case hex
 */
public record SignedStatement(
    Optional<String> name, OffsetDateTime at, String key, Map<String, String> sums) {
  private static final Pattern NAME = Pattern.compile("^# name: (.{1,100})$", Pattern.MULTILINE);
  private static final Pattern AT = Pattern.compile("^# at: (\\S{1,40})$", Pattern.MULTILINE);
  private static final Pattern KEY = Pattern.compile("^# key: ([0-9a-f]{64})$", Pattern.MULTILINE);
  private static final Pattern SUM =
      Pattern.compile("^([0-9a-f]{64}) {2}(\\S.{0,200})$", Pattern.MULTILINE);
  private static final int LONGEST = 65_536;
  private static final int LONGEST_NAME = 100;

  public SignedStatement {
    sums = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(sums));
  }

  /**
   * Who signs, and when.
   *
   * @param key the private key
   * @param name as it is to be stated; cut to a line of 100 characters
   * @param at the time to be stated
   */
  public record Signer(PrivateKey key, Optional<String> name, OffsetDateTime at) {
    public Signer {
      name =
          name.map(n -> Shown.plain(n, " ").strip())
              .map(n -> n.substring(0, Math.min(n.length(), LONGEST_NAME)).strip())
              .filter(n -> !n.isEmpty());
      at = at.truncatedTo(ChronoUnit.SECONDS);
    }
  }

  /** The statement about a log: {@code log.jsonl.signed}. */
  public static Path beside(Path log) {
    return log.resolveSibling(log.getFileName() + ".signed");
  }

  /**
   * Writes a statement about files of one folder into it, and its signature; older ones are
   * replaced.
   *
   * @throws Fault if a file cannot be read or written
   */
  public static SignedStatement write(Path file, Signer signer, List<Path> files) throws Fault {
    Map<String, String> sums = new LinkedHashMap<>();
    for (Path one : files) {
      sums.put(String.valueOf(one.getFileName()), Sha256.hex(SessionLogFile.bytes(one)));
    }
    String key = KeyFiles.fingerprint(KeyFiles.publicOf(signer.key()));
    SignedStatement statement = new SignedStatement(signer.name(), signer.at(), key, sums);
    try {
      Files.writeString(
          file,
          statement.text(),
          UTF_8,
          StandardOpenOption.CREATE,
          StandardOpenOption.TRUNCATE_EXISTING,
          StandardOpenOption.WRITE,
          LinkOption.NOFOLLOW_LINKS);
    } catch (IOException e) {
      String name = String.valueOf(file.getFileName());
      throw new Fault(LogCode.CANNOT_WRITE, name, e, "a folder that can be written");
    }
    LogSignature.sign(file, signer.key());
    return statement;
  }

  /** The text of the file. */
  String text() {
    StringBuilder text =
        new StringBuilder("# Who signed these files and when, as the signer states\n");
    name.ifPresent(n -> text.append("# name: ").append(n).append('\n'));
    text.append("# at: ").append(at).append('\n');
    text.append("# key: ").append(key).append('\n');
    sums.forEach((file, sum) -> text.append(sum).append("  ").append(file).append('\n'));
    return text.toString();
  }

  /**
   * Reads a statement; empty if there is none, or none in this form.
   *
   * @throws Fault if it cannot be read
   */
  public static Optional<SignedStatement> read(Path file) throws Fault {
    if (Files.notExists(file)) {
      return Optional.empty();
    }
    try (var in = Files.newInputStream(file)) {
      return parse(new String(in.readNBytes(LONGEST), UTF_8));
    } catch (IOException e) {
      throw SessionLogFile.cannotRead(file, e);
    }
  }

  private static Optional<SignedStatement> parse(String text) {
    Matcher at = AT.matcher(text);
    Matcher key = KEY.matcher(text);
    if (!at.find() || !key.find()) {
      return Optional.empty();
    }
    Map<String, String> sums = new LinkedHashMap<>();
    Matcher sum = SUM.matcher(text);
    while (sum.find()) {
      sums.put(sum.group(2), sum.group(1));
    }
    Matcher name = NAME.matcher(text);
    Optional<String> named = name.find() ? Optional.of(name.group(1)) : Optional.empty();
    try {
      OffsetDateTime when = OffsetDateTime.parse(at.group(1));
      return Optional.of(new SignedStatement(named, when, key.group(1), sums));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** Whether it states the sum of these bytes under this name. */
  public boolean isAbout(String file, byte[] bytes) {
    return Sha256.hex(bytes).equals(sums.get(file));
  }

  /**
   * Whether the signature beside a statement is one of it by the holder of a key.
   *
   * @throws Fault if one of the two files cannot be read
   */
  static boolean fits(Path file, PublicKey key) throws Fault {
    Path signature = LogSignature.beside(file);
    return Files.exists(signature)
        && LogSignature.fits(SessionLogFile.bytes(file), SessionLogFile.bytes(signature), key);
  }
}
