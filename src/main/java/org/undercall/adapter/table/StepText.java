package org.undercall.adapter.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Dialled;
import org.undercall.core.procedure.DriveSize;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.ReuseBy;

/** Writes a step as rows of a table: one, or one for each class of a fastener. */
final class StepText {
  private StepText() {}

  static List<Map<Column, String>> rows(Step step) {
    Map<Column, String> row = TableText.row();
    row.put(Column.STEP, step.head().title());
    row.put(Column.ID, step.head().id());
    if (!step.head().cautions().isEmpty()) {
      row.put(Column.NOTE, String.join(StepRow.BETWEEN_NOTES, step.head().cautions()));
    }
    step.head().brief().ifPresent(brief -> row.put(Column.BRIEF, brief));
    step.head().why().ifPresent(why -> row.put(Column.WHY, why));
    yes(row, Column.WITNESS, step.head().witness());
    yes(row, Column.CHANGES_LOAD, step.head().changesLoad());
    bearing(row, step.head().bearing());
    if (step instanceof Step.Fasten fasten) {
      return fastener(row, fasten.fastener());
    }
    other(row, step);
    return List.of(row);
  }

  private static void bearing(Map<Column, String> row, Bearing bearing) {
    if (!bearing.after().isEmpty()) {
      row.put(Column.AFTER, String.join(" ", bearing.after()));
    }
    if (!bearing.undoes().isEmpty()) {
      row.put(Column.UNDOES, String.join(" ", bearing.undoes()));
    }
    if (bearing.car() != Bearing.Lift.LEFT_AS_IT_IS) {
      row.put(Column.CAR, word(bearing.car()));
    }
    bearing.corner().ifPresent(corner -> row.put(Column.CORNER, word(corner)));
    yes(row, Column.ROAD_TEST, bearing.roadTest());
  }

  private static void other(Map<Column, String> row, Step step) {
    if (step instanceof Step.Do work) {
      row.put(Column.KIND, "do");
      work.check().ifPresent(text -> row.put(Column.CHECK, text));
      if (work.wheels() != Wheels.LEFT_AS_THEY_ARE) {
        row.put(Column.WHEELS_ON, work.wheels() == Wheels.FITTED ? "yes" : "no");
      }
    } else if (step instanceof Step.Measure measure) {
      row.put(Column.KIND, "measure");
      row.put(Column.UNIT, measure.unit().symbol());
      measure.limits().least().ifPresent(least -> row.put(Column.LEAST, number(least)));
      measure.limits().most().ifPresent(most -> row.put(Column.MOST, number(most)));
      if (measure.limits().mayBeOutside()) {
        row.put(Column.OUTSIDE, "finding");
      }
      yes(row, Column.NOTES_HEIGHT, measure.notesRideHeight());
    } else if (step instanceof Step.Wait wait) {
      row.put(Column.KIND, "wait");
      row.put(Column.SECONDS, String.valueOf(wait.time().toSeconds()));
    } else if (step instanceof Step.Load load) {
      row.put(Column.KIND, "load");
      row.put(Column.NEEDS, word(load.condition()));
      yes(row, Column.BY_WHEELS, load.byWheels());
    } else if (step instanceof Step.HandOver later) {
      row.put(Column.KIND, "hand-over");
      row.put(Column.DUE, later.due());
    }
  }

  private static List<Map<Column, String>> fastener(Map<Column, String> row, Fastener fastener) {
    row.put(Column.KIND, "fasten");
    row.put(Column.FASTENER, fastener.name());
    row.put(Column.THREAD, fastener.thread());
    String drive = DriveSize.shown(fastener.drive());
    row.put(Column.SOCKET, drive.endsWith(" in") ? drive : number(fastener.drive()));
    row.put(Column.HARDWARE, word(fastener.part().hardware()));
    row.put(Column.ONE_TIME, fastener.part().oneTimeUse() ? "yes" : "no");
    String renew = renew(fastener.part());
    if (!renew.isEmpty()) {
      row.put(Column.RENEW, renew);
    }
    row.put(Column.LUBRICATION, word(fastener.part().lubrication()));
    sizes(row, fastener.joint().sizes());
    row.put(Column.NEEDS, word(fastener.needs()));
    fastener.joint().kind().ifPresent(kind -> row.put(Column.JOINT, word(kind)));
    fastener.joint().arm().ifPresent(arm -> row.put(Column.ARM, arm));
    fastener.joint().reason().ifPresent(reason -> row.put(Column.REASON, reason));
    fastener.joint().nutClass().ifPresent(nut -> row.put(Column.NUT_CLASS, nut));
    fastener
        .joint()
        .tapped()
        .ifPresent(
            tapped -> {
              row.put(Column.TAPPED_IN, word(tapped.material()));
              tapped.engagement().ifPresent(mm -> row.put(Column.ENGAGEMENT, number(mm)));
            });
    yes(row, Column.WHEEL, fastener.joint().wheel());
    yes(row, Column.LEFT_HAND, fastener.manner().leftHand());
    yes(row, Column.BY_HAND, fastener.manner().byHand());
    fastener.manner().counterHold().ifPresent(with -> row.put(Column.COUNTER_HOLD, with));
    fastener.manner().runDown().ifPresent(how -> row.put(Column.RUN_DOWN, word(how)));
    fastener.manner().cure().ifPresent(t -> row.put(Column.CURE, String.valueOf(t.toMinutes())));
    if (fastener.set().count() != 1) {
      row.put(Column.COUNT, String.valueOf(fastener.set().count()));
    }
    if (!fastener.set().order().isEmpty()) {
      row.put(
          Column.ORDER,
          fastener.set().order().stream().map(String::valueOf).collect(Collectors.joining("-")));
    }
    List<Map<Column, String>> rows = new ArrayList<>();
    for (Variant variant : fastener.variants()) {
      Map<Column, String> one = TableText.row();
      one.putAll(row);
      variant.marking().ifPresent(marking -> one.put(Column.MARKING, marking.text()));
      one.put(
          Column.TORQUE,
          variant.stages().stream().map(StepText::stage).collect(Collectors.joining(" + ")));
      beside(one, variant.stages());
      rows.add(one);
    }
    return rows;
  }

  private static void sizes(Map<Column, String> row, Sizes sizes) {
    sizes
        .clamped()
        .ifPresent(
            clamped -> {
              row.put(Column.CLAMPED, number(clamped.length()));
              number(row, Column.SHANK, clamped.shank());
              number(row, Column.CLAMPED_OUTER, clamped.outer());
              number(row, Column.CLAMPED_INNER, clamped.inner());
              row.put(Column.CLAMPED_MATERIAL, word(clamped.material()));
            });
    sizes
        .seat()
        .ifPresent(
            seat -> {
              row.put(Column.SEAT, word(seat.shape()));
              number(row, Column.SEAT_OUTER, seat.outer());
              number(row, Column.SEAT_INNER, seat.inner());
              number(row, Column.SEAT_ANGLE, seat.angle());
            });
    sizes.friction().ifPresent(known -> friction(row, known));
  }

  private static void friction(Map<Column, String> row, Sizes.FrictionKnown known) {
    if (known.thread().equals(known.seat())) {
      row.put(Column.FRICTION, span(known.thread()));
    } else {
      row.put(Column.THREAD_FRICTION, span(known.thread()));
      row.put(Column.SEAT_FRICTION, span(known.seat()));
    }
  }

  private static String span(Sizes.Span span) {
    return number(span.least()) + " to " + number(span.most());
  }

  private static void number(Map<Column, String> row, Column column, Optional<BigDecimal> value) {
    value.ifPresent(number -> row.put(column, number(number)));
  }

  /** What stands beside the stages: an entry for each angle, or for each torque. */
  private static void beside(Map<Column, String> row, List<Stage> stages) {
    List<Stage.AngleStage> angles = new ArrayList<>();
    List<Stage.TorqueStage> torques = new ArrayList<>();
    for (Stage stage : stages) {
      if (stage instanceof Stage.TorqueStage torque) {
        torques.add(torque);
      } else if (stage instanceof Stage.AngleStage angle && !angle.backOff()) {
        angles.add(angle);
      }
    }
    entries(row, Column.BEYOND_YIELD, angles, a -> a.beyondYield().map(yes -> yes ? "yes" : "no"));
    entries(row, Column.TORQUE_AFTER, angles, a -> a.finalTorque().map(StepText::band));
    entries(row, Column.ADAPTOR, torques, t -> t.dialled().map(StepText::adaptor));
  }

  private static <S> void entries(
      Map<Column, String> row, Column column, List<S> stages, Function<S, Optional<String>> entry) {
    if (stages.stream().anyMatch(stage -> entry.apply(stage).isPresent())) {
      row.put(
          column,
          stages.stream()
              .map(stage -> entry.apply(stage).orElse(BesideStages.NONE))
              .collect(Collectors.joining(BesideStages.BETWEEN)));
    }
  }

  private static String band(Stage.AngleStage.Band band) {
    String unit = " " + band.most().unit().symbol();
    return number(band.least().amount()) + " to " + number(band.most().amount()) + unit;
  }

  private static String adaptor(Dialled dialled) {
    return "wrench "
        + number(dialled.wrench())
        + " extension "
        + number(dialled.extension())
        + " angle "
        + number(dialled.angle());
  }

  private static String renew(Fastener.Part part) {
    Stream<String> limit =
        part.reuse().stream()
            .map(
                reuse ->
                    "up to "
                        + number(reuse.most())
                        + (reuse.by() == ReuseBy.LENGTH ? " mm" : " uses"));
    return Stream.concat(part.renew().stream().map(StepText::word), limit)
        .collect(Collectors.joining(" "));
  }

  private static String stage(Stage stage) {
    if (stage instanceof Stage.TorqueStage torque) {
      String unit = " " + torque.target().unit().symbol();
      if (torque.form() == Stage.TorqueStage.Form.RANGE) {
        return number(torque.least().amount()) + " to " + number(torque.most().amount()) + unit;
      }
      String check = torque.form() == Stage.TorqueStage.Form.CHECK_PASS ? "check " : "";
      return check
          + number(torque.target().amount())
          + unit
          + " ± "
          + number(torque.plusMinus())
          + unit;
    }
    Stage.AngleStage angle = (Stage.AngleStage) stage;
    return (angle.backOff() ? "back off " : "")
        + number(angle.target().degrees())
        + "° ± "
        + number(angle.plusMinus())
        + "°";
  }

  private static void yes(Map<Column, String> row, Column column, boolean yes) {
    if (yes) {
      row.put(column, "yes");
    }
  }

  private static String word(Enum<?> constant) {
    return Kebab.of(constant);
  }

  /** A number that can be read in one way only: never with three decimals. */
  static String number(BigDecimal value) {
    BigDecimal plain = Amounts.tidy(value);
    return (plain.scale() == 3 ? plain.setScale(4, RoundingMode.UNNECESSARY) : plain)
        .toPlainString();
  }
}
