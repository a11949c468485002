package org.undercall.core.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** Every value is invented. */
@DisplayName("A procedure")
class WalkTest {
  private static Torque torque(String amount) {
    return new Torque(new BigDecimal(amount), TorqueUnit.NEWTON_METRE);
  }

  private static Variant variant(String marking, String amount) {
    Optional<HeadMarking> head =
        Optional.of(marking).filter(m -> !m.isEmpty()).map(HeadMarking::new);
    return new Variant(head, List.of(new Stage.TorqueStage(torque(amount), BigDecimal.ONE)));
  }

  private static Fastener fastener(Fastener.FastenerSet set, Variant... variants) {
    Fastener.Part part = new Fastener.Part(Hardware.BOLT, true, Lubrication.DRY);
    return new Fastener(
        "bolt", "M12x1.5", BigDecimal.valueOf(18), part, LoadCondition.ANY, set, List.of(variants));
  }

  private static Step step(String id, Fastener fastener) {
    return new Step.Fasten(new Step.Head(id, id, List.of(), false), fastener);
  }

  private static Walk walk(WorkPhase... phases) {
    return Walk.of(
        new Procedure(
            new Procedure.About("Sample", "invented van", "nobody", "1", "invented"),
            List.of(Caution.of("Stands, never a jack alone.")),
            List.of(new Tool("W1", torque("20"), torque("100"), LocalDate.of(2026, 1, 15))),
            Optional.empty(),
            List.of(phases)));
  }

  private static WorkPhase phase(String name, Each each) {
    Fastener bolts = fastener(new Fastener.FastenerSet(2, List.of()), variant("", "50"));
    return new WorkPhase(name, each, List.of(step(name, bolts)));
  }

  @Nested
  @DisplayName("is walked")
  class Order {
    @Test
    @DisplayName("left side before right side, through all neighbouring phases of a side")
    void sides() {
      List<String> walked =
          walk(
                  phase("a", Each.SIDE),
                  phase("b", Each.SIDE),
                  phase("c", Each.CAR),
                  phase("d", Each.SIDE))
              .places()
              .stream()
              .map(place -> place.ref().id() + " " + place.ref().side())
              .toList();
      assertEquals(
          List.of("a LEFT", "b LEFT", "a RIGHT", "b RIGHT", "c CAR", "d LEFT", "d RIGHT"), walked);
    }

    @Test
    @DisplayName("by position, and a step that it does not have has none")
    void positions() {
      Walk walk = walk(phase("a", Each.SIDE));
      assertEquals(1, walk.indexOf(new StepRef("a", Side.RIGHT)));
      assertEquals(-1, walk.indexOf(new StepRef("a", Side.CAR)));
    }

    @Test
    @DisplayName("after all is laid out: new parts are counted for both sides and the whole set")
    void layOut() {
      LayOut needs = LayOut.of(walk(phase("a", Each.SIDE), phase("b", Each.CAR)).procedure());
      assertEquals(2 * 2 + 2, needs.newParts().stream().mapToInt(LayOut.Part::count).sum());
      assertEquals(List.of("W1"), needs.wrenches().stream().map(Tool::id).toList());
      assertFalse(needs.angles());
    }
  }

  @Nested
  @DisplayName("has fasteners")
  class Fasteners {
    @Test
    @DisplayName("that release stages only for a marking they know")
    void markings() {
      Fastener bolt =
          fastener(Fastener.FastenerSet.SINGLE, variant("8.8", "60"), variant("10.9", "80"));
      assertTrue(bolt.dependsOnMarking());
      assertEquals(
          new BigDecimal("80"),
          bolt.stagesFor(Optional.of(new HeadMarking("10.9"))).orElseThrow().get(0).amount());
      assertEquals(Optional.empty(), bolt.stagesFor(Optional.of(new HeadMarking("12.9"))));
      assertEquals(Optional.empty(), bolt.stagesFor(Optional.empty()));
    }

    @Test
    @DisplayName("whose variants never share a marking or leave one out")
    void variants() {
      Fastener.FastenerSet one = Fastener.FastenerSet.SINGLE;
      assertRefused(() -> fastener(one, variant("8.8", "60"), variant("8.8", "80")));
      assertRefused(() -> fastener(one, variant("", "60"), variant("8.8", "80")));
    }

    @Test
    @DisplayName("whose order of tightening names each of them once")
    void order() {
      assertEquals(3, new Fastener.FastenerSet(3, List.of(1, 3, 2)).count());
      assertRefused(() -> new Fastener.FastenerSet(3, List.of(1, 3)));
      assertRefused(() -> new Fastener.FastenerSet(3, List.of(1, 3, 3)));
      assertRefused(() -> new Fastener.FastenerSet(3, List.of(0, 1, 2)));
      assertRefused(() -> new Fastener.FastenerSet(0, List.of()));
    }

    @Test
    @DisplayName("for which a wrench must cover the torque, its ends included")
    void tools() {
      Tool tool = new Tool("W1", torque("20"), torque("100"), LocalDate.of(2026, 1, 15));
      assertTrue(tool.covers(torque("20")));
      assertTrue(tool.covers(torque("100")));
      assertFalse(tool.covers(torque("100.1")));
      assertTrue(tool.covers(new Torque(new BigDecimal("70"), TorqueUnit.POUND_FORCE_FOOT)));
      assertFalse(tool.covers(new Torque(new BigDecimal("75"), TorqueUnit.POUND_FORCE_FOOT)));
    }

    private void assertRefused(Runnable made) {
      assertThrows(IllegalArgumentException.class, made::run);
    }
  }
}
