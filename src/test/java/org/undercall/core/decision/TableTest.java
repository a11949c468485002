package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Phrasebook;

@DisplayName("The table")
class TableTest {
  private static final String COLUMNS =
      Arrays.stream(Phase.values()).map(Phase::code).collect(Collectors.joining(" "));

  /** A whole table in which nothing is listened for. */
  private static String whole() {
    return COLUMNS
        + "\n"
        + Arrays.stream(IntentKind.values())
            .map(kind -> row(kind, "-"))
            .collect(Collectors.joining("\n"));
  }

  private static String row(IntentKind kind, String word) {
    return kind + (" " + word).repeat(Phase.values().length);
  }

  private static void fails(String text, String message) {
    RuntimeException fault = assertThrows(RuntimeException.class, () -> Table.parse(text));
    assertTrue(fault.getMessage().contains(message), fault.getMessage());
  }

  @Nested
  @DisplayName("is not read")
  class IsNotRead {
    @Test
    @DisplayName("with a row missing")
    void missingRow() {
      fails(whole().replace(row(IntentKind.NOTE, "-") + "\n", ""), "the row is missing: NOTE");
    }

    @Test
    @DisplayName("with a double row")
    void doubleRow() {
      fails(whole() + "\n" + row(IntentKind.NOTE, "-"), "the row is double: NOTE");
    }

    @Test
    @DisplayName("with a row of an intent that does not exist")
    void unknownRow() {
      fails(whole() + "\n" + row(IntentKind.NOTE, "-").replace("NOTE", "SING"), "SING");
    }

    @Test
    @DisplayName("with a column missing")
    void missingColumn() {
      String without = whole().replace(" END\n", "\n").replaceAll("(?m) -$", "");
      fails(without, "the column is missing: ENDED");
    }

    @Test
    @DisplayName("with a double column")
    void doubleColumn() {
      fails(whole().replace(" END\n", " BRF\n"), "the column is double or unknown: BRF");
    }

    @Test
    @DisplayName("with a column of a phase that does not exist")
    void unknownColumn() {
      fails(whole().replace(" END\n", " XYZ\n"), "the column is double or unknown: XYZ");
    }

    @Test
    @DisplayName("with a cell missing")
    void missingCell() {
      String row = row(IntentKind.NOTE, "-");
      fails(
          whole().replace(row + "\n", row.substring(0, row.length() - 2) + "\n"),
          "a cell is missing or double in row NOTE");
    }

    @Test
    @DisplayName("with a cell too many")
    void doubleCell() {
      String row = row(IntentKind.NOTE, "-");
      fails(whole().replace(row + "\n", row + " -\n"), "a cell is missing or double in row NOTE");
    }

    @Test
    @DisplayName("with a word that is no rule")
    void unknownWord() {
      fails(
          whole().replace(row(IntentKind.NOTE, "-"), row(IntentKind.NOTE, "jump")),
          "no rule is called jump");
    }
  }

  @Nested
  @DisplayName("is read")
  class IsRead {
    @Test
    @DisplayName("when every row, column and cell is there once")
    void readWhole() {
      Map<IntentKind, Map<Phase, Rule>> cells = Table.parse(whole());
      assertEquals(Set.of(IntentKind.values()), cells.keySet());
      cells.values().forEach(row -> assertEquals(Set.of(Phase.values()), row.keySet()));
    }

    @Test
    @DisplayName("with the columns in any order")
    void anyOrder() {
      String turned = whole().replace("BRF JRB DO", "DO JRB BRF");
      String row = row(IntentKind.HOLD, "-");
      String held = row.replaceFirst(" -", " hold");
      Rule rule = Table.parse(turned.replace(row, held)).get(IntentKind.HOLD).get(Phase.DO);
      assertEquals("hold", rule.word());
    }
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(Phase.class)
  @DisplayName("has a rule in every cell of a phase")
  void hasARuleInEveryCell(Phase phase) {
    for (IntentKind kind : IntentKind.values()) {
      assertNotNull(Table.rule(phase, kind), phase + " " + kind);
    }
  }

  @Test
  @DisplayName("uses every rule, and every rule has its own word and an outcome")
  void everyRuleIsUsed() {
    Set<Rule> used = new HashSet<>();
    for (Phase phase : Phase.values()) {
      for (IntentKind kind : IntentKind.values()) {
        used.add(Table.rule(phase, kind));
      }
    }
    assertEquals(Set.copyOf(Rule.all()), used);
    Set<String> words = Rule.all().stream().map(Rule::word).collect(Collectors.toSet());
    assertEquals(Rule.all().size(), words.size());
    Rule.all().forEach(rule -> assertFalse(rule.outcomes().isEmpty(), rule.word()));
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(Phase.class)
  @DisplayName("listens only for what the phrasebook can say")
  void whatIsHeardCanBeSaid(Phase phase) {
    Set<IntentKind> unsayable = EnumSet.noneOf(IntentKind.class);
    Table.heard(phase).stream()
        .filter(kind -> kind != IntentKind.NOTE_TEXT && kind != IntentKind.DENIED)
        .filter(kind -> Phrasebook.wordings(kind).isEmpty())
        .forEach(unsayable::add);
    assertEquals(Set.of(), unsayable);
  }

  @Test
  @DisplayName("listens somewhere for all that the phrasebook can say but a call over the voice")
  void whatCanBeSaidIsHeardSomewhere() {
    Set<IntentKind> heard = EnumSet.noneOf(IntentKind.class);
    Arrays.stream(Phase.values()).map(Table::heard).forEach(heard::addAll);
    Set<IntentKind> spoken = EnumSet.of(IntentKind.NOTE_TEXT, IntentKind.DENIED);
    Arrays.stream(IntentKind.values())
        .filter(kind -> !Phrasebook.wordings(kind).isEmpty())
        .filter(kind -> kind != IntentKind.ATTENTION)
        .filter(kind -> kind != IntentKind.BE_QUIET)
        .forEach(spoken::add);
    assertEquals(spoken, heard);
  }

  @Test
  @DisplayName("hears a note and what cancels a load while a note is spoken, nothing after the end")
  void noteAndEnd() {
    assertEquals(
        EnumSet.of(
            IntentKind.NOTE_TEXT,
            IntentKind.CAR_RAISED,
            IntentKind.CAR_LOWERED,
            IntentKind.JACK_MOVED,
            IntentKind.DANGER),
        Table.heard(Phase.NOTING));
    assertEquals(Set.of(), Table.heard(Phase.ENDED));
  }
}
