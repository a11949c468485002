package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.undercall.core.event.Moment;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.intent.SpokenUnit;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Habit;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.JobField;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Trouble;

/**
 * Every sequence of intents and restarts in a procedure, breadth first, each state once, watched by
 * {@link Promises}. A state is what the program keeps and what the promises keep; how often
 * something was not understood changes words alone, and is left to the random work.
 */
final class Search {
  private static final Moment NOW =
      new Moment(OffsetDateTime.parse("2026-01-05T08:00:00+01:00"), 0);

  /** Kinds that only ask, wait or note, or are another word for one that is in. */
  private static final Set<IntentKind> LEFT_OUT =
      EnumSet.of(
          IntentKind.REPEAT,
          IntentKind.WHAT_IS_LEFT,
          IntentKind.WHERE_AM_I,
          IntentKind.NOTE,
          IntentKind.FINAL_TORQUE,
          IntentKind.JOB_TOLD,
          IntentKind.WITNESS_NAMED,
          IntentKind.WITNESSED,
          IntentKind.FINDING,
          IntentKind.NOTE_TEXT,
          IntentKind.TIMER_START,
          IntentKind.TIMER_LEFT,
          IntentKind.TIMER_SET,
          IntentKind.TIMER_CANCEL,
          IntentKind.TIMER_ENDED,
          IntentKind.STEP_TIME,
          IntentKind.WORK_TIME,
          IntentKind.NOTHING_HEARD,
          IntentKind.CAR_LOWERED,
          IntentKind.JACK_MOVED,
          IntentKind.SHORT_ANSWER,
          IntentKind.ARCH_HEIGHT,
          IntentKind.WRENCH_SETTING,
          IntentKind.WHICH_ONE,
          IntentKind.TROUBLE,
          IntentKind.WRENCH_NAMED,
          IntentKind.OVERDUE,
          IntentKind.SETTLED,
          IntentKind.OTHER_UNIT,
          IntentKind.WHY_THIS_VALUE);

  private record Node(Session session, Promises promises) {}

  /**
   * What was found.
   *
   * @param states how many different states
   * @param transitions how many decisions, with those of restarts
   * @param depth the most intents on the shortest way to a state
   * @param whole whether no further state can be reached
   */
  record Found(int states, long transitions, int depth, boolean whole) {
    @Override
    public String toString() {
      return "%,d states, %,d transitions, depth %d, %s"
          .formatted(states, transitions, depth, whole ? "a fixed point" : "ended there");
    }
  }

  /** Where the work and the talk stand, apart from the steps and the loads. */
  private record Standing(
      int at,
      Optional<StepRef> lastClosed,
      Talk.Mode mode,
      Optional<Pending> pending,
      Optional<Talk.Last> last,
      Optional<StepRef> hinted,
      Car car,
      Bench bench,
      Who who) {}

  /** Who works, and who takes the work over. */
  private record Who(String technician, String before, Optional<String> next) {
    static Who of(Account account) {
      return new Who(account.technician(), account.before(), account.next());
    }

    Account account() {
      return new Account(
          "", technician, before, next, Map.of(), Set.of(), Optional.empty(), Crew.NOT_GIVEN);
    }
  }

  /** Different parts of states, each with its number as a character. */
  private static final class Parts<T> {
    private final List<T> parts = new ArrayList<>();
    private final Map<T, Integer> numbers = new HashMap<>();

    char number(T part) {
      int number = numbers.computeIfAbsent(part, p -> parts.size());
      if (number == parts.size()) {
        parts.add(part);
      }
      if (number > Character.MAX_VALUE) {
        throw new IllegalStateException("more different parts than a key can hold");
      }
      return (char) number;
    }

    T part(char number) {
      return parts.get(number);
    }
  }

  private final Walk walk;

  /** Whether anything needs a second person; else it makes no difference who worked on what. */
  private final boolean watched;

  private final List<Intent> alphabet;
  private final Parts<StepState> states = new Parts<>();
  private final Parts<StepBook> books = new Parts<>();
  private final Parts<Standing> standings = new Parts<>();
  private final Parts<Loads> loads = new Parts<>();
  private final Parts<Promises.Kept> kept = new Parts<>();

  /** The nodes, each as the numbers of its parts. */
  private final Set<String> seen = new HashSet<>();

  private List<String> found = new ArrayList<>();
  private long transitions;

  private Search(Walk walk, Set<IntentKind> without) {
    this.walk = walk;
    watched = walk.places().stream().anyMatch(place -> place.step().head().witness());
    long onOneSide = walk.places().stream().filter(p -> p.ref().side() != Side.RIGHT).count();
    alphabet =
        Stream.of(
                alphabet((int) Math.max(2, onOneSide)).stream(),
                ofSets(walk),
                ofWrenches(walk),
                ofWitnesses(walk))
            .flatMap(intents -> intents)
            .filter(intent -> !without.contains(intent.kind()))
            .toList();
  }

  /**
   * Searches as far as a depth.
   *
   * @param without kinds that are never said in this search
   * @throws AssertionError naming the promise, if one is broken
   */
  static Found through(Walk walk, int depth, Set<IntentKind> without) {
    return new Search(walk, without).run(depth);
  }

  private Found run(int depth) {
    add(new Node(Session.start(walk), new Promises(walk)));
    int deepest = 0;
    while (!found.isEmpty() && deepest < depth) {
      List<String> last = found;
      found = new ArrayList<>();
      last.forEach(key -> expand(node(key)));
      deepest += found.isEmpty() ? 0 : 1;
    }
    return new Found(seen.size(), transitions, deepest, found.isEmpty());
  }

  private void expand(Node node) {
    for (Intent intent : alphabet) {
      if (Table.rule(node.session().phase(), intent.kind()).heard()) {
        Decision decision = Decider.decide(node.session(), intent, NOW);
        Promises promises = node.promises().copy();
        promises.watch(intent, decision);
        follow(node, decision, promises);
      }
    }
    for (long secondsAway : List.of(60L, 3600L)) {
      Decision up = Decider.takeUp(node.session(), "test", Duration.ofSeconds(secondsAway));
      Promises promises = node.promises().copy();
      promises.restarted(up);
      follow(node, up, promises);
    }
  }

  private void follow(Node node, Decision decision, Promises promises) {
    RandomWorkTest.requirePossible(node.session(), decision);
    transitions++;
    add(new Node(node.session().after(decision.events()), promises));
  }

  private void add(Node node) {
    Progress progress = node.session().progress();
    Talk talk = node.session().talk();
    StringBuilder numbers = new StringBuilder();
    progress.states().stream()
        .map(state -> watched ? state : state.watch(Watch.NOBODY))
        .forEach(state -> numbers.append(states.number(state)));
    node.promises().books().forEach(book -> numbers.append(books.number(book)));
    Standing standing =
        new Standing(
            progress.at(),
            progress.lastClosed(),
            talk.mode(),
            talk.pending(),
            talk.last(),
            talk.hinted(),
            node.session().car(),
            node.session().bench(),
            Who.of(node.session().account()));
    numbers.append(standings.number(standing));
    numbers.append(loads.number(node.session().loads()));
    Promises.Kept books = node.promises().kept();
    numbers.append(kept.number(watched ? books : books.withoutHands()));
    String key = numbers.toString();
    if (seen.add(key)) {
      found.add(key);
    }
  }

  /** The node that {@link #add} made a key of, with nothing misunderstood of late. */
  private Node node(String key) {
    int steps = walk.places().size();
    Standing standing = standings.part(key.charAt(2 * steps));
    List<StepState> of = key.chars().limit(steps).mapToObj(n -> states.part((char) n)).toList();
    List<StepBook> bookOf =
        key.chars().skip(steps).limit(steps).mapToObj(n -> books.part((char) n)).toList();
    Session session =
        Session.start(walk)
            .with(new Progress(standing.at(), of, standing.lastClosed(), Optional.empty()))
            .with(loads.part(key.charAt(2 * steps + 1)))
            .with(standing.car())
            .with(standing.bench())
            .with(standing.who().account())
            .with(
                new Talk(
                    standing.mode(),
                    standing.pending(),
                    Talk.Missed.NONE,
                    standing.last(),
                    Habit.NEW,
                    standing.hinted()));
    return new Node(session, new Promises(walk, bookOf, kept.part(key.charAt(2 * steps + 2))));
  }

  /** What is said of the largest set of a walk; nothing if it has none. */
  private static Stream<Intent> ofSets(Walk walk) {
    int count =
        walk.places().stream()
            .filter(place -> place.step() instanceof Step.Fasten)
            .mapToInt(place -> ((Step.Fasten) place.step()).fastener().set().count())
            .max()
            .orElse(1);
    Stream.Builder<Intent> intents = Stream.builder();
    for (IntentKind kind : List.of(IntentKind.TORQUE_COMPLETED, IntentKind.ANGLE_COMPLETED)) {
      for (int position = 1; count > 1 && position <= count; position++) {
        intents.add(new Intent.OfPosition(kind, position));
        intents.add(new Intent.Denied(kind, Optional.of(position)));
      }
      if (count > 1) {
        intents.add(new Intent.Counted(kind, count, count));
      }
    }
    if (count == 2) {
      intents.add(new Intent.OfTrouble(Trouble.BROKEN, Optional.of(2)));
      intents.add(new Intent.Plain(IntentKind.SETTLED));
    }
    return intents.build();
  }

  /** What is said of wrenches, if there are any. */
  private static Stream<Intent> ofWrenches(Walk walk) {
    return walk.procedure().tools().isEmpty()
        ? Stream.of()
        : Stream.of(
            new Intent.OfPosition(IntentKind.WRENCH_NAMED, 1),
            new Intent.OfPosition(IntentKind.WRENCH_NAMED, 2),
            new Intent.Overdue(OverdueReason.AS_TOLD),
            number(IntentKind.VALUE_CALLED, "53"),
            number(IntentKind.TORQUE_COMPLETED, "53"));
  }

  /** What is said of who works and who saw it, if anything is to be seen. */
  private static Stream<Intent> ofWitnesses(Walk walk) {
    return walk.places().stream().noneMatch(place -> place.step().head().witness())
        ? Stream.of()
        : Stream.of("AB", "CD")
            .flatMap(
                name ->
                    Stream.<Intent>of(
                        new Intent.OfJob(JobField.TECHNICIAN, name),
                        new Intent.OfWitness(IntentKind.WITNESS_NAMED, name),
                        new Intent.OfWitness(IntentKind.WITNESSED, name),
                        new Intent.Denied(IntentKind.WITNESSED)))
            .distinct();
  }

  private static List<Intent> alphabet(int steps) {
    List<Intent> intents = new ArrayList<>();
    for (IntentKind kind : EnumSet.complementOf(EnumSet.copyOf(LEFT_OUT))) {
      switch (kind) {
        case VALUE_CALLED, CORRECTED, TORQUE_COMPLETED, ANGLE_COMPLETED -> {
          for (String value : List.of("52", "60", "61", "38")) {
            intents.add(number(kind, value));
          }
        }
        case READING_CALLED ->
            intents.add(
                new Intent.OfReading(
                    kind, new BigDecimal("-60"), Optional.of(SpokenUnit.MINUTES), true));
        case HARDWARE_LENGTH -> {
          intents.add(number(kind, "52.3"));
          intents.add(number(kind, "53"));
        }
        case HARDWARE_USES -> {
          intents.add(number(kind, "1"));
          intents.add(number(kind, "3"));
        }
        case TURNED_SO_FAR -> {
          for (String degrees : List.of("0", "22", "60", "99")) {
            intents.add(number(kind, degrees));
          }
        }
        case OUT_OF_ORDER -> intents.add(new Intent.OutOfOrder(OrderReason.AS_THE_MAKER_SAYS));
        case SIDE_CHANGE, RIDE_HEIGHT_READ_BACK, FULL_DROOP_READ_BACK -> {
          intents.add(new Intent.OfSide(kind, Side.LEFT));
          intents.add(new Intent.OfSide(kind, Side.RIGHT));
        }
        case GO_TO_STEP -> {
          for (int step = 1; step <= steps; step++) {
            intents.add(new Intent.OfStep(kind, step));
          }
        }
        case HEAD_MARKING -> {
          intents.add(new Intent.Marking(new HeadMarking("8.8")));
          intents.add(new Intent.Marking(new HeadMarking("10.9")));
          intents.add(new Intent.Marking(new HeadMarking("12.9")));
        }
        case SEVERAL -> {
          for (String marking : List.of("8.8", "12.9")) {
            intents.add(
                new Intent.Several(
                    List.of(
                        new Intent.Plain(IntentKind.NEW_HARDWARE),
                        new Intent.Marking(new HeadMarking(marking)))));
          }
        }
        case HANGS_FREE -> {
          intents.add(new Intent.Plain(kind));
          intents.add(new Intent.OfSide(kind, Side.LEFT));
        }
        case CLOCK_JUMPED -> intents.add(new Intent.ClockJumped(7_200_000, 7_200_000));
        case PUT_OFF -> intents.add(new Intent.PutOff(PutOffReason.RIDE_HEIGHT));
        case UNCLEAR -> intents.add(new Intent.Unclear(Intent.Unclear.Reason.NOT_A_PHRASE));
        case DENIED -> {
          intents.add(new Intent.Denied(IntentKind.STEP_COMPLETED));
          intents.add(new Intent.Denied(IntentKind.WHEELS_CARRY));
        }
        default -> intents.add(new Intent.Plain(kind));
      }
    }
    intents.add(new Intent.Plain(IntentKind.TORQUE_COMPLETED));
    intents.add(new Intent.Plain(IntentKind.ANGLE_COMPLETED));
    return intents;
  }

  private static Intent number(IntentKind kind, String value) {
    SpokenNumber number =
        new SpokenNumber(new BigDecimal(value), SpokenNumber.Style.DIGIT_BY_DIGIT);
    return new Intent.OfNumber(kind, number, Optional.empty());
  }
}
