package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.undercall.core.intent.IntentKind;

/**
 * The whole behaviour in one table: what is done with each intent in each phase.
 *
 * <p>A row is an intent, a column a phase by its code, a cell the word of a {@link Rule}. A missing
 * or double row, a missing or double column, or an unknown word fails when the class is loaded.
 */
final class Table {
  private static final String TEXT =
      """
                             BRF  JRB  DO  CHK  MEA  HDW  MRK  BYH  GAT  RUN  BGN  TRB  TRQ  ANG  WAI  LOD  HND  WIT  RBK  LRB  WRB  NOT  HLD  SHF  ALL  CLS  END
      CAUTIONS_UNDERSTOOD    begn miss -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    nonm -    -    -
      JOB_TOLD               told told -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    tech -    -    -
      STEP_COMPLETED         miss -    done miss miss miss miss miss miss miss miss miss miss miss wait lded hand miss miss miss miss -    -    nonm -    -    -
      CHECK_PASSED           -    -    -    pass -    -    -    -    -    -    -    -    -    -    -    -    -    miss -    -    -    -    -    -    -    -    -
      CHECK_FAILED           -    -    -    fail -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -
      VALUE_CALLED           -    -    -    -    meas miss miss miss miss rund miss miss call call -    -    -    -    agan -    -    -    -    -    -    -    -
      READING_CALLED         -    -    -    -    meas -    -    -    -    -    -    -    -    -    -    -    -    -    agan -    -    -    -    -    -    -    -
      TORQUE_COMPLETED       -    -    -    -    -    miss miss miss miss miss miss miss stag othr -    -    -    miss miss miss miss -    -    -    -    -    -
      ANGLE_COMPLETED        -    -    -    -    -    miss miss miss miss miss miss miss othr stag -    -    -    miss miss miss miss -    -    -    -    -    -
      FINAL_TORQUE           -    -    finl finl finl finl finl finl finl finl -    -    finl -    finl finl finl finl -    -    -    -    -    -    finl finl -
      TROUBLE                -    -    trbl trbl trbl trbl trbl trbl trbl trbl trbl trbl trbl trbl trbh trbh trbh trbl trbl trbl trbl -    -    -    trbh trbh -
      SETTLED                -    -    -    chkr -    -    -    -    -    -    -    fixd -    -    -    -    -    -    -    -    -    -    -    -    -    -    -
      LOOSENED               -    -    -    -    -    -    -    loos loos loos loos -    loos loos -    -    -    wlos -    -    -    -    -    -    -    -    -
      TURNED_SO_FAR          -    -    -    -    -    -    -    -    miss -    trnd -    -    -    -    -    -    -    trnd -    -    -    -    -    -    -    -
      OUT_OF_ORDER           -    -    ordr ordr ordr -    -    -    -    ordr -    -    ordr ordr ordr ordr ordr ordr -    -    -    -    -    -    -    -    -
      READ_BACK_RIGHT        -    jkep -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    miss rght miss miss -    -    -    -    -    -
      READ_BACK_WRONG        take drop take take take take take take take take take take take take take take take take drop drop drop -    -    -    take take -
      CORRECTED              -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    corr -    -    -    -    -    -    -    -
      REPEAT                 rept rept rept rept rept rept rept rept rept rept rept rept rept rept rept rept rept rept rept rept rept -    rept stnd rept rept -
      WHAT_IS_LEFT           -    -    left left left left left left left left left left left left left left left left -    -    -    -    left left left left -
      WHERE_AM_I             -    -    wher wher wher wher wher wher wher wher wher wher wher wher wher wher wher wher -    -    -    -    wher wher wher wher -
      SAY_MORE               more more more more more more more more more more more more more more more more more more more more more -    more more more more -
      SAY_LESS               less less less less less less less less less less less less less less less less less less less less less -    less less less less -
      WRENCH_NAMED           -    -    -    -    -    wrch wrch wrch wrch wrch wrch -    wrch wrch -    -    -    -    -    -    -    -    -    -    -    -    -
      OVERDUE                -    -    -    -    -    -    -    -    -    -    -    -    over -    -    -    -    -    -    -    -    -    -    -    -    -    -
      WRENCH_SETTING         -    -    -    -    -    -    -    -    -    -    -    -    sett sett -    -    -    -    -    -    -    -    -    -    -    -    -
      WHICH_ONE              -    -    -    -    -    -    -    -    -    -    whch -    whch whch -    -    -    -    -    -    -    -    -    -    -    -    -
      OTHER_UNIT             -    -    -    -    -    -    -    -    -    -    -    -    unit -    -    -    -    -    -    -    -    -    -    -    -    -    -
      WHY_THIS_VALUE         -    -    -    -    -    whyn -    -    -    -    -    -    why  why  -    -    -    -    -    -    -    -    -    -    -    -    -
      GO_TO_STEP             -    -    go   go   go   go   go   go   go   go   go   go   go   go   go   go   go   go   -    -    -    -    -    -    go   go   -
      STEP_BACK              -    -    back back back back back back back back back back back back back back back back -    -    -    -    -    -    back back -
      PUT_OFF                -    -    off  off  off  off  off  off  off  off  off  off  off  off  off  off  off  off  -    -    -    -    -    -    -    -    -
      FITTED_SNUG            -    -    -    -    -    snug snug byha slos slos lsfr -    slos lsfr -    -    -    -    -    -    -    -    -    -    -    -    -
      REOPEN                 -    -    open open open open open open open open open open open open open open open open -    -    -    -    -    -    open open -
      NOTE                   -    -    note note note note note note note note note note note note note note note note -    -    -    -    -    -    note note -
      FINDING                -    -    find find find find find find find find find find find find find find find find -    -    -    -    -    -    find find -
      NOTE_TEXT              -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    text -    -    -    -    -
      HOLD                   -    -    hold hold hold hold hold hold hold hold hold hold hold hold hold hold hold hold -    -    hold -    -    -    hold hold -
      RESUME                 miss -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    resu same -    -    -
      SHIFT_CHANGE           -    -    hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr hovr -    hovr stnd hovr hovr -
      WITNESS_NAMED          -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    witn -    -    witn -    -    -    -    -    -
      WITNESSED              -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    witn -    -    seen -    -    -    -    -    -
      WHEELS_CARRY           -    -    cary cary cary cary cary cary cary cary cary cary cary cary cary cary cary cary -    cary -    -    -    -    cary cary -
      KNUCKLE_JACKED         -    -    jckd jckd jckd jckd jckd jckd jckd jckd jckd jckd jckd jckd jckd jckd jckd jckd -    jckd -    -    -    -    jckd jckd -
      ARCH_HEIGHT            -    -    hght hght hght hght hght hght hght hght hght hght hght hght hght hght hght hght -    hght -    -    -    -    hght hght -
      HANGS_FREE             -    -    hang hang hang hang hang hang hang hang hang hang hang hang hang hang hang hang -    hang -    -    -    -    hang hang -
      RIDE_HEIGHT_READ_BACK  -    -    -    -    -    -    -    -    miss -    -    -    -    -    -    miss -    -    -    load -    -    -    -    -    -    -
      FULL_DROOP_READ_BACK   -    -    -    -    -    -    -    -    miss -    -    -    -    -    -    miss -    -    -    load -    -    -    -    -    -    -
      CAR_RAISED             chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd -
      CAR_LOWERED            chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd -
      JACK_MOVED             chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd chgd -
      HEAD_MARKING           -    -    -    -    -    miss mark mlos mlos mlos lsfr -    mlos lsfr -    -    -    -    mkag -    -    -    -    -    -    -    -
      NEW_HARDWARE           -    -    -    -    -    hdwr -    -    -    -    -    newh -    -    -    -    -    -    -    -    -    -    -    -    -    -    -
      HARDWARE_LENGTH        -    -    -    -    -    used -    -    -    -    -    -    -    -    -    -    -    -    usag -    -    -    -    -    -    -    -
      HARDWARE_USES          -    -    -    -    -    used -    -    -    -    -    -    -    -    -    -    -    -    usag -    -    -    -    -    -    -    -
      SEVERAL                -    -    -    -    -    each -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -
      TIMER_START            -    -    -    -    -    -    -    -    -    -    -    -    -    -    timr -    -    -    -    -    -    -    -    -    -    -    -
      TIMER_SET              -    -    tset tset tset tset tset tset tset tset tset tset tset tset tset tset tset tset -    -    -    -    tset tset tset tset -
      TIMER_LEFT             -    -    tlft tlft tlft tlft tlft tlft tlft tlft tlft tlft tlft tlft tlft tlft tlft tlft -    -    -    -    tlft tlft tlft tlft -
      TIMER_CANCEL           -    -    tcan tcan tcan tcan tcan tcan tcan tcan tcan tcan tcan tcan tcan tcan tcan tcan -    -    -    -    tcan tcan tcan tcan -
      TIMER_ENDED            -    -    tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend tend -
      STEP_TIME              -    -    stim stim stim stim stim stim stim stim stim stim stim stim stim stim stim stim -    -    -    -    stim stim -    stim -
      WORK_TIME              -    -    wtim wtim wtim wtim wtim wtim wtim wtim wtim wtim wtim wtim wtim wtim wtim wtim -    -    -    -    wtim wtim wtim wtim -
      NOTHING_HEARD          here here here here here here here here here here here here here here here here here here here here here here -    -    here here -
      CLOCK_JUMPED           cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset cset -
      SIDE_CHANGE            -    -    side side side side side side side side side side side side side side side side -    -    -    -    -    -    -    side -
      END_OF_WORK            -    -    end  end  end  end  end  end  end  end  end  end  end  end  end  end  end  end  -    -    -    -    -    -    comp end  -
      BE_QUIET               -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -
      CANCEL_THAT            take drop take take take take take take take take take take take take take take take take drop drop drop -    -    -    take take -
      ATTENTION              -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -    -
      DENIED                 nope nope nope nope nope nope nope nope nope nope nope nope nope nope nope nope nope nope nope nope nope -    nope nope nope nope -
      DANGER                 dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang dang -
      NO                     what drop what what what what what what what what what what what what what what what what nodr drop drop -    phrs phrs what what -
      SHORT_ANSWER           phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs phrs -    phrs phrs phrs phrs -
      UNCLEAR                ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    ?    -
      """;

  private static final Map<IntentKind, Map<Phase, Rule>> CELLS = parse(TEXT);

  private Table() {}

  /** What is done with an intent in a phase. */
  static Rule rule(Phase phase, IntentKind kind) {
    return CELLS.get(kind).get(phase);
  }

  /** The intents that are listened for in a phase. */
  static Set<IntentKind> heard(Phase phase) {
    Set<IntentKind> heard = EnumSet.noneOf(IntentKind.class);
    for (IntentKind kind : IntentKind.values()) {
      if (kind.isHeard() && rule(phase, kind).heard()) {
        heard.add(kind);
      }
    }
    return heard;
  }

  /** The intents that are listened for in a phase and are not refused in any case. */
  static Set<IntentKind> offered(Phase phase) {
    Set<IntentKind> offered = heard(phase);
    offered.removeIf(kind -> rule(phase, kind).outcomes().equals(Set.of(Outcome.REFUSED)));
    return offered;
  }

  /** Reads a table; package-private so that its own checks can be tested. */
  static Map<IntentKind, Map<Phase, Rule>> parse(String text) {
    List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
    List<Phase> columns = columns(lines.get(0));
    Map<IntentKind, Map<Phase, Rule>> cells = new EnumMap<>(IntentKind.class);
    for (String line : lines.subList(1, lines.size())) {
      List<String> words = List.of(line.strip().split("\\s+"));
      IntentKind kind = IntentKind.valueOf(words.get(0));
      if (words.size() != columns.size() + 1) {
        throw new IllegalStateException("a cell is missing or double in row " + kind);
      }
      Map<Phase, Rule> row = new EnumMap<>(Phase.class);
      for (int i = 0; i < columns.size(); i++) {
        row.put(columns.get(i), Rule.called(words.get(i + 1)));
      }
      if (cells.put(kind, row) != null) {
        throw new IllegalStateException("the row is double: " + kind);
      }
    }
    requireAll(cells.keySet(), IntentKind.values(), "row");
    return cells;
  }

  private static List<Phase> columns(String line) {
    Map<String, Phase> byCode =
        Arrays.stream(Phase.values()).collect(Collectors.toMap(Phase::code, Function.identity()));
    List<Phase> columns = new ArrayList<>();
    for (String code : List.of(line.strip().split("\\s+"))) {
      Phase phase = byCode.remove(code);
      if (phase == null) {
        throw new IllegalStateException("the column is double or unknown: " + code);
      }
      columns.add(phase);
    }
    requireAll(Set.copyOf(columns), Phase.values(), "column");
    return columns;
  }

  private static <E> void requireAll(Set<E> found, E[] wanted, String what) {
    for (E each : wanted) {
      if (!found.contains(each)) {
        throw new IllegalStateException("the " + what + " is missing: " + each);
      }
    }
  }
}
