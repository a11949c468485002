package org.undercall.command.doctor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.command.doctor.Found.State;
import org.undercall.command.option.UserFolders;

@DisplayName("The doctor's check of places")
class PlacesCheckTest {
  @TempDir Path folder;

  @Test
  @DisplayName("tells where everything lies, old places too, and notes a file that is not read")
  void places() throws Exception {
    Path here = folder.resolve("here");
    Path old = Files.createDirectories(folder.resolve("undercall"));
    Files.createDirectories(here.resolve("sessions"));
    Files.writeString(old.resolve("settings.properties"), "");
    UserFolders folders = UserFolders.of("Linux", Map.of(), folder, here);
    PlacesCheck check = new PlacesCheck(folders);
    Path proper = folders.settings().proper();
    assertEquals(State.WELL, check.look().state());
    assertTrue(
        check
            .look()
            .found()
            .startsWith(
                "settings \""
                    + old.resolve("settings.properties")
                    + "\" (old place; the new one is \""
                    + proper),
        check.look().found());
    String all = check.look().found();
    assertTrue(
        all.contains("sessions \"" + here.resolve("sessions") + "\" (old place; the new one is \""),
        all);
    for (UserFolders.Place place : folders.all()) {
      assertTrue(all.contains(place.what() + " \"" + place.used().toAbsolutePath()), all);
    }
    Files.createDirectories(proper.getParent());
    Files.writeString(proper, "");
    Found twice = check.look();
    assertEquals(State.NOTE, twice.state());
    assertTrue(twice.found().startsWith("DOC-013 found settings in \"" + old), twice.found());
    assertTrue(twice.found().contains("expected them in \"" + proper + "\" alone"), all);
  }
}
