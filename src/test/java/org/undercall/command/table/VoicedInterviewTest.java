package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.core.intent.AnswerWords;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.writing.Draft;
import org.undercall.core.writing.Interview;
import org.undercall.listen.Answers;
import org.undercall.port.Ear;
import org.undercall.port.Voice;

@DisplayName("Asked by voice, with an ear that hears what it is given")
class VoicedInterviewTest {
  private static final String TYPED =
      """
      Rear arm, a trial
      Invented van
      Undercall project
      invented for demonstration
      2026-03-31
      """;

  /** Up to the first step; each is confirmed when it is heard. */
  private static final String BEGIN =
      """
      take that one
      take that one
      none
      take that one
      four zero newton meters
      two one zero newton meters
      none
      none
      tighten
      both sides
      """;

  private static final String WAIT =
      """
      a wait
      take that one
      six zero zero
      none
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final List<String> said = new ArrayList<>();
  private final TableJudge judge =
      new TableJudge(Clock.fixed(Instant.parse("2026-06-01T09:00:00Z"), ZoneOffset.UTC));

  /** Hears lines; after each that is read back it hears a confirmation. */
  private final class GivenEar implements Answers, Voice {
    private final Queue<String> lines;
    private boolean readBack;

    GivenEar(String lines) {
      this.lines = new ArrayDeque<>(lines.lines().toList());
    }

    @Override
    public void say(String words) {
      said.add(words);
      readBack = words.endsWith("Say: that is correct, or say it again.");
    }

    @Override
    public Optional<RecognisedPhrase> next(AnswerWords allowed, long patienceMillis)
        throws Ear.EndOfInput {
      String line = readBack ? "that is correct" : lines.poll();
      readBack = false;
      if (line == null) {
        throw new Ear.EndOfInput();
      }
      return Optional.of(RecognisedPhrase.typed(line));
    }

    @Override
    public void forget() {}

    @Override
    public void close() {}
  }

  private KeptAnswers kept() {
    return new KeptAnswers(folder.resolve("spoken.json"));
  }

  private Procedure asked(String heard, String typed) throws Exception {
    return asked(new Interview(Draft.EMPTY), heard, typed);
  }

  private Procedure asked(Interview begun, String heard, String typed) throws Exception {
    GivenEar ear = new GivenEar(heard);
    VoicedInterview.Ports ports =
        new VoicedInterview.Ports(
            ear, ear, new BufferedReader(new StringReader(typed)), new PrintWriter(out, true));
    Interview whole = new VoicedInterview(ports, judge, kept()).run(begun);
    return judge.procedure(whole.draft()).orElseThrow();
  }

  @Test
  @DisplayName("a procedure has steps of every kind")
  void kinds() throws Exception {
    String heard =
        BEGIN
            + WAIT
            + """
            a measurement
            take that one
            millimeters
            three zero zero millimeters
            four five zero
            fault
            yes it is
            one zero
            none
            some work
            let me type
            none
            wheels off
            yes it does
            none
            a load condition
            ride height
            no it is not
            take that one
            none
            none
            a hand over
            let me type
            none
            that was all
            write it down
            """;
    Procedure procedure =
        asked(heard, TYPED + "Take the wheel off\nCheck the torque again\nafter 50 km\n");
    List<Step> steps = procedure.phases().get(0).steps();
    assertEquals(5, steps.size(), out.toString());
    assertEquals("Step 1", steps.get(0).head().title());
    assertEquals(600, ((Step.Wait) steps.get(0)).time().toSeconds());
    assertTrue(((Step.Measure) steps.get(1)).notesRideHeight());
    assertEquals("Take the wheel off", steps.get(2).head().title());
    assertEquals(Wheels.REMOVED, ((Step.Do) steps.get(2)).wheels());
    assertEquals("Bring the suspension to ride height", steps.get(3).head().title());
    assertEquals("after 50 km", ((Step.HandOver) steps.get(4)).due());
    assertTrue(out.toString().contains("Lay out before you start"), out.toString());
  }

  @Test
  @DisplayName("an answer that the procedure cannot hold is told and asked again")
  void refused() throws Exception {
    String stage =
        """
        a fastener
        bush bolt
        m twelve by one point five
        bolt
        one eight
        one
        no
        dry
        rigid
        any height
        none
        three zero zero newton meters
        three
        eight zero newton meters
        three
        none
        take that one
        none
        that was all
        write it down
        """;
    Procedure procedure = asked(BEGIN + stage, TYPED);
    assertTrue(out.toString().contains("  PRO-038 found 300 N·m"), out.toString());
    assertTrue(
        said.stream().anyMatch(s -> s.startsWith("Not taken. Found 300 N·m")), said.toString());
    assertTrue(procedure.toString().contains("target=80 N·m"), procedure.toString());
  }

  @Test
  @DisplayName("what was answered is kept when the sound ends, or on demand, and goes on")
  void goesOn() throws Exception {
    assertThrows(TypedInterview.BrokenOff.class, () -> asked(BEGIN + "a wait\n", TYPED));
    Interview begun = new Interview(kept().takeUp());
    assertThrows(
        TypedInterview.BrokenOff.class,
        () -> asked(begun, "take that one\nsix zero zero\nstop asking now\n", ""));
    assertTrue(said.contains("The answers are kept."), said.toString());
    Interview again = new Interview(kept().takeUp());
    Procedure procedure = asked(again, "none\nthat was all\nwrite it down\n", "");
    assertEquals(1, procedure.phases().get(0).steps().size());
  }

  @Test
  @DisplayName("the keyboard goes back, lists, explains and stops as well")
  void typedCommands() throws Exception {
    String typed = "Rear arm\nback\nlist\n?\nRear arm, a trial\n" + TYPED.substring(18);
    Procedure procedure = asked(BEGIN + WAIT + "that was all\nwrite it down\n", typed);
    assertEquals("Rear arm, a trial", procedure.about().title());
    assertTrue(said.stream().anyMatch(s -> s.startsWith("It is spoken at the start.")), said + "");
    assertThrows(TypedInterview.BrokenOff.class, () -> asked("", "Rear arm\nstop\n"));
  }

  @Test
  @DisplayName("nothing is written before it is whole, and going back from there asks again")
  void back() throws Exception {
    String end = "that was all\ngo back one step\n" + WAIT + "that was all\nwrite it down\n";
    Procedure procedure = asked(BEGIN + WAIT + end, TYPED);
    assertEquals(2, procedure.phases().get(0).steps().size());
    assertFalse(Files.exists(folder.resolve("spoken.json")));
  }
}
