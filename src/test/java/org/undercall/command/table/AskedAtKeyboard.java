package org.undercall.command.table;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import picocli.CommandLine;

/** Answers typed to the command {@code new}, and what came of them. */
abstract class AskedAtKeyboard {
  static final String HEAD =
      """
      Rear axle, a trial
      Invented van
      Undercall project

      invented for demonstration


      wrench 2
      40 Nm
      210 Nm
      2026-03-31




      """;
  static final String BUSH =
      """
      fasten
      Arm bush bolt
      M12x1.5

      18

      yes
      as delivered

      bonded bush

      ride height
      10.9
      65 ± 3 Nm
      60 ± 5 deg
      -


      8.8
      52 +/- 3 Nm
      -



      """;
  static final String REST =
      """
      phase
      measure
      both
      measure
      Hub centre to arch
      mm
      300
      450

      yes
      10
      Measure on level ground.

      do
      Take the wheel off
      Does the car stand on its stands?
      off
      yes

      wait
      Let the sealant set
      600

      load
      ride height
      yes



      hand-over
      Check the torque of the wheel bolts again
      check the torque
      after 50 km

      done
      """;

  @TempDir Path folder;
  final StringWriter out = new StringWriter();
  final StringWriter err = new StringWriter();

  int asked(String typed, String... options) {
    Clock clock = Clock.fixed(Instant.parse("2026-06-01T09:00:00Z"), ZoneOffset.UTC);
    List<String> args = new ArrayList<>(List.of(file().toString()));
    args.addAll(List.of(options));
    return run(new CommandLine(new NewCommand(new StringReader(typed), clock)), args);
  }

  int run(CommandLine line, List<String> args) {
    line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler(
        (fault, command, parsed) -> {
          command.getErr().println(fault.getMessage());
          return 1;
        });
    return line.execute(args.toArray(String[]::new));
  }

  Path file() {
    return folder.resolve("new.json");
  }

  Path kept() {
    return folder.resolve("new.json.csv");
  }

  Procedure written() throws Exception {
    return ProcedureFile.load(file()).procedure();
  }

  Fastener fastener() throws Exception {
    return ((Step.Fasten) written().phases().get(0).steps().get(0)).fastener();
  }
}
