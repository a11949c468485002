package org.undercall.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A page that is made by a test, which writes it anew or finds it stale. */
public final class Generated {
  private Generated() {}

  /** Requires that a page is as it would be made now; with the property set it is written first. */
  public static void same(Path page, String expected, Class<?> test) throws IOException {
    if (Boolean.getBoolean("undercall.regenerate")) {
      Files.createDirectories(page.getParent());
      Files.writeString(page, expected);
    }
    assertEquals(
        expected,
        Files.exists(page) ? Files.readString(page) : "",
        page
            + " is stale: run mvn test -Dtest="
            + test.getSimpleName()
            + " -Dundercall.regenerate=true");
  }
}
