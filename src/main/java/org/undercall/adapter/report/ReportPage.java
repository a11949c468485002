package org.undercall.adapter.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

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
    m.made("<!DOCTYPE html>\n");
    m.open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
    head(m, dossier);
    m.open("body").open("main");
    new SummarySection(dossier).add(m);
    new FastenerTable(dossier).add(m);
    StepSections steps = new StepSections(dossier);
    steps.timeline(m);
    Sketch.add(m, sketches);
    steps.refusals(m);
    steps.steps(m);
    steps.order(m);
    Clip.add(m, new Labels(dossier), clips);
    EndSections.add(m, dossier);
    m.close().close().closeLine();
    return m.toString();
  }

  private static void head(Markup m, Dossier dossier) {
    String style = style(dossier);
    String policy =
        "default-src 'none'; style-src 'sha256-"
            + sum(style)
            + "'; media-src 'self' file:; base-uri 'none'; form-action 'none'";
    String title = "Report of work: " + dossier.procedure().about().title();
    m.open("head").empty("meta", "charset", "utf-8");
    m.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy);
    m.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    m.empty("meta", "name", "description", "content", "What was done in a session, and when.");
    m.empty("meta", "name", "subject", "content", "Report of a work session");
    m.empty("meta", "name", "author", "content", "Undercall");
    m.leaf("title", title);
    m.open("style").made(style).close().closeLine();
  }

  private static String style(Dossier dossier) {
    String page = dossier.given().paper() == Dossier.Paper.A4 ? "A4" : "letter";
    try (InputStream in =
        ReportPage.class.getResourceAsStream("/org/undercall/report/report.css")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.replace("PAPER", page).replace("SUM", dossier.seal().sum().substring(0, 16));
    } catch (IOException e) {
      throw new UncheckedIOException("the style sheet is part of the program", e);
    }
  }

  private static String sum(String style) {
    try {
      byte[] bytes = style.getBytes(StandardCharsets.UTF_8);
      return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
