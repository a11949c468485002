package org.undercall.adapter.report;

import java.util.List;
import org.undercall.text.Markup;

/**
 * A session as one page of HTML that needs nothing but itself: no script, no other file but sound
 * clips. It is well formed as XML too, and the PDF is made from it.
 */
public final class ReportPage {
  private ReportPage() {}

  /**
   * The page.
   *
   * @param sketches pictures of computed preload
   * @param clips the sounds to offer; none on paper
   */
  public static String of(Dossier dossier, List<Sketch> sketches, List<Clip> clips) {
    Markup m = new Markup();
    boolean a4 = dossier.given().paper() == Dossier.Paper.A4;
    PageHead.begin(
        m,
        "Report of work: " + dossier.procedure().about().title(),
        "Report of a work session",
        a4 ? "A4" : "letter",
        new PageHead.Edges(
            RecordWords.mark(dossier.review().origin()).orElse(""),
            "report, log " + dossier.seal().sha256().substring(0, 16)));
    m.open("body").open("main");
    new SummarySection(dossier).add(m);
    StepSections.troubles(m, dossier);
    new FastenerTable(dossier).add(m);
    BeforeAfterTable.add(m, dossier.review());
    TorquePicture.add(m, dossier);
    StepSections steps = new StepSections(dossier);
    steps.timeline(m);
    Sketch.add(m, sketches);
    steps.changes(m);
    steps.earlier(m);
    steps.steps(m);
    steps.order(m);
    Clip.add(m, new Labels(dossier), clips);
    EndSections.add(m, dossier);
    m.close().close().closeLine();
    return m.toString();
  }
}
