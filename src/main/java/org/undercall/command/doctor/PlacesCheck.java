package org.undercall.command.doctor;

import java.util.List;
import java.util.stream.Collectors;
import org.undercall.command.option.UserFolders;
import org.undercall.command.option.UserFolders.Place;

/**
 * Where the user's files lie, and that none of them lies unread in an old place.
 *
 * @param folders the rule for them
 */
record PlacesCheck(UserFolders folders) implements Check {
  @Override
  public String name() {
    return "places";
  }

  @Override
  public Found look() {
    String all = folders.all().stream().map(PlacesCheck::line).collect(Collectors.joining("; "));
    return List.of(folders.settings(), folders.words()).stream()
        .filter(place -> place.other().isPresent())
        .findFirst()
        .map(place -> unread(place, all))
        .orElseGet(() -> Found.well(all));
  }

  private static Found unread(Place place, String all) {
    return Found.note(
        DoctorCode.UNREAD_FILE.line(
            place.what() + " in \"" + place.other().orElseThrow() + "\" too",
            "them in \"" + place.used() + "\" alone (" + all + ")"),
        "move what you still need from the first file into the second, and delete the first");
  }

  private static String line(Place place) {
    String used = place.what() + " \"" + place.used().toAbsolutePath() + "\"";
    String other =
        place.other().map(path -> ", also there: \"" + path.toAbsolutePath() + "\"").orElse("");
    return used
        + (place.old() ? " (old place; the new one is \"" + place.proper() + "\")" : "")
        + other;
  }
}
