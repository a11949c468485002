package org.undercall.core.board;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Elapsed;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.StepState;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.Side;
import org.undercall.port.Fault;

@DisplayName("The board")
class BoardTest {
  private BoardPlay play;

  @BeforeEach
  void begin() throws Fault {
    play = BoardPlay.of(Path.of("shared", "procedures", "demo-lateral-link.json"));
  }

  private BoardPlay atTheBushBolt() {
    return play.says("cautions understood", "382", "that is correct", "step completed")
        .says(
            "check passed", "step completed", "new nut fitted", "62 foot pounds", "torque reached");
  }

  @Nested
  @DisplayName("shows of the task")
  class OfTheTask {
    @Test
    @DisplayName("the value, unit and tolerance of the stage at hand")
    void stage() {
      Board board =
          play.says("cautions understood", "382", "that is correct", "step completed")
              .says("check passed", "step completed", "new nut fitted")
              .board();
      assertEquals(Phase.TORQUE, board.task().phase());
      assertEquals(new Task.Figure("62", "lbf·ft", "± 3 lbf·ft"), board.task().figure());
      assertEquals(List.of(new Task.Mark(true, "62 lbf·ft", false)), board.task().stages());
      assertEquals(4, board.place().number());
      assertEquals(Side.LEFT, board.place().side());
    }

    @Test
    @DisplayName("each torque with what the nut needs to run down")
    void runDown() throws Exception {
      String nut = Files.readString(Path.of("src", "test", "resources", "demo", "parts.json"));
      String runs =
          nut.replace("\"hardware\": \"bolt\"", "\"hardware\": \"self-locking-nut\"")
              .replace("\"joint\":", "\"runDown\": \"added\", \"joint\":");
      BoardPlay added =
          BoardPlay.of(ProcedureFile.of(Path.of("nut.json"), runs.getBytes(UTF_8)).procedure());
      Board board =
          added
              .says("cautions understood", "two millimeters", "that is correct")
              .says("new nut fitted", "it reads five newton meters", "that is correct")
              .board();
      assertEquals("75", board.task().figure().digits());
      assertEquals(List.of(new Task.Mark(true, "75 N·m", false)), board.task().stages());
    }

    @Test
    @DisplayName("no value before the head marking is known and the load is confirmed")
    void notReleased() {
      atTheBushBolt().says("new bolt fitted");
      assertEquals(Phase.MARKING, play.board().task().phase());
      assertHidden();
      play.says("head marking 10.9", "that is correct");
      assertEquals(Phase.GATE, play.board().task().phase());
      assertHidden();
      assertEquals(LoadCondition.RIDE_HEIGHT, play.board().place().load());
      assertFalse(play.board().place().holds());
    }

    private void assertHidden() {
      assertEquals("", play.board().task().figure().digits());
      assertEquals(List.of(), play.board().task().stages());
    }

    @Test
    @DisplayName("the closed torque stage beside the angle at hand, and the load as confirmed")
    void angle() {
      atTheBushBolt()
          .says("new bolt fitted", "head marking 10.9", "that is correct")
          .says(
              "wheels carry the car",
              "left side at ride height",
              "65 newton meters",
              "torque reached");
      Task task = play.board().task();
      assertEquals(new Task.Figure("75", "°", "± 5°"), task.figure());
      assertEquals(
          List.of(new Task.Mark(true, "65 N·m", true), new Task.Mark(false, "75°", false)),
          task.stages());
      assertTrue(play.board().place().holds());
      play.says("jack moved");
      assertFalse(play.board().place().holds());
    }

    @Test
    @DisplayName(
        "only the rest of an angle that was broken off, once it is said how far it is turned")
    void rest() {
      atTheBushBolt()
          .says("new bolt fitted", "head marking 10.9", "that is correct")
          .says(
              "wheels carry the car",
              "left side at ride height",
              "65 newton meters",
              "torque reached")
          .says("jack moved", "wheels carry the car", "left side at ride height");
      assertEquals(Phase.BEGUN, play.board().task().phase());
      assertHidden();
      play.says("turned so far 40");
      assertEquals(
          new Task.Figure("40", "°", "turned so far in all, as heard"),
          play.board().task().figure());
      play.says("that is correct");
      assertEquals(
          new Task.Figure("35", "°", "± 5°, 40° turned before"), play.board().task().figure());
      assertTrue(play.board().task().details().contains("car on its wheels"));
    }

    @Test
    @DisplayName("what was heard while it waits for the read-back")
    void readBack() {
      Task task = play.says("cautions understood", "381").board().task();
      assertEquals(Phase.READ_BACK, task.phase());
      assertEquals(new Task.Figure("381", "mm", "as heard"), task.figure());
    }
  }

  @Nested
  @DisplayName("shows at every moment")
  class Always {
    @Test
    @DisplayName("vehicle, title, cautions and where the values come from")
    void frame() {
      Frame frame = play.board().frame();
      assertEquals("Invented light van", frame.vehicle());
      assertEquals("Lateral link, short demonstration", frame.title());
      assertTrue(frame.invented());
      assertEquals("Stands, never a jack alone.", frame.cautions().get(0).brief());
      assertEquals(frame.cautions(), atTheBushBolt().board().frame().cautions());
    }

    @Test
    @DisplayName("what the session was begun for, also when it is taken up again")
    void occasion() {
      assertEquals(Occasion.WORK, play.board().frame().occasion());
      for (Occasion occasion : Occasion.values()) {
        SessionEvent started = new SessionEvent.SessionStarted("", "", "", "").with(occasion);
        Moment at = new Moment(OffsetDateTime.parse("2026-03-09T10:00:00Z"), 0);
        Recorded first = new Recorded(1, at, Optional.empty(), List.of(started), "");
        Happened happened = Happened.before(List.of(first));
        assertEquals(occasion, happened.occasion());
      }
    }
  }

  @Nested
  @DisplayName("says what to take in hand:")
  class InHand {
    private List<String> gear() {
      return play.board().task().gear().stream()
          .map(one -> one.what() + " " + one.name() + " " + one.note())
          .toList();
    }

    @Test
    @DisplayName("the socket always, a wrench only with its value, and the one that was named")
    void wrench() {
      atTheBushBolt().says("new bolt fitted");
      assertEquals(List.of("SOCKET 18 mm "), gear());
      play.says("head marking 10.9", "that is correct", "wheels carry the car");
      play.says("left side at ride height");
      assertEquals(List.of("SOCKET 18 mm ", "WRENCH wrench 2 40 to 210 N·m"), gear());
      play.says("wrench two");
      assertEquals(List.of("SOCKET 18 mm ", "WRENCH wrench 2 named, 40 to 210 N·m"), gear());
      play.says("65 newton meters", "torque reached");
      assertEquals(List.of("SOCKET 18 mm ", "TURN by angle no torque is read"), gear());
    }
  }

  @Nested
  @DisplayName("says of the last phrase that it")
  class OfThePhrase {
    private Verdict verdict(String phrase) {
      return play.says(phrase).board().talk().heard().orElseThrow().verdict();
    }

    @Test
    @DisplayName("counted, waits, was answered, was refused, or was no phrase")
    void verdicts() {
      assertEquals(Optional.empty(), play.board().talk().heard());
      assertEquals(Verdict.COUNTED, verdict("cautions understood"));
      assertEquals(Verdict.WAITS, verdict("382"));
      assertEquals(Verdict.COUNTED, verdict("that is correct"));
      assertEquals(Verdict.ANSWERED, verdict("where am i"));
      assertEquals(Verdict.NO_PHRASE, verdict("did you see the match"));
      play.says("step completed", "check passed", "step completed", "new nut fitted");
      assertEquals(Verdict.REFUSED, verdict("63 foot pounds"));
      assertEquals(Verdict.REFUSED, verdict("torque reached"));
    }
  }

  @Nested
  @DisplayName("counts states so that")
  class States {
    @Test
    @DisplayName("chatter and questions do not make a press stale, and a change does")
    void numbers() {
      play.says("cautions understood");
      long before = play.board().times().state();
      play.says("did you see the match", "where am i");
      assertEquals(before, play.board().times().state());
      play.says("382");
      assertEquals(before + 3, play.board().times().state());
    }

    @Test
    @DisplayName("a clock that is set changes no time spent")
    void clockSet() {
      play.says("cautions understood");
      Elapsed before = play.board().times().elapsed();
      Elapsed after = play.sets(3_600_000).board().times().elapsed();
      assertEquals(new Elapsed(before.work() + 1000, before.step() + 1000, true), after);
    }

    @Test
    @DisplayName("a session taken up again shows the phrase it was left with")
    void takenUp() {
      play.says("cautions understood", "382");
      Happened again = Happened.before(play.recorded());
      assertEquals("three eight two", again.heard().orElseThrow().heard().orElseThrow().text());
    }
  }

  @Nested
  @DisplayName("counts the time")
  class Times {
    private Elapsed elapsed() {
      return play.board().times().elapsed();
    }

    @Test
    @DisplayName("of the step and of the work, from the end of the cautions on")
    void counts() {
      assertEquals(new Elapsed(0, 0, false), elapsed());
      play.says("cautions understood", "where am i", "where am i");
      assertEquals(new Elapsed(3000, 3000, true), elapsed());
      play.says("382", "that is correct");
      assertEquals(new Elapsed(5000, 1000, true), elapsed());
    }

    @Test
    @DisplayName("without that on hold, as the spoken answer does")
    void onHold() {
      play.says("cautions understood", "take a break now");
      assertFalse(elapsed().runs());
      Elapsed held = elapsed();
      play.says("where am i", "where am i");
      assertEquals(held, elapsed());
      play.says("resume the work");
      assertTrue(elapsed().runs());
      assertEquals(held.work() + 1000, elapsed().work());
      play.says("how long have i worked");
      assertEquals("Two seconds at work, and three seconds on hold.", play.board().talk().said());
    }
  }

  @Nested
  @DisplayName("tells of the devices")
  class OfTheDevices {
    private List<DeviceNews> told() {
      return play.board().talk().devices().news();
    }

    @Test
    @DisplayName("what is gone until it is back, and what is back until something was heard")
    void gone() {
      play.tells(DeviceNews.MICROPHONE_GONE).says("cautions understood");
      play.tells(DeviceNews.SPEAKER_GONE).tells(DeviceNews.SOUND_LOST);
      assertEquals(List.of(DeviceNews.MICROPHONE_GONE, DeviceNews.SPEAKER_GONE), told());
      play.tells(DeviceNews.MICROPHONE_BACK);
      assertEquals(List.of(DeviceNews.MICROPHONE_BACK, DeviceNews.SPEAKER_GONE), told());
      play.says("where am i").tells(DeviceNews.SPEAKER_BACK);
      assertEquals(List.of(DeviceNews.SPEAKER_BACK), told());
      assertEquals(List.of(), play.says("where am i").board().talk().devices().news());
    }
  }

  @Nested
  @DisplayName("lists")
  class Lists {
    @Test
    @DisplayName("timers that run by their name, the next to end first")
    void timers() {
      play.says(
          "cautions understood",
          "start ten minutes for the sealant",
          "start five minutes for the cooling");
      assertEquals(
          List.of("cooling", "sealant"),
          play.board().walk().timers().stream().map(Board.Timer::what).toList());
    }

    @Test
    @DisplayName("every step with its state and why it was put off")
    void steps() {
      play.says("cautions understood", "382", "that is correct", "put off waiting for parts");
      List<Board.Item> steps = play.board().walk().steps();
      assertEquals(15, steps.size());
      assertEquals(StepState.Status.CLOSED, steps.get(0).status());
      assertEquals(StepState.Status.PUT_OFF, steps.get(1).status());
      assertEquals("waiting for parts", steps.get(1).why());
      assertEquals(StepState.Status.OPEN, steps.get(2).status());
    }

    @Test
    @DisplayName("for each phase only phrases that are understood there, and none with a number")
    void choices() {
      for (Phase phase : Phase.values()) {
        for (Choice choice : Choice.in(phase)) {
          IntentKind kind =
              Interpreter.interpret(
                      RecognisedPhrase.typed(choice.phrase()),
                      org.undercall.core.decision.Decider.heard(phase),
                      1)
                  .kind();
          assertTrue(kind != IntentKind.UNCLEAR, phase + ": " + choice.phrase());
          assertTrue(kind != IntentKind.VALUE_CALLED && kind != IntentKind.HEAD_MARKING);
          assertEquals(kind.changesState(), choice.twice(), choice.phrase());
          assertEquals(kind.closes(), choice.effect() == Choice.Effect.CLOSES, choice.phrase());
        }
      }
    }

    @Test
    @DisplayName("only sides that the procedure has")
    void sides() throws Fault {
      atTheBushBolt().says("new bolt fitted", "head marking 10.9", "that is correct");
      String choices = play.says("wheels carry the car").board().walk().choices().toString();
      assertTrue(choices.contains("left side at ride height"), choices);
      assertFalse(choices.contains("front left"), choices);
      Path corners = Path.of("shared", "procedures", "wheel-change-retorque.json");
      String wheels =
          BoardPlay.of(corners).says("cautions understood").board().walk().choices().toString();
      assertTrue(wheels.contains("change to the front left"), wheels);
      assertFalse(wheels.contains("left side"), wheels);
    }

    @Test
    @DisplayName("the step that follows, and none after the last")
    void next() throws Exception {
      assertEquals(2, play.says("cautions understood").board().walk().next());
      assertEquals(15, BoardStates.all().get("hand-over").walk().next());
      assertEquals(0, BoardStates.all().get("ended").walk().next());
    }

    @Test
    @DisplayName("no phrase that would be refused in any case")
    void notRefused() {
      List<String> torque = Choice.in(Phase.TORQUE).stream().map(Choice::phrase).toList();
      assertTrue(torque.contains("torque reached"));
      assertFalse(torque.contains("step completed"));
      assertFalse(torque.contains("angle turned"));
      assertTrue(Choice.in(Phase.NOTING).stream().allMatch(c -> c.group() == Choice.Group.LOAD));
      assertEquals(List.of(), Choice.in(Phase.ENDED));
    }
  }
}
