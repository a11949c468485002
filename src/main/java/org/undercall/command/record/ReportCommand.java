package org.undercall.command.record;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.report.Captions;
import org.undercall.adapter.report.Clip;
import org.undercall.adapter.report.Dossier;
import org.undercall.adapter.report.Reminders;
import org.undercall.adapter.report.ReportPage;
import org.undercall.adapter.report.ReportPdf;
import org.undercall.adapter.report.Sketch;
import org.undercall.command.option.SessionOption;
import org.undercall.port.Fault;
import org.undercall.session.FollowUps;
import org.undercall.session.StoredSession;
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
    ReportFiles files = options.files(folder.path());
    write(files, dossier, folder);
    PrintWriter out = spec.commandLine().getOut();
    files.written().forEach(file -> out.println("Wrote " + file));
    out.flush();
    return 0;
  }

  private Dossier dossier(SessionFolder folder) throws Fault {
    StoredSession stored = StoredSession.read(folder);
    LogContent log = stored.log();
    Dossier.Seal seal =
        new Dossier.Seal(log.last(), log.decisions().size(), log.dropped().isPresent());
    return new Dossier(
        stored.review(),
        stored.procedure(),
        log.decisions(),
        seal,
        options.given(),
        FollowUps.of(folder, log.last()));
  }

  private void write(ReportFiles files, Dossier dossier, SessionFolder folder) throws Fault {
    List<Sketch> sketches = sketch.sketches(dossier);
    List<Clip> clips =
        options.clips() ? files.clips(dossier.decisions(), folder.path()) : List.of();
    files.text("report.html", ReportPage.of(dossier, sketches, clips));
    String paper = ReportPage.of(dossier, sketches, List.of());
    files.write("report.pdf", out -> ReportPdf.write(paper, out));
    if (options.captions()) {
      files.text("report.vtt", Captions.of(dossier.decisions()));
    }
    if (options.reminders()) {
      files.text("report.ics", Reminders.of(dossier, options.days()));
    }
  }
}
