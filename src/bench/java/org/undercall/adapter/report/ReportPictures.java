package org.undercall.adapter.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.YearOldWork;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;

/** Makes the pictures of the report in docs/pictures, from an invented session. */
public final class ReportPictures {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "light-van-rear-axle.json");
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final int DPI = 90;

  private ReportPictures() {}

  /** Makes them. Argument: the folder of the pictures, such as docs/pictures. */
  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[0]).toAbsolutePath();
    LoadedProcedure loaded = ProcedureFile.load(PROCEDURE);
    List<Recorded> log = YearOldWork.of(loaded.procedure(), loaded.sha256());
    String sum = "0123456789abcdef".repeat(4);
    Dossier dossier =
        new Dossier(
            Review.of(Walk.of(loaded.procedure()), log),
            loaded.procedure(),
            log,
            new Dossier.Seal(sum, sum, log.size(), false, Optional.empty()),
            new Dossier.Given(Optional.empty(), Optional.empty(), Dossier.Paper.A4));
    String page = ReportPage.of(dossier, List.of(), List.of());
    paper(page, 0, folder.resolve("report-pdf.png"));
    paper(page, 1, folder.resolve("report-details.png"));
    paper(HandoverSheet.of(dossier), 0, folder.resolve("handover.png"));
    screen(page, folder.resolve("report-page.png"));
  }

  private static void paper(String page, int number, Path picture) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportPdf.write(page, out);
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      BufferedImage image =
          new PDFRenderer(document).renderImageWithDPI(number, DPI, ImageType.GRAY);
      ImageIO.write(image, "png", picture.toFile());
    }
  }

  private static void screen(String page, Path picture) throws Exception {
    Path file = Files.writeString(Files.createTempFile("report", ".html"), page);
    Process chromium =
        new ProcessBuilder(
                CHROMIUM.toString(),
                "--headless=new",
                "--no-sandbox",
                "--hide-scrollbars",
                "--window-size=1080,1000",
                "--screenshot=" + picture,
                file.toUri().toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!chromium.waitFor(120, TimeUnit.SECONDS) || chromium.exitValue() != 0) {
      throw new IllegalStateException("no picture from " + CHROMIUM);
    }
    Files.delete(file);
  }
}
