package org.undercall.adapter.recogniser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.undercall.port.Fault;

/**
 * A folder with a speech model that was checked and may be loaded.
 *
 * <p>A damaged model can end the whole process or, worse, load and hear nothing right; so the only
 * way to one of these is {@link #verify}. Beside the folder lies its checksum list, named like the
 * folder with {@code .sha256} at the end and in the format of sha256sum. Every file is read each
 * time: 68 MB take 0.15 s, two thirds of it in two files, so neither threads nor a remembered
 * result are worth their faults.
 */
public final class ModelFolder {
  /** The model that the build unpacks. */
  public static final String STANDARD = "vosk-model-en-0.3.45";

  private static final String NETWORK = "am/final.mdl";

  /** The network as published, which the build keeps beside the one adapted to noise. */
  private static final String PUBLISHED = "am/plain.mdl";

  private static final String REMEDY =
      "delete the folder and build again (mvn process-resources), or name another with --model DIR";

  private final Path path;
  private final String name;
  private final Optional<String> warning;

  private ModelFolder(Path path, String name, Optional<String> warning) {
    this.path = path;
    this.name = name;
    this.warning = warning;
  }

  /** The name of the folder, and whether its network is adapted to noise, where that is known. */
  public String name() {
    return name;
  }

  /** Where it is. */
  public Path path() {
    return path;
  }

  /** What the user should be told although the model can be loaded: one line with a code. */
  public Optional<String> warning() {
    return warning;
  }

  /**
   * The standard model's folder: {@code models/} in the working directory, or else beside the
   * program or beside the folder that the program is in. It may be absent.
   */
  public static Path standard() {
    Path here = Path.of("models", STANDARD);
    return Stream.of(Optional.of(here), besideProgram(0), besideProgram(1))
        .flatMap(Optional::stream)
        .filter(Files::isDirectory)
        .findFirst()
        .orElse(here);
  }

  private static Optional<Path> besideProgram(int up) {
    var source = ModelFolder.class.getProtectionDomain().getCodeSource();
    if (source == null) {
      return Optional.empty();
    }
    try {
      Path place = Path.of(source.getLocation().toURI()).getParent();
      for (int i = 0; i < up && place != null; i++) {
        place = place.getParent();
      }
      return Optional.ofNullable(place).map(folder -> folder.resolve("models").resolve(STANDARD));
    } catch (java.net.URISyntaxException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /**
   * Checks every file of a model.
   *
   * @throws Fault MOD-001 to MOD-007 or MOD-012: what is wrong, where, and what to do
   */
  public static ModelFolder verify(Path folder) throws Fault {
    if (!Files.isDirectory(folder)) {
      throw new Fault(
          ModelCode.NO_FOLDER,
          folder.toString(),
          "there is no such folder, expected a speech model; build it with mvn process-resources,"
              + " or name another with --model DIR");
    }
    try {
      Path list = list(folder);
      SortedMap<String, Path> files = files(folder);
      if (!Files.exists(list)) {
        ModelShape.check(folder, files.keySet());
        return new ModelFolder(folder, name(folder), Optional.of(unlisted(folder, list)));
      }
      compare(folder, files, ChecksumList.read(list));
      ModelShape.check(folder, files.keySet());
      boolean adapted = files.containsKey(PUBLISHED);
      String name = name(folder) + (adapted ? ", adapted to noise" : "");
      return new ModelFolder(folder, name, Optional.empty());
    } catch (IOException e) {
      throw new Fault(
          ModelCode.UNREADABLE, folder.toString(), "cannot be read (" + e + "); " + REMEDY);
    }
  }

  /**
   * Checks a model that is adapted to noise and copies it to a temporary folder with the network as
   * published; the folder goes when the program ends.
   *
   * @throws Fault as {@link #verify}; MOD-002 if it holds no published network
   */
  public static ModelFolder plain(Path folder) throws Fault {
    verify(folder);
    if (!Files.exists(folder.resolve(PUBLISHED))) {
      throw fault(ModelCode.FILE_MISSING, folder, PUBLISHED, "is missing, expected for plain");
    }
    try {
      Path copy = Files.createTempDirectory("undercall-model");
      copy.toFile().deleteOnExit();
      for (var file : files(folder).entrySet()) {
        if (!file.getKey().equals(NETWORK)) {
          String name = file.getKey().equals(PUBLISHED) ? NETWORK : file.getKey();
          copied(file.getValue(), copy, name);
        }
      }
      return new ModelFolder(copy, name(folder) + ", as published", Optional.empty());
    } catch (IOException e) {
      throw new Fault(ModelCode.UNREADABLE, folder.toString(), "cannot be copied (" + e + ")");
    }
  }

  private static void copied(Path file, Path to, String name) throws IOException {
    Path place = to;
    for (Path part : Path.of(name)) {
      place = place.resolve(part);
      place.toFile().deleteOnExit();
    }
    Files.createDirectories(place.getParent());
    Files.copy(file, place);
  }

  private static String name(Path folder) {
    return String.valueOf(folder.getFileName());
  }

  private static String unlisted(Path folder, Path list) {
    return new Fault.Finding(
            ModelCode.UNLISTED,
            folder.toString(),
            "there is no checksum list "
                + list
                + ", so damage would not be noticed; only the structure was checked",
            "")
        .toString();
  }

  private static Path list(Path folder) {
    Path real = folder.toAbsolutePath().normalize();
    return real.resolveSibling(real.getFileName() + ".sha256");
  }

  private static SortedMap<String, Path> files(Path folder) throws IOException {
    var files = new TreeMap<String, Path>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile)::iterator) {
        if (!file.getFileName().toString().startsWith(".")) {
          files.put(folder.relativize(file).toString().replace('\\', '/'), file);
        }
      }
    }
    return files;
  }

  private static void compare(Path folder, SortedMap<String, Path> files, ChecksumList list)
      throws Fault, IOException {
    var missing = new TreeSet<>(list.names());
    missing.removeAll(files.keySet());
    if (!missing.isEmpty()) {
      throw fault(
          ModelCode.FILE_MISSING, folder, missing.first(), "is missing, expected by the list");
    }
    var extra = new TreeSet<>(files.keySet());
    extra.removeAll(list.names());
    if (!extra.isEmpty()) {
      throw fault(ModelCode.FILE_NOT_LISTED, folder, extra.first(), "is not on the checksum list");
    }
    for (var file : files.entrySet()) {
      String found = ChecksumList.sha256(file.getValue());
      String expected = list.of(file.getKey());
      if (!found.equals(expected)) {
        throw fault(
            ModelCode.FILE_DAMAGED,
            folder,
            file.getKey(),
            "is damaged, found SHA-256 " + found + ", expected " + expected);
      }
    }
  }

  private static Fault fault(ModelCode code, Path folder, String file, String what) {
    return new Fault(code, folder.resolve(file).toString(), what + "; " + REMEDY);
  }
}
