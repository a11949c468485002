package org.undercall.core.board;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.undercall.core.decision.Car;
import org.undercall.core.decision.Pending;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.decision.StepState;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Reuse;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.ReuseBy;

/**
 * What is to be done now.
 *
 * @param phase what the session waits for
 * @param figure the number to be read from afar
 * @param stages the stages of the fastener at hand; empty while its values are not released
 * @param set where a set stands at the stage at hand, by position; empty for a single fastener
 * @param order the positions of that set in the order of tightening; empty if it is free
 * @param check the question that the step at hand is closed with; empty if it has none
 * @param gear what to take in hand
 * @param details about the fastener or the step, in short
 */
public record Task(
    Phase phase,
    Figure figure,
    List<Mark> stages,
    List<Spot> set,
    List<Integer> order,
    String check,
    List<Gear> gear,
    List<String> details) {
  /** The phases in which the values of the fastener at hand may be seen. */
  private static final Set<Phase> RELEASED =
      EnumSet.of(
          Phase.TORQUE,
          Phase.ANGLE,
          Phase.WITNESS,
          Phase.WITNESS_READ_BACK,
          Phase.CLOSED_STEP,
          Phase.ALL_CLOSED);

  private static final Figure NONE = new Figure("", "", "");

  public Task {
    stages = List.copyOf(stages);
    set = List.copyOf(set);
    order = List.copyOf(order);
    gear = List.copyOf(gear);
    details = List.copyOf(details);
  }

  /**
   * A number to be read from afar.
   *
   * @param digits as written; empty if there is no number
   * @param unit its symbol
   * @param beside what may differ, or what the number is for
   */
  public record Figure(String digits, String unit, String beside) {}

  /**
   * One stage.
   *
   * @param torque whether it is a torque; else an angle
   * @param text the value with its unit
   * @param closed whether it is closed in this go
   */
  public record Mark(boolean torque, String text, boolean closed) {}

  /**
   * One fastener of a set.
   *
   * @param number its position, from 1
   * @param state whether it was called at the stage at hand
   */
  public record Spot(int number, SpotState state) {}

  /** Whether a fastener of a set was called at the stage at hand. */
  public enum SpotState {
    CLOSED,
    NEXT,
    OPEN
  }

  /** What is to be done now in a session. */
  public static Task of(Session session) {
    Step step = session.place().step();
    boolean released = RELEASED.contains(session.phase());
    List<Mark> stages =
        released && step instanceof Step.Fasten f ? marks(session, f.fastener()) : List.of();
    List<String> details = new ArrayList<>(details(step));
    if (session.account().isApprentice()) {
      details.add("apprentice " + session.account().technician());
    }
    details.addAll(car(session.car()));
    List<Spot> set = set(session);
    List<Integer> order =
        !set.isEmpty() && step instanceof Step.Fasten f ? f.fastener().set().order() : List.of();
    String check = step instanceof Step.Do work ? work.check().orElse("") : "";
    return new Task(
        session.phase(), figure(session), stages, set, order, check, Gear.of(session), details);
  }

  private static List<Spot> set(Session session) {
    boolean tightening =
        session.phase() == Phase.TORQUE
            || session.phase() == Phase.ANGLE
            || session.phase() == Phase.BEGUN
            || session.talk().pending().orElse(null) instanceof Pending.OfSet;
    if (!tightening || !(session.place().step() instanceof Step.Fasten fasten)) {
      return List.of();
    }
    Fastener.FastenerSet set = fasten.fastener().set();
    List<Integer> left = state(session).tightening().pass().left(set.sequence());
    return IntStream.rangeClosed(1, set.several() ? set.count() : 0)
        .mapToObj(n -> new Spot(n, state(n, left)))
        .toList();
  }

  private static SpotState state(int number, List<Integer> left) {
    if (!left.contains(number)) {
      return SpotState.CLOSED;
    }
    return left.get(0) == number ? SpotState.NEXT : SpotState.OPEN;
  }

  private static Figure figure(Session session) {
    Step step = session.place().step();
    return switch (session.phase()) {
      case TORQUE, ANGLE -> figure(session.stage(), session);
      case MEASURE -> measure((Step.Measure) step);
      case READ_BACK, LOAD_READ_BACK, WITNESS_READ_BACK -> pending(session);
      default -> NONE;
    };
  }

  private static Figure figure(Stage stage, Session session) {
    if (stage instanceof Stage.AngleStage angle) {
      String within = "± " + plain(angle.plusMinus()) + "°";
      Optional<BigDecimal> turned = state(session).tightening().turned();
      return new Figure(
          plain(angle.amount()),
          angle.backOff() ? "° back off" : "°",
          turned.map(t -> within + ", " + plain(t) + "° turned before").orElse(within));
    }
    Stage.TorqueStage torque = (Stage.TorqueStage) stage;
    String unit = torque.target().unit().symbol();
    if (torque.form() == Stage.TorqueStage.Form.RANGE) {
      String range = plain(torque.least().amount()) + " to " + plain(torque.most().amount());
      return new Figure(range, unit, "any value in the range");
    }
    String beside =
        torque.dialled().isPresent()
            ? "set with the adaptor on, for " + torque.target()
            : "± " + plain(torque.plusMinus()) + " " + unit;
    return new Figure(plain(torque.amount()), unit, beside);
  }

  private static Figure measure(Step.Measure step) {
    String least = step.limits().least().map(l -> "from " + plain(l)).orElse("");
    String most = step.limits().most().map(m -> " to " + plain(m)).orElse("");
    return new Figure("", step.unit().symbol(), (least + most).strip());
  }

  private static Figure pending(Session session) {
    Pending pending = session.talk().pending().orElseThrow();
    if (pending instanceof Pending.Value value) {
      String symbol = value.value().unit().symbol();
      return new Figure(plain(value.value().amount()), symbol, "as heard");
    }
    if (pending instanceof Pending.Marking marking) {
      return new Figure(marking.marking().text(), "", "head marking as heard");
    }
    if (pending instanceof Pending.Seen seen) {
      return new Figure("", "", "witness " + seen.witness() + ", as heard");
    }
    if (pending instanceof Pending.Load load) {
      String height = load.height().map(h -> plain(h.amount())).orElse("");
      return new Figure(height, height.isEmpty() ? "" : "mm", words(load.proof()));
    }
    if (pending instanceof Pending.Turned turned) {
      return new Figure(plain(turned.degrees()), "°", "turned so far in all, as heard");
    }
    if (pending instanceof Pending.Wrong wrong) {
      return new Figure("", "", words(wrong.trouble()) + ", as heard");
    }
    if (pending instanceof Pending.Reading reading) {
      return new Figure(plain(reading.value()), "°", "turned, as heard");
    }
    if (pending instanceof Pending.OfSet ofSet) {
      return new Figure(ofSet.positions().toString(), "", "of the set, as heard");
    }
    if (pending instanceof Pending.Reuse used) {
      boolean length = used.by() == ReuseBy.LENGTH;
      return new Figure(plain(used.value()), length ? "mm" : "", "used part, as heard");
    }
    if (pending instanceof Pending.OutOfOrder order) {
      return new Figure("", "", "out of order, " + words(order.reason()));
    }
    if (pending instanceof Pending.Later later) {
      return new Figure(Integer.toString(later.steps().size()), "", "closed further on: still so?");
    }
    return new Figure(Integer.toString(session.openSteps()), "", "steps still open");
  }

  private static List<Mark> marks(Session session, Fastener fastener) {
    List<Mark> marks = new ArrayList<>();
    for (Stage stage : session.specified(fastener).orElse(List.of())) {
      boolean closed =
          state(session).closed() || marks.size() < state(session).tightening().stagesClosed();
      boolean torque = stage instanceof Stage.TorqueStage;
      marks.add(new Mark(torque, text(stage), closed));
    }
    return marks;
  }

  private static String text(Stage stage) {
    return stage instanceof Stage.TorqueStage torque
        ? torque.setting().toString()
        : ((Stage.AngleStage) stage).target().toString();
  }

  /** How the car stands and which wheels are not on, as far as that was said. */
  private static List<String> car(Car car) {
    List<String> known = new ArrayList<>();
    switch (car.stance()) {
      case RAISED -> known.add("car raised");
      case JACKED -> known.add("car raised, jack under a knuckle");
      case ON_WHEELS -> known.add("car on its wheels");
      case UNKNOWN -> {
        // nobody said
      }
    }
    car.wheels().entrySet().stream()
        .filter(wheel -> wheel.getValue() != Car.Wheel.ON)
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            wheel ->
                known.add(
                    words(wheel.getKey())
                        + (wheel.getValue() == Car.Wheel.OFF ? " wheel off" : " wheel in doubt")));
    return known;
  }

  private static List<String> details(Step step) {
    List<String> details = new ArrayList<>(ofKind(step));
    if (step.head().witness()) {
      details.add("a witness must see it");
    }
    return details;
  }

  private static List<String> ofKind(Step step) {
    if (step instanceof Step.Fasten fasten) {
      return details(fasten.fastener());
    }
    return step instanceof Step.HandOver item ? List.of(item.due()) : List.of();
  }

  private static List<String> details(Fastener fastener) {
    List<String> details = new ArrayList<>();
    details.add(fastener.name());
    details.add(fastener.thread());
    details.add(words(fastener.part().lubrication()));
    if (fastener.part().oneTimeUse()) {
      details.add(fastener.part().reuse().map(Task::limit).orElse("one-time use"));
    }
    if (fastener.set().count() > 1) {
      details.add(fastener.set().count() + " of them");
    }
    return details;
  }

  private static String limit(Reuse reuse) {
    return reuse.by() == ReuseBy.LENGTH
        ? "new, or at most " + plain(reuse.most()) + " mm long"
        : "new, or used at most " + plain(reuse.mostBefore()) + " times before";
  }

  private static StepState state(Session session) {
    return session.progress().states().get(session.progress().at());
  }

  private static String plain(BigDecimal amount) {
    return amount.toPlainString();
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
