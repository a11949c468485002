package org.undercall.adapter.log;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.text.Normalizer;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;
import org.undercall.text.Yaml;

/**
 * The folder of one session: {@code log.jsonl} and {@code procedure.json} or {@code
 * procedure.yaml}, the whole procedure, so that the session can be resumed and reviewed when the
 * original changed: a copy of its file byte for byte or, if it has blocks, what was put together.
 *
 * @param path the folder
 */
public record SessionFolder(Path path) {
  /** The word that stands for the session begun last. */
  public static final String LAST = "last";

  private static final String LOG = "log.jsonl";
  private static final String REHEARSALS = "rehearsals";
  private static final String PROCEDURE = "procedure.json";
  private static final String PROCEDURE_YAML = "procedure.yaml";
  private static final String CLIPS = "clips";
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT);
  private static final int LONGEST_NAME = 60;
  private static final int MOST_ALIKE = 99;

  /**
   * Creates the folder of a new session, named from the time and the procedure file's name; the
   * name keeps only the letters a to z, digits and hyphens.
   *
   * @param sessions the folder of all sessions, created if absent
   * @param procedureName name of the procedure file, with or without its ending; a YAML ending is
   *     kept by the copy
   * @param procedure the bytes of the whole procedure
   * @param now the time in the name
   * @throws Fault if it cannot be created
   */
  public static SessionFolder create(
      Path sessions, String procedureName, byte[] procedure, OffsetDateTime now) throws Fault {
    String name = STAMP.format(now) + "-" + plain(procedureName);
    try {
      Files.createDirectories(sessions);
      SessionFolder folder = new SessionFolder(fresh(sessions, name));
      try (FileChannel copy =
          FileChannel.open(
              folder.path.resolve(Yaml.named(procedureName) ? PROCEDURE_YAML : PROCEDURE),
              StandardOpenOption.CREATE_NEW,
              StandardOpenOption.WRITE)) {
        LogChannel channel = LogChannel.of(copy);
        channel.write(procedure, 0);
        channel.force();
      }
      forceNames(folder.path);
      forceNames(sessions);
      return folder;
    } catch (IOException e) {
      throw new Fault(LogCode.CANNOT_CREATE, "session " + name, e, "a folder that can be written");
    }
  }

  /** The folder, in that of all sessions, of those that are no record of work. */
  public static Path rehearsals(Path sessions) {
    return sessions.resolve(REHEARSALS);
  }

  /**
   * Finds a session, a rehearsal too.
   *
   * @param sessions the folder of all sessions
   * @param session a session folder, its name in {@code sessions} or among its rehearsals, or
   *     {@code last}
   * @throws Fault if there is none
   */
  public static SessionFolder find(Path sessions, String session) throws Fault {
    if (session.equals(LAST)) {
      return last(sessions, rehearsals(sessions));
    }
    try {
      Path[] places = {
        sessions.resolve(session), rehearsals(sessions).resolve(session), Path.of(session)
      };
      for (Path path : places) {
        if (Files.isRegularFile(path.resolve(LOG))) {
          return new SessionFolder(path);
        }
      }
    } catch (InvalidPathException e) {
      // Not a path at all: nothing can be there.
    }
    throw noSuch("session " + session, "no folder with a " + LOG);
  }

  /**
   * All sessions but rehearsals, the one begun last first; none if the folder is absent.
   *
   * @throws Fault LOG-002 if the folder cannot be read
   */
  public static List<SessionFolder> all(Path sessions) throws Fault {
    if (!Files.isDirectory(sessions)) {
      return List.of();
    }
    try (Stream<Path> folders = Files.list(sessions)) {
      return folders
          .filter(p -> Files.isRegularFile(p.resolve(LOG)))
          .sorted(Comparator.comparing((Path p) -> p.getFileName().toString()).reversed())
          .map(SessionFolder::new)
          .toList();
    } catch (IOException e) {
      throw SessionLogFile.cannotRead(sessions, e);
    }
  }

  /**
   * The session begun last in these very folders.
   *
   * @throws Fault LOG-010 if there is none
   */
  public static SessionFolder last(Path... folders) throws Fault {
    List<SessionFolder> all = new ArrayList<>();
    for (Path folder : folders) {
      all.addAll(all(folder));
    }
    boolean there = Files.isDirectory(folders[0]);
    return all.stream()
        .max(Comparator.comparing(SessionFolder::name))
        .orElseThrow(
            () ->
                noSuch(
                    "session " + LAST,
                    there ? "no session" : "no folder " + folders[0].getFileName()));
  }

  private static Fault noSuch(String place, String found) {
    return new Fault(
        LogCode.NO_SUCH_SESSION,
        place,
        found,
        "a session folder, the name of one, or \"" + LAST + "\"");
  }

  /** Its name, as it can be given to {@link #find}. */
  public String name() {
    return String.valueOf(path.getFileName());
  }

  /** The log of the session. */
  public Path log() {
    return path.resolve(LOG);
  }

  /** The folder of sound clips, which may be absent. */
  public Path clips() {
    return path.resolve(CLIPS);
  }

  /** The file of the whole procedure. */
  public Path procedure() {
    Path yaml = path.resolve(PROCEDURE_YAML);
    return Files.exists(yaml) && !Files.exists(path.resolve(PROCEDURE))
        ? yaml
        : path.resolve(PROCEDURE);
  }

  /**
   * The bytes of the procedure file the session began with.
   *
   * @param sha256 their SHA-256 in hex, as the log has it
   * @throws Fault if the copy is absent or was changed
   */
  public byte[] procedureBytes(String sha256) throws Fault {
    try {
      byte[] bytes = Files.readAllBytes(procedure());
      String found = Sha256.hex(bytes);
      if (!found.equals(sha256)) {
        throw new Fault(
            LogCode.OTHER_PROCEDURE,
            String.valueOf(procedure().getFileName()),
            "SHA-256 " + found,
            "SHA-256 " + sha256);
      }
      return bytes;
    } catch (IOException e) {
      throw SessionLogFile.cannotRead(procedure(), e);
    }
  }

  /** Makes new names in a folder last through a power cut, where the system can do that. */
  static void forceNames(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Windows opens no folder: it keeps names by itself.
    }
  }

  private static Path fresh(Path sessions, String name) throws IOException {
    for (int i = 1; ; i++) {
      Path path = sessions.resolve(i == 1 ? name : name + "-" + i);
      try {
        return Files.createDirectory(path);
      } catch (FileAlreadyExistsException e) {
        if (i == MOST_ALIKE) {
          throw e;
        }
      }
    }
  }

  private static String plain(String name) {
    String ascii = Normalizer.normalize(name, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    String kept =
        ascii
            .replaceFirst("\\.(json|ya?ml)$", "")
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    String shortened = kept.length() > LONGEST_NAME ? kept.substring(0, LONGEST_NAME) : kept;
    return shortened.isEmpty() ? "procedure" : shortened.replaceAll("-+$", "");
  }
}
