package org.undercall.command.front;

import java.util.List;

/** The first screen: at most 24 lines of 80 columns, with the line that asks to go on. */
public final class Welcome {
  /** Its lines. What can be said stands in quotation marks. */
  public static final List<String> LINES =
      List.of(
          "UNDERCALL walks a procedure with you while your hands are on the car. It reads",
          "each value aloud, hears what you call out, and keeps a timed log. It works",
          "offline. It measures no torque: it knows only what you call.",
          "",
          "CAUTIONS  Torque can hurt. Stands carry the car: never work under a jack alone.",
          "          The maker's repair data rules. Local codes and licensed practice come",
          "          first. The values that come with this program are invented.",
          "ANSWER    In whole phrases, when it has finished speaking:",
          "            \"cautions understood\"    \"step completed\"    \"torque reached\"",
          "            \"torque reached one seven five\"    \"angle turned\"",
          "            \"say again\"    \"where am i\"    \"put off waiting for parts\"",
          "          A wrong value closes nothing; what it did not catch, it asks again.",
          "RIDE      A rubber-bonded bush is tightened at ride height only. Until you have",
          "HEIGHT    shown it, its value is not read out: \"wheels carry the car\", then the",
          "          read-back: \"left side at ride height\". Moving the jack cancels it.",
          "STOP      \"stop talking\" hushes, \"take a break now\" pauses, \"end of work\" ends.",
          "          Ctrl-C ends it too: nothing is lost, the next start goes on there.",
          "LOG       A folder for each session; doctor says where it lies. See it with:",
          "            undercall review last",
          "BEFORE    undercall doctor        is everything there: sound, model, disk?",
          "YOU WORK  undercall ear           does it understand you?",
          "          undercall rehearse      the same job with typed phrases",
          "          undercall work          the job");

  private Welcome() {}
}
