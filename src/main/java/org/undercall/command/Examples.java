package org.undercall.command;

import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The examples at the end of each command's help, all in one place. */
public final class Examples {
  private static final String DEMO = "shared/procedures/demo-lateral-link.json";

  private static final String BLOCKS = "shared/procedures/trailing-arm-from-blocks.json";

  private static final Map<String, List<String>> BY_COMMAND =
      Map.ofEntries(
          of("undercall", "demo", "work", "review last"),
          of("undercall demo", "demo", "demo --sessions tried"),
          of("undercall work", "work", "work " + DEMO + " --board", "work --resume last --called"),
          of("undercall rehearse", "rehearse " + DEMO, "rehearse " + DEMO + " --new"),
          of("undercall review", "review last", "review last --csv events", "review last --json"),
          of("undercall sessions", "sessions --state open --due", "sessions --from 2026-03-01"),
          of("undercall compare", "compare last", "compare last --csv refusals"),
          of("undercall clips", "clips last", "clips last --remove"),
          of("undercall verify", "verify last", "verify last --key shop.pub.pem"),
          of("undercall sign", "sign last --key shop.pem"),
          of("undercall key", "key shop.pem"),
          of("undercall report", "report last", "report last --out reports --paper letter"),
          of("undercall check", "check " + DEMO, "check --on 2026-03-31 --json " + DEMO),
          of("undercall show", "show " + DEMO, "show " + DEMO + " --sheet sheet.pdf"),
          of("undercall diff", "diff rear.json rear-new.json", "diff --json old.yaml new.yaml"),
          of("undercall desk", "desk " + DEMO, "desk rear-axle.yaml"),
          of("undercall new", "new rear-axle.json", "new rear-axle.json --by-voice"),
          of(
              "undercall import",
              "import bolts.csv --source \"repair data\" --set side=both --preview",
              "import bolts.xlsx --source \"repair data\" --set side=both --out bolts.json"),
          of("undercall export", "export " + DEMO + " --csv", "export " + DEMO + " --csv demo.csv"),
          of(
              "undercall assemble",
              "assemble " + BLOCKS,
              "assemble " + BLOCKS + " --out whole.json"),
          of("undercall say", "say torque reached", "say --out said.wav torque reached"),
          of("undercall listen", "listen --microphone", "listen --sound said.wav"),
          of("undercall microphones", "microphones", "microphones --check 3"),
          of("undercall ear", "ear", "ear --sound ten-phrases.wav --json"),
          of("undercall prepare", "prepare"),
          of("undercall doctor", "doctor", "doctor --json"),
          of(
              "undercall words",
              "words",
              "words my-words.json",
              "words --typed shared/words/de.yaml",
              "words --blank de > de.yaml"),
          of("undercall completion", "completion", "completion > undercall-completion.bash"),
          of("undercall figure", "figure convert 62lbf.ft --to Nm"),
          of("undercall figure convert", "figure convert 62lbf.ft --to Nm --step 0.5"),
          of(
              "undercall figure preload",
              "figure preload --thread M12x1.5 --class 8.8 --torque 45Nm"),
          of(
              "undercall figure angle",
              "figure angle --thread M12x1.5 --class 8.8 --torque 45Nm --angle 60"),
          of(
              "undercall figure torque-angle",
              "figure torque-angle --thread M12x1.5 --class 10.9 --torque 70Nm --angle 90"
                  + " --clamped 64 --tube 28 13 --reading 160Nm"),
          of(
              "undercall figure variants",
              "figure variants --thread M12x1.5 --class 8.8 --torque 68Nm --other-class 10.9"
                  + " --other-torque 70Nm --other-angle 90 --clamped 64 --tube 28 13"),
          of(
              "undercall figure joint",
              "figure joint --thread M12x1.5 --class 10.9 --torque 70Nm --angle 90"
                  + " --clamped 64 --tube 28 13 --sheet joint.pdf",
              "figure joint --procedure shared/procedures/front-control-arms.json"
                  + " --step front-bush --class 10.9 --clamped 64 --tube 28 13"),
          of(
              "undercall figure adaptor",
              "figure adaptor --torque 110Nm --wrench 450 --extension 60"),
          of(
              "undercall figure twist",
              "figure twist --arm 350 --ride -20 --droop -120 --bump 60 --at -95"),
          of("undercall figure tool", "figure tool --torque 110Nm --most 210Nm --plus-minus 5"));

  private Examples() {}

  /** Adds the examples to the help of a command and of all below it. */
  public static CommandLine addTo(CommandLine line) {
    CommandSpec spec = line.getCommandSpec();
    List<String> examples = BY_COMMAND.getOrDefault(spec.qualifiedName(), List.of());
    if (!examples.isEmpty()) {
      spec.usageMessage()
          .footerHeading("%nExamples:%n")
          .footer(examples.stream().map(one -> "  undercall " + one).toArray(String[]::new));
    }
    line.getSubcommands().values().forEach(Examples::addTo);
    return line;
  }

  private static Map.Entry<String, List<String>> of(String command, String... examples) {
    return Map.entry(command, List.of(examples));
  }
}
