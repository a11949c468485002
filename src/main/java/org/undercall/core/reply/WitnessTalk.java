package org.undercall.core.reply;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.SpellingAlphabet;

/** What the program says about the second person, who saw what was done. */
public final class WitnessTalk {
  private WitnessTalk() {}

  /** The work is done; who saw it is asked for. */
  public static Reply who() {
    return Reply.once(
        Lesson.WITNESS,
        "Done, and open until a second person saw it. He says: witness, and his name, spelled.",
        "Witness?");
  }

  /**
   * Who saw what, read back to him.
   *
   * @param number of the step, from 1
   * @param seen what he confirms, in words
   */
  public static Reply readBack(String witness, int number, Walk.Place place, String seen) {
    return Reply.of(
        "Witness " + name(witness) + ".",
        Words.sentence(ShiftTalk.step(number, place)) + ": " + seen + ".",
        "If you saw it, say: witnessed by, and your name.");
  }

  /** What is seen of a fastener: how many, and each stage with its value. */
  public static String seen(int count, List<Stage> stages) {
    String all = count > 1 ? "all " + Words.count(count) + ", " : "";
    return all + stages.stream().map(Words::stage).collect(Collectors.joining(", then "));
  }

  /** What is seen of other work. */
  public static String seen() {
    return "done as told";
  }

  /** He confirmed it. */
  public static Reply witnessed(String witness) {
    return Reply.of("Seen by " + name(witness) + ".");
  }

  /** A witness is missing, and nothing else will do. */
  public static Reply first() {
    return Reply.of("No. First a witness. He says: witness, and his name, spelled.");
  }

  /** Who works cannot see for himself. */
  public static Reply another() {
    return Reply.of("No. The witness is somebody who did not work on it.");
  }

  /** The name is on no list, or more than one has it. */
  public static Reply unknown(String said, boolean several) {
    String who = "No. " + Words.sentence(SpellingAlphabet.spelled(said));
    return Reply.of(
        who + (several ? " could be two people. Spell the whole name." : " is not on the list."));
  }

  /** Another name than the one that was read back. */
  public static Reply otherName(String witness) {
    return Reply.of("No. The name read back was " + name(witness) + ".");
  }

  /** The cautions are understood, and nobody knows who works. */
  public static Reply whoWorks() {
    return Reply.of("This work has witnesses. First say: technician, and your name.");
  }

  /** The steps that are done and wait for their witness, at the end. */
  public static Reply missing(List<Walk.Place> places) {
    return places.isEmpty()
        ? Reply.SILENCE
        : Reply.of("Witness missing: " + Words.steps(places) + ".");
  }

  /** Why a step is done as it is, for an apprentice. */
  public static Reply why(String why) {
    return Reply.of("Why: " + why);
  }

  /** A spelled name letter by letter, any other as it is written. */
  private static String name(String witness) {
    boolean spelled = witness.equals(witness.toUpperCase(Locale.ROOT)) && !witness.contains(" ");
    return spelled ? SpellingAlphabet.spelled(witness) : witness;
  }
}
