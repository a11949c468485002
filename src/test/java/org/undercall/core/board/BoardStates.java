package org.undercall.core.board;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Phase;
import org.undercall.port.Fault;

/** Boards of sessions at many moments, each with a name. All values in them are invented. */
public final class BoardStates {
  private static final Path SHORT = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final Path ACROSS = Path.of("shared", "procedures", "subframe-star-order.json");
  private static final Path VAN = Path.of("shared", "procedures", "light-van-rear-axle.json");
  private static final String LONG_WRENCH =
      "torque wrench with the blue grip from the second drawer no";

  private final Map<String, Board> states = new LinkedHashMap<>();

  private BoardStates() {}

  /** All of them, in the order in which a session would come to them. */
  public static Map<String, Board> all() throws Fault, IOException {
    BoardStates made = new BoardStates();
    made.toTheAngle();
    made.toTheEnd();
    made.leftAndLost();
    made.across();
    made.longWords();
    made.unusual();
    return made.states;
  }

  private void keep(String name, BoardPlay play) {
    states.put(name, play.board());
  }

  /** The left side up to the bush bolt. */
  private static BoardPlay atTheJointNut() throws Fault {
    return BoardPlay.of(SHORT)
        .says("cautions understood", "382", "that is correct", "step completed")
        .says("check passed", "step completed", "new nut fitted");
  }

  private static BoardPlay atTheMarking() throws Fault {
    return atTheJointNut().says("62 foot pounds", "torque reached", "new bolt fitted");
  }

  private static BoardPlay atTheAngle() throws Fault {
    return atTheMarking()
        .says("head marking 10.9", "that is correct", "wheels carry the car")
        .says("left side at ride height", "65 newton meters", "torque reached");
  }

  private void toTheAngle() throws Fault {
    BoardPlay play = BoardPlay.of(SHORT);
    keep("briefing", play);
    keep("measure", play.says("cautions understood"));
    keep("read-back", play.says("382"));
    keep("do", play.says("that is correct"));
    keep("check", play.says("step completed"));
    keep("hardware", play.says("check passed", "step completed"));
    keep("torque", play.says("new nut fitted"));
    keep("refused", play.says("63 foot pounds"));
    keep("not-understood", play.says("did you see the match last night on the television"));
    keep("answered", play.says("why this value"));
    keep("marking", atTheMarking());
    play = atTheMarking().says("head marking 10.9", "that is correct");
    keep("gate", play);
    keep("load-read-back", play.says("wheels carry the car"));
    keep("torque-of-two", play.says("left side at ride height"));
    keep("wrench-named", play.says("wrench 2"));
    keep("angle", atTheAngle());
    keep(
        "begun",
        atTheAngle().says("jack moved", "wheels carry the car", "left side at ride height"));
    keep(
        "rest",
        atTheAngle()
            .says(
                "jack moved",
                "wheels carry the car",
                "left side at ride height",
                "turned so far 40")
            .says("that is correct"));
  }

  private static BoardPlay right() throws Fault {
    return atTheAngle()
        .says("75 degrees", "that is correct", "angle turned", "382", "that is correct")
        .says("step completed", "check passed", "step completed", "new nut fitted")
        .says("62 foot pounds", "torque reached", "new bolt fitted", "head marking 8.8")
        .says("that is correct", "wheels carry the car", "right side at ride height")
        .says("52 newton meters", "torque reached", "60 degrees", "that is correct")
        .says("angle turned");
  }

  private void toTheEnd() throws Fault {
    BoardPlay play = right();
    keep("whole-car", play);
    play.says("step completed");
    keep("wait", play);
    play.says("start the timer");
    keep("timer", play);
    play.says("where am i", "where am i", "where am i", "where am i", "where am i");
    play.says("where am i", "where am i", "where am i", "where am i", "where am i");
    play.looksAtTimers();
    keep("timer-over", play);
    play.says("step completed");
    keep("set-first", play);
    play.says("135 newton meters", "number one clicked", "number three clicked");
    keep("set-third", play);
    play.says("number four clicked");
    keep("set-other", play);
    play.says("that was wrong", "number five clicked", "number two clicked", "number four clicked");
    keep("hand-over", play);
    play.says("step completed", "step completed");
    keep("all-closed", play);
    keep("reopened", play.says("open this step again"));
    keep("ended", play.says("step completed", "end of work"));
  }

  private void leftAndLost() throws Fault {
    keep("put-off", atTheJointNut().says("put off waiting for parts"));
    keep("snug", atTheJointNut().says("fitted hand tight"));
    keep("on-hold", atTheJointNut().says("take a break now"));
    keep("noting", atTheJointNut().says("take a note"));
    keep("trouble", atTheJointNut().says("thread is stripped", "that is correct"));
    keep("handed", atTheJointNut().says("hand over the work"));
    keep("ended-open", atTheJointNut().says("end of work", "that is correct"));
    keep("no-microphone", atTheJointNut().tells(DeviceNews.MICROPHONE_GONE));
    keep(
        "nothing-works",
        atTheJointNut().tells(DeviceNews.MICROPHONE_GONE).tells(DeviceNews.SPEAKER_GONE));
    keep("rehearsal", BoardPlay.of(SHORT).types("cautions understood", "382", "that is correct"));
    keep("danger", atTheAngle().says("jack slipped"));
    keep(
        "timers",
        atTheJointNut()
            .says("start ten minutes for the sealant", "start five minutes for the cooling"));
  }

  private void across() throws Fault {
    BoardPlay play = BoardPlay.of(ACROSS).says("cautions understood");
    while (play.phase() == Phase.DO || play.phase() == Phase.CHECK) {
      play.says(play.phase() == Phase.DO ? "step completed" : "check passed");
    }
    keep("set-hardware", play);
    play.says("six new bolts fitted", "that is correct");
    play.says("head marking 10.9", "that is correct");
    keep("set-of-six", play);
    play.says(
        "50 newton meters", "number one clicked", "number four clicked", "number two clicked");
    keep("set-of-six-half", play);
  }

  private void longWords() throws Fault, IOException {
    String text = Files.readString(SHORT);
    UnaryOperator<String> more =
        t ->
            t.replace(
                    "Tighten the joint nut",
                    "Tighten the self-locking nut of the lower outer"
                        + " ball joint at the wheel carrier, with the new washer under it, wheel straight")
                .replace("\"joint nut\"", "\"self-locking nut of the lower outer ball joint\"")
                .replace("wrench 1", LONG_WRENCH + " 1")
                .replace("wrench 2", LONG_WRENCH + " 2")
                .replace(
                    "Invented light van",
                    "Invented light van with the long wheelbase, raised"
                        + " roof and the second rear heater, before the change of the axle")
                .replace(
                    "Lateral link, short demonstration",
                    "Lateral link, the demonstration with"
                        + " words as long as a procedure may well have them, to see where they go")
                .replace(
                    "Look at the joint boot", "Look-at-the-joint-boot-without-a-blank-between");
    BoardPlay play =
        BoardPlay.of(ProcedureFile.of(SHORT, more.apply(text)).procedure())
            .says("cautions understood", "382", "that is correct");
    keep("long-do", play);
    keep(
        "long-torque",
        play.says("step completed", "check passed", "step completed", "new nut fitted"));
    keep("long-refused", play.says("63 foot pounds"));
    keep("long-wrench", play.says("wrench 1"));
    keep("long-microphone", play.tells(DeviceNews.MICROPHONE_GONE));
  }

  private void unusual() throws Fault, IOException {
    String text =
        Files.readString(SHORT)
            .replace(
                "\"stages\": [{ \"torque\": 62, \"unit\": \"lbf·ft\", \"plusMinus\": 3 }]",
                "\"leftHand\": true, \"counterHold\": \"a 16 mm ring spanner\", \"stages\": ["
                    + "{ \"torque\": 58.5, \"upTo\": 66.5, \"unit\": \"lbf·ft\" }]");
    keep(
        "range",
        BoardPlay.of(ProcedureFile.of(SHORT, text).procedure())
            .says("cautions understood", "382", "that is correct", "step completed")
            .says("check passed", "step completed", "new nut fitted"));
    BoardPlay van = BoardPlay.of(VAN).says("cautions understood", "402", "that is correct");
    keep("van", van.says("402", "that is correct"));
  }
}
