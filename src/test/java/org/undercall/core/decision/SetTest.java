package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Positions;

@DisplayName("A set of fasteners")
class SetTest {
  private static final List<Integer> STAR = List.of(1, 3, 5, 2, 4);

  private static Walk walk(Step... steps) {
    return Walk.of(SampleProcedures.procedure(new WorkPhase("work", Each.CAR, List.of(steps))));
  }

  private static Step set(int count, List<Integer> order, boolean oneTime, Stage... stages) {
    return SampleProcedures.set(
        SampleProcedures.fasten(
            "plate",
            new Fastener.Part(Hardware.BOLT, oneTime, Lubrication.DRY),
            LoadCondition.ANY,
            List.of(new Variant(Optional.empty(), List.of(stages)))),
        count,
        order);
  }

  private static Bay wheel() {
    return Bay.working(
        walk(SampleProcedures.set(SampleProcedures.wheelBolts("wheel-bolts"), 5, STAR)));
  }

  private static Bay plate(boolean oneTime, Stage... stages) {
    return Bay.working(walk(set(3, List.of(), oneTime, stages)));
  }

  private static Stage torque() {
    return SampleProcedures.torque("52");
  }

  private static Stage angle() {
    return SampleProcedures.angle("60");
  }

  @Test
  @DisplayName("is called one by one, in its order, in seven phrases")
  void oneByOne() {
    Bay bay = wheel();
    bay.goes(
        """
        > say again
        < Step one. wheel-bolts title.
        < Five fasteners, in the order one, three, five, two, four.
        < Torque, five two newton metres.
        < Next: number one.
        > five two newton meters
        < Five two newton metres, matches. Say: torque reached.
        > wrench clicked
        < One done. Four left. Next: number three.
        > wrench clicked
        < Five.
        > number five clicked
        < Two.
        > two clicked
        < Four.
        > which one is next
        < Done: number one, three, five, two.
        < Next: number four.
        < Left: four.
        > which ones are left
        < Done: number one, three, five, two.
        < Next: number four.
        < Left: four.
        > wrench clicked
        < Stage one closed at five two newton metres.
        < All steps are closed. Say: end of work.
        """);
    assertEquals(
        STAR,
        bay.recorded(SessionEvent.PositionsClosed.class).stream()
            .map(e -> e.positions().numbers().get(0))
            .toList());
    assertEquals(1, bay.recorded(SessionEvent.StageClosed.class).size());
  }

  @Test
  @DisplayName("of a wheel is not counted, and one word never closes it")
  void notCounted() {
    wheel()
        .goes(
            """
            > torque reached five two
            < One done. Four left. Next: number three.
            > five of five clicked
            < No. One by one. Next: number three.
            > all five clicked
            < No. One by one. Next: number three.
            > step completed
            < No. Call the value first: five two newton metres.
            > end of work
            < One step open. End anyway?
            < Say: that is correct.
            > that is correct
            < Work ended, not complete. One step open.
            """);
  }

  @Test
  @DisplayName("is counted where the order is free, with a question for the one left out")
  void counted() {
    Bay bay = plate(false, torque());
    bay.goes(
        """
        > five two
        < Five two newton metres, matches. Say: torque reached.
        > two of three clicked
        < No. Two is not all. There are three.
        > five of five clicked
        < No. Five is not all. There are three.
        > three of three clicked
        < All three, none left out?
        < Say: that is correct.
        > that was wrong
        < Forget that, then.
        < Three fasteners.
        < Torque five two.
        < Next: number one.
        > number two clicked
        < Number two, out of turn.
        < Correct?
        > that is correct
        < Two done. Two left. Next: number one.
        > all three clicked
        < All three, none left out?
        < Correct?
        > that is correct
        < Stage one closed at five two newton metres.
        < All steps are closed. Say: end of work.
        """);
    assertEquals(
        List.of(Positions.of(2), new Positions(List.of(1, 3))),
        bay.recorded(SessionEvent.PositionsClosed.class).stream()
            .map(SessionEvent.PositionsClosed::positions)
            .toList());
  }

  @Test
  @DisplayName("reads a position out of turn back, and refuses one that is done or is none")
  void outOfTurn() {
    wheel()
        .goes(
            """
            > torque reached five two
            < One done. Four left. Next: number three.
            > number four clicked
            < Number four, out of turn.
            < Say: that is correct.
            > number five clicked
            < Not yet.
            < Number four, out of turn.
            < Say: that is correct.
            < Or say: that was wrong.
            > that is correct
            < Three.
            > number four clicked
            < No. Number four is done. Next: number three.
            > number one clicked
            < No. Number one is done. Next: number three.
            > number six clicked
            < No. There are only five.
            > wrench clicked
            < Five.
            """);
  }

  @Test
  @DisplayName("has the one open that is denied in a word that sounds like its number")
  void soundsLike() {
    wheel()
        .after("torque reached five two", "wrench clicked")
        .goes(
            """
            > to did not click
            < Torque not reached. It stays open.
            > won did not click
            < Number one is open again.
            < Torque five two.
            < One.
            """);
  }

  @Test
  @DisplayName("has one open again that is denied or taken back")
  void takenBack() {
    wheel()
        .goes(
            """
            > torque reached five two
            < One done. Four left. Next: number three.
            > wrench clicked
            < Five.
            > cancel that
            < Number three is open again.
            < Torque five two.
            < Three.
            > cancel that
            < Nothing to take back.
            < For an older step say: open step, its number, again.
            > wrench clicked
            < Five.
            > wrench did not click
            < Number three is open again.
            < Torque five two.
            < Three.
            > wrench clicked
            < Five.
            > number one has not clicked
            < Number one is open again.
            < Torque five two.
            < One.
            > which ones are left
            < Done: number three.
            < Next: number one.
            < Left: one, five, two, four.
            > number two not clicked
            < Torque not reached. It stays open.
            > number one clicked
            < Five.
            > wrench clicked
            < Two.
            > wrench clicked
            < Four.
            > wrench clicked
            < Stage one closed at five two newton metres.
            < All steps are closed. Say: end of work.
            > torque not reached
            < Torque not reached. It stays open.
            < Taken back. This step is open.
            < Wheel-bolts title.
            < Torque five two.
            < Four.
            > wrench clicked
            < No. Call the value first: five two newton metres.
            > five two
            < Five two newton metres, matches. Say: torque reached.
            > wrench clicked
            < Closed.
            < All closed. End of work?
            > number three not clicked
            < Torque not reached. It stays open.
            < Taken back. This step is open.
            < Wheel-bolts title.
            < Torque five two.
            < Four.
            < Number three is open again.
            < Torque five two.
            < Three.
            > which ones are left
            < Done: number one, five, two.
            < Next: number three.
            < Left: three, four.
            """);
  }

  @Test
  @DisplayName("needs its new hardware counted")
  void newHardware() {
    Bay bay = plate(true, torque());
    bay.goes(
        """
        > new bolt fitted
        < No. Count them. Say: three new bolts fitted.
        > two new bolts fitted
        < No. Count them. Say: three new bolts fitted.
        > three new bolts
        < New hardware noted.
        < Three fasteners.
        < Torque, five two newton metres.
        < Next: number one.
        """);
    assertEquals(Optional.of(3), bay.recorded(SessionEvent.NewHardwareFitted.class).get(0).count());
  }

  @Test
  @DisplayName("has each pass complete before the next, and each angle called by itself")
  void passes() {
    plate(false, torque(), angle())
        .goes(
            """
            > torque reached five two
            < One done. Two left. Next: number two.
            > wrench clicked
            < Three.
            > wrench clicked
            < Stage one closed at five two newton metres.
            < Six zero degrees.
            < One.
            > angle turned six zero
            < Two.
            > three of three clicked
            < No. The angle stage is next.
            > angle turned
            < Three.
            > number two turned
            < No. Number two is done. Next: number three.
            > number two not turned
            < Number two is open again.
            < Stopped before angle, six zero degrees.
            < Say: turned so far, and the degrees in all, or: fully loosened.
            > turned so far two two degrees
            < Turned two two degrees in all.
            < Say: that is correct.
            > that is correct
            < Noted: two two degrees.
            < Two two of six zero degrees is turned. Only the rest:
            < Three eight degrees.
            < Two.
            > three eight
            < Three eight degrees, matches. Say: angle turned.
            > angle turned
            < Three.
            < Six zero degrees.
            < Three.
            > angle turned six zero
            < Closed.
            < All steps are closed. Say: end of work.
            """);
  }

  @Test
  @DisplayName("asks of each how far it was turned after it was opened again")
  void reopened() {
    plate(false, torque(), angle())
        .after("torque reached five two", "wrench clicked", "wrench clicked")
        .after("angle turned six zero", "angle turned", "angle turned")
        .goes(
            """
            > open this step again
            < Reopened. It may still be tight.
            < Plate title.
            < Stopped before angle, six zero degrees.
            < Say: turned so far, and the degrees in all, or: fully loosened.
            > turned so far six zero degrees
            < Turned six zero degrees in all.
            < Say: that is correct.
            > that is correct
            < Two.
            < Stopped before angle, six zero degrees.
            < Say: turned so far, and the degrees in all, or: fully loosened.
            > angle turned six zero
            < No. Say: turned so far, and the degrees in all, or: fully loosened.
            > turned so far six zero degrees
            < Turned six zero degrees in all.
            < Correct?
            > that is correct
            < Three.
            < Stopped before angle, six zero degrees.
            < Say: turned so far, and the degrees in all, or: fully loosened.
            > fully loosened
            < All three count as loose.
            < Three fasteners.
            < Torque five two, then six zero degrees.
            < One.
            > torque reached five two
            < Two.
            """);
  }

  @Test
  @DisplayName("keeps what was called when the work is left, and goes on with the next")
  void left() {
    wheel()
        .goes(
            """
            > torque reached five two
            < One done. Four left. Next: number three.
            > wrench clicked
            < Five.
            > take a break now
            < On hold. Say: resume the work.
            > resume the work
            < Step one. wheel-bolts title.
            < Torque, five two newton metres.
            < Next: number five.
            > wrench clicked
            < No. Call the value first: five two newton metres.
            > five two
            < Five two newton metres, matches. Say: torque reached.
            > wrench clicked
            < Two.
            * restart
            < Back to work.
            < Part tightened: wheel-bolts title, first stage begun.
            < Step one. wheel-bolts title.
            < Torque, five two newton metres.
            < Next: number two.
            > torque reached five two
            < Four.
            """);
  }

  @Test
  @DisplayName("is never complete with one left out, in whatever order and words it is said")
  void leftOut() {
    Random random = new Random(20_261_129);
    for (int run = 0; run < 5_000; run++) {
      Bay bay = wheel().after("five two");
      int out = 1 + random.nextInt(5);
      List<Integer> said =
          new ArrayList<>(IntStream.rangeClosed(1, 5).filter(n -> n != out).boxed().toList());
      said.addAll(List.copyOf(said));
      Collections.shuffle(said, random);
      for (int position : said) {
        bay.say(random.nextBoolean() ? "number " + position + " clicked" : position + " clicked");
        bay.say("that is correct");
        bay.say(List.of("five of five clicked", "step completed", "done").get(random.nextInt(3)));
      }
      assertEquals(List.of(), bay.recorded(SessionEvent.StageClosed.class), "left out: " + out);
    }
  }
}
