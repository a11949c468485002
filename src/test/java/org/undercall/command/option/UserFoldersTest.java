package org.undercall.command.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.command.option.UserFolders.Place;

@DisplayName("The files of a user")
class UserFoldersTest {
  @TempDir Path folder;

  private UserFolders on(String system, Map<String, String> environment) {
    return UserFolders.of(system, environment, home(), here());
  }

  private UserFolders onLinux() {
    return on("Linux", Map.of());
  }

  private Path home() {
    return folder.resolve("home");
  }

  private Path here() {
    return folder.resolve("here");
  }

  /** The places as used, below the folder of the test. */
  private List<String> used(UserFolders folders) {
    return folders.all().stream()
        .map(place -> folder.relativize(place.used()).toString().replace('\\', '/'))
        .toList();
  }

  private Map<String, String> elsewhere(String... variables) {
    return Stream.of(variables)
        .collect(Collectors.toMap(name -> name, name -> folder.resolve(name).toString()));
  }

  private static void made(Path file) throws Exception {
    Files.createDirectories(file.getParent());
    Files.writeString(file, "");
  }

  @Nested
  @DisplayName("lie")
  class Lie {
    @ParameterizedTest
    @ValueSource(strings = {"Linux", "FreeBSD"})
    @DisplayName("in the default folders of the XDG specification on Linux and the like")
    void linux(String system) {
      assertEquals(
          List.of(
              "home/.config/undercall/settings.properties",
              "home/.config/undercall/words.json",
              "home/.local/share/undercall/procedures",
              "home/.local/share/undercall/sessions",
              "home/.local/share/undercall/ear",
              "home/.cache/undercall/speech"),
          used(on(system, Map.of())));
    }

    @Test
    @DisplayName("in the folders that the XDG variables name")
    void xdg() {
      Map<String, String> named =
          elsewhere("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "APPDATA");
      assertEquals(
          List.of(
              "XDG_CONFIG_HOME/undercall/settings.properties",
              "XDG_CONFIG_HOME/undercall/words.json",
              "XDG_DATA_HOME/undercall/procedures",
              "XDG_DATA_HOME/undercall/sessions",
              "XDG_DATA_HOME/undercall/ear",
              "XDG_CACHE_HOME/undercall/speech"),
          used(on("Linux", named)));
    }

    @Test
    @DisplayName("in AppData on Windows, with or without its variables")
    void windows() {
      List<String> below =
          List.of(
              "Undercall/settings.properties",
              "Undercall/words.json",
              "Undercall/procedures",
              "Undercall/sessions",
              "Undercall/ear",
              "Undercall/Cache/speech");
      for (boolean named : new boolean[] {true, false}) {
        String roaming = named ? "APPDATA/" : "home/AppData/Roaming/";
        String local = named ? "LOCALAPPDATA/" : "home/AppData/Local/";
        Map<String, String> environment =
            named ? elsewhere("APPDATA", "LOCALAPPDATA", "XDG_DATA_HOME") : Map.of();
        assertEquals(
            Stream.concat(
                    below.stream().limit(2).map(file -> roaming + file),
                    below.stream().skip(2).map(file -> local + file))
                .toList(),
            used(on("Windows 11", environment)));
      }
    }

    @Test
    @DisplayName("in Library on macOS, whatever variables of other systems say")
    void mac() {
      String support = "home/Library/Application Support/Undercall/";
      assertEquals(
          List.of(
              support + "settings.properties",
              support + "words.json",
              support + "procedures",
              support + "sessions",
              support + "ear",
              "home/Library/Caches/Undercall/speech"),
          used(on("Mac OS X", elsewhere("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "relative/folder", "./here", "with\0nul"})
    @DisplayName("where the default is, if a variable names no absolute path")
    void relative(String value) {
      Map<String, String> wrong =
          Map.of("XDG_CONFIG_HOME", value, "XDG_DATA_HOME", value, "XDG_CACHE_HOME", value);
      assertEquals(used(onLinux()), used(on("Linux", wrong)));
      Map<String, String> windows = Map.of("APPDATA", value, "LOCALAPPDATA", value);
      assertEquals(used(on("Windows 10", Map.of())), used(on("Windows 10", windows)));
    }

    @ParameterizedTest
    @CsvSource({"UNDERCALL_PROCEDURES, 2", "UNDERCALL_SPEECH_CACHE, 5"})
    @DisplayName("where a variable of the program says, before anything else")
    void named(String variable, int index) throws Exception {
      made(home().resolve("undercall/procedures/x.json"));
      made(home().resolve(".cache/undercall/speech/x"));
      Place place = on("Mac OS X", elsewhere(variable)).all().get(index);
      assertEquals(folder.resolve(variable), place.used());
      assertFalse(place.old());
      assertEquals(Optional.empty(), place.other());
      Place relative = on("Linux", Map.of(variable, "kept")).all().get(index);
      assertEquals(Path.of("kept"), relative.used());
      assertEquals(used(onLinux()), used(on("Linux", Map.of(variable, " "))));
    }
  }

  @Nested
  @DisplayName("in an old place")
  class Old {
    private static final List<String> PLACES =
        List.of(
            "home/undercall/settings.properties",
            "home/undercall/words.json",
            "home/undercall/procedures",
            "here/sessions",
            "home/.undercall",
            "home/.cache/undercall/speech");

    private void madeAll() throws Exception {
      for (String place : PLACES) {
        made(folder.resolve(place.matches(".*\\.(properties|json)") ? place : place + "/x"));
      }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Linux", "Windows 11", "Mac OS X"})
    @DisplayName("are all still used, and it is said")
    void used(String system) throws Exception {
      madeAll();
      UserFolders folders = on(system, Map.of());
      assertEquals(PLACES, UserFoldersTest.this.used(folders));
      boolean cacheStays = system.equals("Linux");
      assertEquals(cacheStays ? 5 : 6, folders.all().stream().filter(Place::old).count());
      assertTrue(folders.all().stream().allMatch(place -> place.other().isEmpty()));
    }

    @Test
    @DisplayName("give way once the new place is there, and it is said that both are")
    void both() throws Exception {
      madeAll();
      UserFolders folders = on("Mac OS X", Map.of());
      for (Place place : folders.all()) {
        made(
            place.proper().toString().endsWith(".json")
                ? place.proper()
                : place.proper().resolve("x"));
      }
      for (Place place : folders.all()) {
        boolean first = place.what().equals("sessions");
        assertEquals(first, place.old(), place.what());
        assertEquals(first, place.used().startsWith(here()), place.what());
        assertTrue(place.other().isPresent(), place.what());
      }
    }

    @Test
    @DisplayName("are none of sessions, if that is a file")
    void file() throws Exception {
      made(here().resolve("sessions"));
      assertFalse(onLinux().sessions().old());
    }
  }
}
