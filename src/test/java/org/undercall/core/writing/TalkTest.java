package org.undercall.core.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.reply.Wanted;

@DisplayName("A talk about a procedure")
class TalkTest {
  private static final Judge TAKES_ALL = whole -> List.of();

  /** Answers up to the questions of a fastener. */
  private static Draft begun() {
    Draft draft = Draft.EMPTY;
    for (String answer :
        ("title|vehicle|author|1|source|caution|-|wrench|40 Nm|210 Nm|2026-03-31|-|-|tighten|both"
                + "|fasten|bush bolt")
            .split("\\|", -1)) {
      draft = draft.with(draft.next().orElseThrow(), answer);
    }
    return draft;
  }

  /** A talk at a question of a fastener; what comes before it is filled in. */
  private static Talk at(Wanted wanted) {
    Draft draft = begun();
    while (draft.next().orElseThrow() != wanted) {
      draft = draft.with(draft.next().get(), filled(draft.next().get()));
    }
    return Talk.of(new Interview(draft));
  }

  private static String filled(Wanted wanted) {
    return switch (wanted) {
      case COUNT -> "5";
      case MARKING -> "10.9";
      case STAGE -> "52 ± 3 Nm";
      default -> "-";
    };
  }

  private static Turn hear(Talk talk, String words) {
    return talk.hear(RecognisedPhrase.typed(words), TAKES_ALL);
  }

  private static RecognisedPhrase unsure(String words) {
    return new RecognisedPhrase(
        Arrays.stream(words.split(" ", -1))
            .map(word -> new RecognisedPhrase.Word(word, 0.5, 0, 0))
            .toList());
  }

  private static Optional<Given> last(Talk talk) {
    return talk.interview().draft().last();
  }

  @ParameterizedTest(name = "{0}: \"{1}\" is {2}, read back as \"{3}\"")
  @CsvSource({
    "THREAD, m twelve by one point five, M12x1.5, M 12 by 1.5",
    "THREAD, m one two by one point two five, M12x1.25, M 12 by 1.25",
    "THREAD, m six by one, M6x1, M 6 by 1",
    "HARDWARE, self locking nut, self-locking nut, self locking nut",
    "SOCKET, one eight, 18, 'one eight'",
    "SOCKET, twenty one millimeters, 21, 'two one millimetres'",
    "COUNT, five, 5, five",
    "ORDER, one three five two four, 1-3-5-2-4, '1, 3, 5, 2, 4'",
    "ORDER, none, -, none",
    "ONE_TIME, yes it is, yes, yes",
    "ONE_TIME, no, no, no",
    "LUBRICATION, thread locker, threadlocker, thread locker",
    "JOINT, bonded bush, bonded bush, bonded bush",
    "NEEDS, at ride height, ride height, ride height",
    "NEEDS, full droop, full droop, full droop",
    "NEEDS, any height, any, any height",
    "MARKING, eight point eight, 8.8, 'eight point eight'",
    "MARKING, one zero point nine, 10.9, 'ten point nine'",
    "MARKING, there is none, -, none",
    "MORE_MARKINGS, twelve point nine, 12.9, 'twelve point nine'"
  })
  @DisplayName("takes an answer when what was read back is confirmed")
  void taken(Wanted wanted, String words, String text, String readBack) {
    Talk talk = at(wanted);
    Turn heard = hear(talk, words);
    assertEquals(talk.interview(), heard.next().interview(), "taken unconfirmed");
    assertTrue(
        heard.reply().text().endsWith(": " + readBack + ". Say: that is correct, or say it again."),
        heard.reply().text());
    Turn confirmed = hear(heard.next(), "that is correct");
    assertEquals(Optional.of(new Given(wanted, text)), last(confirmed.next()));
  }

  @Test
  @DisplayName("asks for the tolerance of a stage, and reads both back together")
  void stage() {
    Turn amount = hear(at(Wanted.STAGE), "five two newton meters");
    assertEquals("Five two newton metres. Plus or minus how much?", amount.reply().text());
    Turn both = hear(amount.next(), "three");
    assertTrue(both.reply().text().contains("five two newton metres, plus or minus three."));
    Talk next = hear(both.next(), "that is correct").next();
    assertEquals(Optional.of(new Given(Wanted.STAGE, "52 Nm ± 3 Nm")), last(next));
    Turn angle = hear(hear(next, "six zero degrees").next(), "five degrees");
    Talk turned = hear(angle.next(), "that is correct").next();
    assertEquals(Optional.of(new Given(Wanted.MORE_STAGES, "60° ± 5°")), last(turned));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "STAGE, five two",
    "STAGE, fifteen newton meters",
    "STAGE, a hundred and fifty newton meters",
    "STAGE, six zero degrees",
    "STAGE, none",
    "STAGE, take that one",
    "MORE_STAGES, six zero",
    "MARKING, eight point seven",
    "MARKING, take that one",
    "THREAD, m twelve",
    "THREAD, m twelve by one point seven",
    "SOCKET, eighteen",
    "SOCKET, one eight newton meters",
    "ORDER, one three five two",
    "ORDER, one one five two four",
    "LUBRICATION, take that one",
    "NEEDS, none",
    "ONE_TIME, none",
    "NEEDS, that is correct"
  })
  @DisplayName("asks again for what is no whole answer, and never guesses")
  void notTaken(Wanted wanted, String words) {
    Talk talk = at(wanted);
    Turn heard = hear(talk, words);
    assertEquals(talk.interview(), heard.next().interview());
    assertEquals(Optional.empty(), heard.next().heard());
    assertEquals(Optional.empty(), heard.next().begun());
    assertFalse(heard.reply().sentences().isEmpty());
    assertEquals(1, heard.next().failures());
  }

  @Test
  @DisplayName("asks again for what was not heard well, then offers the keyboard")
  void unsureWords() {
    Talk talk = at(Wanted.STAGE);
    Turn once = talk.hear(unsure("five two newton meters"), TAKES_ALL);
    assertTrue(once.reply().text().startsWith("Not understood. Torque"), once.reply().text());
    Turn twice = once.next().hear(unsure("five two newton meters"), TAKES_ALL);
    assertTrue(twice.reply().text().contains("You can say: let me type."), twice.reply().text());
    assertEquals(Turn.Act.TYPE, hear(twice.next(), "let me type").act());
  }

  @Test
  @DisplayName("does not take a confirmation that was not heard well")
  void unsureConfirmation() {
    Turn heard = hear(at(Wanted.THREAD), "m twelve by one point five");
    Turn unsure = heard.next().hear(unsure("that is correct"), TAKES_ALL);
    assertEquals(heard.next().interview(), unsure.next().interview());
    assertEquals(heard.next().heard(), unsure.next().heard());
  }

  @Test
  @DisplayName("leaves chatter alone")
  void chatter() {
    Talk talk = at(Wanted.STAGE);
    Turn turn = talk.hear(unsure("[unk] [unk]"), TAKES_ALL);
    assertEquals(talk, turn.next());
    assertTrue(turn.reply().sentences().isEmpty());
  }

  @Test
  @DisplayName("asks again after a wrong read-back, and takes what is said in its place")
  void wrong() {
    Turn heard = hear(at(Wanted.THREAD), "m twelve by one point five");
    Turn wrong = hear(heard.next(), "that was wrong");
    assertEquals(at(Wanted.THREAD), wrong.next());
    Turn other = hear(heard.next(), "m fourteen by one point five");
    Talk next = hear(other.next(), "that is correct").next();
    assertEquals("M14x1.5", last(next).orElseThrow().text());
  }

  @Test
  @DisplayName("goes back, repeats, explains, lists and stops when told to")
  void commands() {
    Talk talk = at(Wanted.SOCKET);
    assertEquals(Wanted.HARDWARE, asked(hear(talk, "go back one step").next()));
    assertEquals(talk.ask(), hear(talk, "say again").reply());
    assertTrue(hear(talk, "what does that mean").reply().text().startsWith("Such as"));
    assertEquals(Turn.Act.LIST, hear(talk, "list the steps").act());
    assertEquals(Turn.Act.STOP, hear(talk, "stop asking now").act());
    Turn heard = hear(talk, "one eight");
    assertEquals(heard.reply(), hear(heard.next(), "say again").reply());
    assertEquals(Wanted.SOCKET, asked(hear(heard.next(), "go back one step").next()));
  }

  private static Wanted asked(Talk talk) {
    return talk.interview().question().orElseThrow();
  }

  @Test
  @DisplayName("tells why an answer is not taken, and asks again")
  void judged() {
    Judge judge = whole -> List.of("PRO-038 found 300 N·m, expected less");
    Turn heard = hear(at(Wanted.SOCKET), "nine");
    Turn turn = heard.next().hear(RecognisedPhrase.typed("that is correct"), judge);
    assertEquals(Wanted.SOCKET, asked(turn.next()));
    assertEquals(List.of("PRO-038 found 300 N·m, expected less"), turn.told());
    assertTrue(turn.reply().text().startsWith("Not taken. Found 300"), turn.reply().text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"SOURCE", "TITLE", "VEHICLE", "AUTHOR", "CALIBRATED"})
  @DisplayName("has the names of people and things, and the source of the values, typed")
  void typed(String name) {
    Wanted wanted = Wanted.valueOf(name);
    Draft draft = Draft.EMPTY;
    List<Given> given = begun().given();
    for (int i = 0; given.get(i).wanted() != wanted; i++) {
      draft = draft.with(given.get(i).wanted(), given.get(i).text());
    }
    Talk talk = Talk.of(new Interview(draft));
    assertTrue(talk.isTyped());
    assertEquals(talk.interview(), talk.typed("", TAKES_ALL).next().interview(), "a default");
    assertNotEquals(talk.interview(), talk.typed("answer", TAKES_ALL).next().interview());
  }

  @Test
  @DisplayName("writes only what is whole, and only when told to")
  void write() {
    Draft draft = begun().withoutLast().withoutLast();
    for (String answer : "wait|Let it set|60|-|done".split("\\|", -1)) {
      draft = draft.with(draft.next().orElseThrow(), answer);
    }
    Talk talk = Talk.of(new Interview(draft));
    assertEquals(Optional.empty(), talk.interview().question());
    assertEquals(Turn.Act.WRITE, hear(talk, "write it down").act());
    assertEquals(Wanted.KIND, asked(hear(talk, "go back one step").next()));
    assertEquals(Turn.Act.NOTHING, hear(at(Wanted.SOCKET), "write it down").act());
  }
}
