package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.check.Finding;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.check.Severity;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.JointKind;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.TorqueUnit;
import org.undercall.port.Fault;

@DisplayName("The example procedures")
class ExampleLibraryTest {
  private static final Path FOLDER = Path.of("shared", "procedures");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final int AT_LEAST = 8;

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static Procedure load(Path file) throws Fault {
    LoadedProcedure loaded = ProcedureFile.load(file);
    return loaded.procedure();
  }

  @ParameterizedTest
  @MethodSource("files")
  @DisplayName("say that their values are invented, and that stands carry the car")
  void invented(Path file) throws Fault {
    Procedure procedure = load(file);
    assertTrue(procedure.about().values().startsWith("invented"), procedure.about().values());
    assertTrue(procedure.about().vehicle().startsWith("Invented"), procedure.about().vehicle());
    String cautions =
        String.join(
            " ", procedure.cautions().stream().map(c -> c.text() + " " + c.inBrief()).toList());
    assertTrue(cautions.contains("Never work under a jack alone."), cautions);
    assertTrue(cautions.contains("Local codes and licensed practice come first."), cautions);
  }

  @ParameterizedTest
  @MethodSource("files")
  @DisplayName("are checked without an error or a warning")
  void checked(Path file) throws Fault {
    List<Finding> findings = ProcedureCheck.of(load(file), DAY);
    assertEquals(
        List.of(), findings.stream().filter(f -> f.rule().severity() != Severity.REMARK).toList());
  }

  @ParameterizedTest
  @MethodSource("files")
  @DisplayName("are worked through to their end by saying what is asked for")
  void walked(Path file) throws Fault {
    Walk walk = Walk.of(load(file));
    List<WalkThrough.Exchange> exchanges = WalkThrough.of(walk);
    Bay bay = Bay.briefing(walk).given(WalkThrough.started());
    for (WalkThrough.Exchange exchange : exchanges) {
      if (bay.phase() == Phase.WAITING && exchange.answer().isEmpty()) {
        bay.carryOn();
      }
      exchange.answer().ifPresent(bay::say);
    }
    assertEquals(
        List.of(new SessionEvent.SessionEnded(true, 0)),
        bay.recorded(SessionEvent.SessionEnded.class),
        "at " + bay.at() + " in " + bay.phase());
  }

  @Test
  @DisplayName("use together everything that the format has")
  void complete() throws Exception {
    assertTrue(files().size() >= AT_LEAST);
    Used used = new Used();
    for (Path file : files()) {
      Procedure procedure = load(file);
      procedure.rideHeight().flatMap(r -> r.arm()).ifPresent(arm -> used.extras.add("arm"));
      procedure.phases().forEach(phase -> phase.steps().forEach(used::add));
    }
    assertEquals(Step.class.getPermittedSubclasses().length, used.steps.size(), "" + used.steps);
    assertEquals(EnumSet.allOf(LoadCondition.class), used.needs);
    assertEquals(EnumSet.allOf(JointKind.class), used.joints);
    assertEquals(EnumSet.allOf(Hardware.class), used.hardware);
    assertEquals(EnumSet.complementOf(EnumSet.of(TorqueUnit.KILOGRAM_FORCE_METRE)), used.units);
    assertEquals(EnumSet.allOf(Wheels.class), used.wheels);
    assertEquals(
        Set.of("adaptor", "angle", "arm", "check", "finding", "order", "reason", "variants"),
        used.extras);
  }

  /** What the procedures use. */
  private static final class Used {
    private final Set<Class<?>> steps = new HashSet<>();
    private final Set<LoadCondition> needs = EnumSet.noneOf(LoadCondition.class);
    private final Set<JointKind> joints = EnumSet.noneOf(JointKind.class);
    private final Set<Hardware> hardware = EnumSet.noneOf(Hardware.class);
    private final Set<TorqueUnit> units = EnumSet.noneOf(TorqueUnit.class);
    private final Set<Wheels> wheels = EnumSet.noneOf(Wheels.class);
    private final Set<String> extras = new TreeSet<>();

    void add(Step step) {
      steps.add(step.getClass());
      if (step instanceof Step.Fasten fasten) {
        add(fasten.fastener());
      } else if (step instanceof Step.Do work) {
        wheels.add(work.wheels());
        note("check", work.check().isPresent());
      } else if (step instanceof Step.Measure measure) {
        note("finding", measure.limits().mayBeOutside());
      }
    }

    private void add(Fastener fastener) {
      needs.add(fastener.needs());
      hardware.add(fastener.part().hardware());
      fastener.joint().kind().ifPresent(joints::add);
      note("reason", fastener.joint().reason().isPresent());
      note("order", !fastener.set().order().isEmpty());
      note("variants", fastener.variants().size() > 1);
      fastener.variants().forEach(variant -> variant.stages().forEach(this::add));
    }

    private void add(Stage stage) {
      if (stage instanceof Stage.TorqueStage torque) {
        units.add(torque.target().unit());
        note("adaptor", torque.dialled().isPresent());
      } else {
        extras.add("angle");
      }
    }

    private void note(String extra, boolean present) {
      if (present) {
        extras.add(extra);
      }
    }
  }
}
