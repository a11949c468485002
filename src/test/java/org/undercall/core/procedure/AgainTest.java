package org.undercall.core.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Step.HandOver;

@DisplayName("What is to be tightened again")
class AgainTest {
  private static Procedure procedure(String name) throws Exception {
    return ProcedureFile.load(Path.of("shared", "procedures", name + ".json")).procedure();
  }

  private static HandOver item(String title, String... after) {
    Bearing bearing =
        new Bearing(
            List.of(after),
            List.of(),
            Bearing.Lift.LEFT_AS_IT_IS,
            java.util.Optional.empty(),
            false);
    return new HandOver(
        new Step.Head("x", title, java.util.Optional.empty(), List.of(), false, bearing),
        "after 50 km");
  }

  private static List<String> ids(Procedure procedure, HandOver item) {
    return Again.of(procedure, item).stream().map(p -> p.step().head().id()).toList();
  }

  @Test
  @DisplayName("is the wheel bolts, once, as the last of their steps has them")
  void wheels() throws Exception {
    Procedure procedure = procedure("wheel-change-retorque");
    List<HandOver> items = Again.items(procedure);
    assertEquals(List.of("retorque"), items.stream().map(i -> i.head().id()).toList());
    assertEquals(List.of("wheel-bolts-again"), ids(procedure, items.get(0)));
  }

  @Test
  @DisplayName("is what the item comes after, or names, where it names no wheel")
  void others() throws Exception {
    Procedure procedure = procedure("front-control-arms");
    assertEquals(List.of("rear-bush"), ids(procedure, item("Check the torque again", "rear-bush")));
    assertEquals(List.of("joint-nut"), ids(procedure, item("Retighten the ball joint nut")));
  }

  @Test
  @DisplayName("is nothing where no torque is checked, or where it is said not to")
  void none() throws Exception {
    Procedure procedure = procedure("front-control-arms");
    assertEquals(List.of(), ids(procedure, item("Check the wheel alignment", "rear-bush")));
    assertEquals(List.of(), ids(procedure, item("No re-torque of the wheel bolts")));
    assertEquals(List.of(), ids(procedure, item("Check the torque of the sway bar")));
  }
}
