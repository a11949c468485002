package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The words that can be heard while a procedure is asked for, beside numbers and units. */
public final class AnswerTable {
  /** What can be said at any question. */
  static final Map<AnswerCommand, List<String>> COMMANDS = commands();

  /** How a word of a question is said; one that is not here is said as it is written. */
  private static final Map<String, List<String>> SAID = said();

  /** Names of fasteners that can be said; any other is typed. */
  public static final List<String> NAMES =
      List.of(
          "bush bolt",
          "front bush bolt",
          "rear bush bolt",
          "arm bolt",
          "clamp bolt",
          "joint nut",
          "ball joint nut",
          "tie rod joint nut",
          "link rod nut",
          "counter nut",
          "top mount nuts",
          "piston rod nut",
          "carrier bolts",
          "guide bolts",
          "hub bolts",
          "axle nut",
          "brace bolts",
          "wheel bolts",
          "wheel nuts");

  private AnswerTable() {}

  private static Map<AnswerCommand, List<String>> commands() {
    Map<AnswerCommand, List<String>> table = new EnumMap<>(AnswerCommand.class);
    table.put(AnswerCommand.REPEAT, List.of("say again", "say that again"));
    table.put(AnswerCommand.EXPLAIN, List.of("what does that mean", "give me an example"));
    table.put(AnswerCommand.BACK, List.of("go back one step", "back to the last question"));
    table.put(AnswerCommand.LIST, List.of("list the steps", "what is there so far"));
    table.put(AnswerCommand.TYPE, List.of("let me type", "i will type that"));
    table.put(AnswerCommand.STOP, List.of("stop asking now", "keep it and stop"));
    table.put(AnswerCommand.RIGHT, List.of("that is correct", "you heard me right"));
    table.put(AnswerCommand.WRONG, List.of("that was wrong", "you got that wrong"));
    table.put(AnswerCommand.WRITE, List.of("write it down"));
    return Collections.unmodifiableMap(table);
  }

  private static Map<String, List<String>> said() {
    Map<String, List<String>> table = new LinkedHashMap<>();
    table.put("-", List.of("none", "there is none"));
    table.put("yes", List.of("yes", "yes it is", "yes it does"));
    table.put("no", List.of("no", "no it is not", "no it does not"));
    table.put("both", List.of("both sides", "each side"));
    table.put("front", List.of("both front corners"));
    table.put("rear", List.of("both rear corners"));
    table.put("corner", List.of("all four corners", "each corner"));
    table.put("car", List.of("once for the car", "whole car"));
    table.put("fasten", List.of("a fastener", "tighten a fastener"));
    table.put("do", List.of("some work", "work to be done"));
    table.put("measure", List.of("a measurement", "measure a value"));
    table.put("wait", List.of("a wait", "wait some time"));
    table.put("load", List.of("a load condition"));
    table.put("hand-over", List.of("a hand over", "hand something over"));
    table.put("phase", List.of("a new phase"));
    table.put("done", List.of("that was the last", "that was all"));
    table.put("self-locking nut", List.of("self locking nut"));
    table.put("threadlocker", List.of("thread locker"));
    table.put("unstated", List.of("not stated"));
    table.put("any", List.of("any height", "at any height"));
    table.put("ride height", List.of("ride height", "at ride height"));
    table.put("full droop", List.of("full droop", "at full droop"));
    table.put("on", List.of("wheels on"));
    table.put("off", List.of("wheels off"));
    table.put("mm", List.of("millimeters"));
    table.put("in", List.of("inches"));
    table.put("deg", List.of("degrees"));
    table.put("km", List.of("kilometers"));
    return Collections.unmodifiableMap(table);
  }

  /** How a word of a question can be said, the usual way first. */
  public static List<String> said(String word) {
    return SAID.getOrDefault(word, List.of(word));
  }

  /** How the answer that stands ready can be taken. */
  static final List<String> TAKE = List.of("take that one", "leave it like that");

  /** How a thread is said: "m twelve by one point five", from {@code M12x1.5}. */
  static List<String> thread(String designation) {
    String[] parts = designation.substring(1).split("x", 2);
    List<String> all = new ArrayList<>();
    for (String diameter : whole(parts[0])) {
      for (String pitch : pitch(parts[1])) {
        all.add("m " + diameter + " by " + pitch);
      }
    }
    return all;
  }

  private static Set<String> whole(String number) {
    return NumberWordings.of(Integer.parseInt(number));
  }

  private static List<String> pitch(String number) {
    int point = number.indexOf('.');
    if (point < 0) {
      return List.copyOf(whole(number));
    }
    StringBuilder after = new StringBuilder(" point");
    for (char digit : number.substring(point + 1).toCharArray()) {
      after.append(' ').append(NumberWords.DIGITS.get(digit - '0'));
    }
    return whole(number.substring(0, point)).stream().map(whole -> whole + after).toList();
  }

  /** How a property class is said: "ten point nine", "one zero point nine". */
  static List<String> marking(String text) {
    return pitch(text);
  }
}
