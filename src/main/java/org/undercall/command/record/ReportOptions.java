package org.undercall.command.record;

import java.nio.file.Path;
import java.security.PrivateKey;
import java.util.Optional;
import org.undercall.adapter.log.KeyFiles;
import org.undercall.adapter.log.SignedStatement;
import org.undercall.adapter.report.Dossier;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a report holds and where it goes. */
final class ReportOptions {
  private static final int MOST_DAYS = 3650;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where to write (default: the folder \"report\" in the session's folder).")
  private Path out;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "a4",
      description = "The size of the pages: a4 or letter (default: ${DEFAULT-VALUE}).")
  private Dossier.Paper paper;

  @Option(names = "--no-clips", description = "Leave out the sounds kept in the session.")
  private boolean noClips;

  @Option(
      names = "--customer",
      paramLabel = "NAME",
      description = "The customer's name, to be shown; none is kept anywhere else.")
  private String customer;

  @Option(
      names = "--technician",
      paramLabel = "NAME",
      description = "The technician's name, to be shown; none is kept anywhere else.")
  private String technician;

  @Option(names = "--vtt", description = "Also write captions of what was heard and said (WebVTT).")
  private boolean vtt;

  @Option(
      names = "--ics",
      description =
          "Also write what was handed over as to-dos (iCalendar): due at the end of the work what comes"
              + " before driving, without a date what is due by distance.")
  private boolean ics;

  @Option(
      names = "--due",
      paramLabel = "DAYS",
      description =
          "Give to-dos that are due by distance or in other words a date, so many days after the"
              + " hand-over; implies --ics.")
  private Integer due;

  @Option(
      names = "--handover",
      description = "Also write a page for the customer: what to do and when (HTML and PDF/A).")
  private boolean handover;

  @Option(
      names = "--sign",
      paramLabel = "PRIVATE.pem",
      description = "Also sign the files of the report with this key (report.signed).")
  private Path key;

  @Option(
      names = "--name",
      paramLabel = "NAME",
      description = "Who signs the report, to be stated beside the signature.")
  private String signer;

  ReportFiles files(Path session) throws Fault {
    return out == null ? ReportFiles.ofSession(session) : ReportFiles.in(out);
  }

  Dossier.Given given() {
    return new Dossier.Given(named(customer), named(technician), paper);
  }

  private static Optional<String> named(String name) {
    return Optional.ofNullable(name).map(String::strip).filter(n -> !n.isEmpty());
  }

  boolean clips() {
    return !noClips;
  }

  boolean handover() {
    return handover;
  }

  /**
   * Who signs the files; empty if nobody does.
   *
   * @throws Fault LOG-024 if the key cannot be used
   */
  Optional<SignedStatement.Signer> signer() throws Fault {
    if (key == null) {
      return Optional.empty();
    }
    PrivateKey read = KeyFiles.privateKey(key);
    return Optional.of(
        new SignedStatement.Signer(
            read, Optional.ofNullable(signer), Time.ofMachine().now().wall()));
  }

  boolean captions() {
    return vtt;
  }

  boolean reminders() {
    return ics || due != null;
  }

  Optional<Integer> days() {
    if (due != null && (due < 0 || due > MOST_DAYS)) {
      throw new ParameterException(
          spec.commandLine(), "--due: found " + due + ", expected 0 to " + MOST_DAYS + " days");
    }
    return Optional.ofNullable(due);
  }
}
