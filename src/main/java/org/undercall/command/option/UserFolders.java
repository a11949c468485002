package org.undercall.command.option;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where the files of a user lie, by the convention of the system: the XDG base directories (version
 * 0.8) on Linux and the like, {@code AppData} on Windows, {@code Library} on macOS. An old place
 * that is there goes on being used until the new one is there; of the sessions, the old place goes
 * first, since what a user has begun somewhere is gone on with there.
 */
public final class UserFolders {
  private static final String OLD = "undercall";

  private final Map<String, String> environment;
  private final Path home;
  private final Path here;
  private final Path settings;
  private final Path data;
  private final Path cache;

  private UserFolders(Map<String, String> environment, Path home, Path here, Bases bases) {
    this.environment = environment;
    this.home = home;
    this.here = here;
    this.settings = bases.settings();
    this.data = bases.data();
    this.cache = bases.cache();
  }

  /** The folders of this program below those that the system has for all programs. */
  private record Bases(Path settings, Path data, Path cache) {}

  /** Those of the user who runs the program, seen from the current folder. */
  public static UserFolders ofMachine() {
    return of(
        System.getProperty("os.name"),
        System.getenv(),
        Path.of(System.getProperty("user.home")),
        Path.of(""));
  }

  /**
   * Those of a user of a system.
   *
   * @param system its name, as in the property {@code os.name}
   * @param environment its variables; a relative path in one that the system defines is ignored
   * @param home the user's home folder
   * @param here the current folder
   */
  public static UserFolders of(
      String system, Map<String, String> environment, Path home, Path here) {
    String name = system.toLowerCase(Locale.ROOT);
    Bases bases;
    if (name.startsWith("windows")) {
      Path local =
          base(environment, "LOCALAPPDATA", home.resolve("AppData").resolve("Local"))
              .resolve("Undercall");
      Path roaming = base(environment, "APPDATA", home.resolve("AppData").resolve("Roaming"));
      bases = new Bases(roaming.resolve("Undercall"), local, local.resolve("Cache"));
    } else if (name.startsWith("mac")) {
      Path library = home.resolve("Library");
      Path support = library.resolve("Application Support").resolve("Undercall");
      bases = new Bases(support, support, library.resolve("Caches").resolve("Undercall"));
    } else {
      bases =
          new Bases(
              base(environment, "XDG_CONFIG_HOME", home.resolve(".config")).resolve(OLD),
              base(environment, "XDG_DATA_HOME", home.resolve(".local").resolve("share"))
                  .resolve(OLD),
              base(environment, "XDG_CACHE_HOME", home.resolve(".cache")).resolve(OLD));
    }
    return new UserFolders(environment, home, here, bases);
  }

  private static Path base(Map<String, String> environment, String variable, Path otherwise) {
    return named(environment, variable).filter(Path::isAbsolute).orElse(otherwise);
  }

  private static Optional<Path> named(Map<String, String> environment, String variable) {
    try {
      return Optional.ofNullable(environment.get(variable))
          .filter(path -> !path.isBlank())
          .map(Path::of);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /**
   * Where something lies.
   *
   * @param what it is, in a few words
   * @param used the file or folder that is used, which may be absent
   * @param proper the one that the convention of the system names
   * @param other another one that is there too; empty if none is
   */
  public record Place(String what, Path used, Path proper, Optional<Path> other) {

    private static Place named(String what, Path path) {
      return new Place(what, path, path, Optional.empty());
    }

    private static Place newFirst(String what, Path proper, Path old) {
      boolean isOld = !proper.equals(old) && Files.exists(old);
      boolean fallsBack = isOld && Files.notExists(proper);
      Optional<Path> other = isOld && !fallsBack ? Optional.of(old) : Optional.empty();
      return new Place(what, fallsBack ? old : proper, proper, other);
    }

    private static Place oldFirst(String what, Path proper, Path old) {
      return Files.isDirectory(old)
          ? new Place(what, old, proper, Optional.of(proper).filter(Files::exists))
          : named(what, proper);
    }

    /** Whether it is where older versions had it. */
    public boolean old() {
      return !used.equals(proper);
    }
  }

  /** The file of defaults for options. */
  public Place settings() {
    String name = "settings.properties";
    return Place.newFirst("settings", settings.resolve(name), home.resolve(OLD).resolve(name));
  }

  /** The file of own wordings. */
  public Place words() {
    String name = "words.json";
    return Place.newFirst("own words", settings.resolve(name), home.resolve(OLD).resolve(name));
  }

  /** How much each technician wants to hear: a file of a name and a level. */
  public Place talk() {
    return Place.named("talk", settings.resolve("talk.properties"));
  }

  /** What each technician knows from earlier sessions. */
  public Place known() {
    return Place.named("known", settings.resolve("known.properties"));
  }

  /** The folder of own procedures: {@code UNDERCALL_PROCEDURES}, or one of the data. */
  public Place procedures() {
    String what = "own procedures";
    String name = "procedures";
    return named(environment, "UNDERCALL_PROCEDURES")
        .map(folder -> Place.named(what, folder))
        .orElseGet(() -> Place.newFirst(what, data.resolve(name), home.resolve(OLD).resolve(name)));
  }

  /**
   * The folder of sessions where none is named: the one here if it is there, or one of the data.
   */
  public Place sessions() {
    return Place.oldFirst("sessions", data.resolve("sessions"), here.resolve("sessions"));
  }

  /** The folder of results of {@code ear} that are kept. */
  public Place ears() {
    return Place.newFirst("results of ear", data.resolve("ear"), home.resolve(".undercall"));
  }

  /** The folder of spoken sound: {@code UNDERCALL_SPEECH_CACHE}, or one of the cache. */
  public Place speech() {
    String what = "sound of the voice";
    Path old = home.resolve(".cache").resolve(OLD).resolve("speech");
    return named(environment, "UNDERCALL_SPEECH_CACHE")
        .map(folder -> Place.named(what, folder))
        .orElseGet(() -> Place.newFirst(what, cache.resolve("speech"), old));
  }

  /** Every place. */
  public List<Place> all() {
    return List.of(settings(), words(), procedures(), sessions(), ears(), speech());
  }
}
