package org.undercall.command.record;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.log.SessionProof;
import org.undercall.adapter.log.SignedStatement;
import org.undercall.adapter.report.Captions;
import org.undercall.adapter.report.Clip;
import org.undercall.adapter.report.Dossier;
import org.undercall.adapter.report.HandoverSheet;
import org.undercall.adapter.report.Reminders;
import org.undercall.adapter.report.ReportPage;
import org.undercall.adapter.report.ReportPdf;
import org.undercall.adapter.report.Sketch;
import org.undercall.command.option.SessionOption;
import org.undercall.port.Fault;
import org.undercall.session.FollowUps;
import org.undercall.session.StoredSession;
import org.undercall.text.Sha256;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Writes the report of a session as a page and for paper. */
@Command(
    name = "report",
    description = "Write the report of a session as HTML and PDF/A.",
    mixinStandardHelpOptions = true,
    exitCodeList = "0:the report is written")
public final class ReportCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private SessionOption session;

  @Mixin private ReportOptions options;
  @Mixin private SketchOptions sketch;

  /** Made by the command line reader. */
  public ReportCommand() {}

  @Override
  public Integer call() throws Fault {
    SessionFolder folder = session.folder();
    Dossier dossier = dossier(folder);
    Optional<SignedStatement.Signer> signer = options.signer();
    ReportFiles files = options.files(folder.path());
    write(files, dossier, folder);
    if (signer.isPresent()) {
      files.sign("report.signed", signer.get());
    }
    PrintWriter out = spec.commandLine().getOut();
    files.written().forEach(file -> out.println("Wrote " + file));
    out.flush();
    return 0;
  }

  private Dossier dossier(SessionFolder folder) throws Fault {
    StoredSession stored = StoredSession.read(folder);
    LogContent log = stored.log();
    return new Dossier(
        stored.review(),
        stored.procedure(),
        log.decisions(),
        seal(folder, log),
        options.given(),
        FollowUps.of(folder, log.last()));
  }

  private static Dossier.Seal seal(SessionFolder folder, LogContent log) throws Fault {
    byte[] bytes = SessionLogFile.bytes(folder.log());
    Optional<Dossier.Signed> signed =
        SessionProof.stated(folder.log(), bytes)
            .map(
                stated ->
                    new Dossier.Signed(
                        stated.said().name(),
                        stated.said().at(),
                        stated.said().key(),
                        stated.sameLog()));
    boolean torn = log.dropped().isPresent();
    return new Dossier.Seal(log.last(), Sha256.hex(bytes), log.decisions().size(), torn, signed);
  }

  private void write(ReportFiles files, Dossier dossier, SessionFolder folder) throws Fault {
    List<Sketch> sketches = sketch.sketches(dossier);
    List<Clip> clips =
        options.clips() ? files.clips(dossier.decisions(), folder.path()) : List.of();
    files.text("report.html", ReportPage.of(dossier, sketches, clips));
    String paper = ReportPage.of(dossier, sketches, List.of());
    files.write("report.pdf", out -> ReportPdf.write(paper, out));
    if (options.handover()) {
      String sheet = HandoverSheet.of(dossier);
      files.text("handover.html", sheet);
      files.write("handover.pdf", out -> ReportPdf.write(sheet, out));
    }
    if (options.captions()) {
      files.text("report.vtt", Captions.of(dossier.review(), dossier.decisions()));
    }
    if (options.reminders()) {
      files.text("report.ics", Reminders.of(dossier, options.days()));
    }
  }
}
