package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.WorkPhase;

@DisplayName("A procedure with its new parts first")
class PartsFirstTest {
  private static final Path FOLDER = Path.of("shared", "procedures");

  @Test
  @DisplayName("has a step for each part, and its fasteners come after it")
  void first() throws Exception {
    LoadedProcedure parts =
        PartsFirst.of(ProcedureFile.load(FOLDER.resolve("demo-lateral-link.json")));
    List<WorkPhase> phases = parts.procedure().phases();
    assertEquals(
        List.of("new-joint-nut", "new-bush-bolt"),
        phases.get(0).steps().stream().map(step -> step.head().id()).toList());
    assertEquals(
        "Part there, new: bush bolt, 2, M12x1.5, head marking 8.8 or 10.9",
        phases.get(0).steps().get(1).head().title());
    Step bolt =
        phases.stream()
            .flatMap(phase -> phase.steps().stream())
            .filter(step -> step.head().id().equals("bush-bolt"))
            .findFirst()
            .orElseThrow();
    assertTrue(bolt.head().bearing().after().contains("new-bush-bolt"));
  }

  @Test
  @DisplayName("is as it was where it needs none, and can be used whatever the example")
  void all() throws Exception {
    LoadedProcedure none = ProcedureFile.load(FOLDER.resolve("wheel-change-retorque.json"));
    assertSame(none, PartsFirst.of(none));
    try (var files = Files.list(FOLDER)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        LoadedProcedure loaded = ProcedureFile.load(file);
        LoadedProcedure parts = PartsFirst.of(loaded);
        assertEquals(parts.sha256(), PartsFirst.of(loaded).sha256(), file::toString);
      }
    }
  }
}
