package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.stream.Collectors;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** Looks whether a PDF is PDF/A-2a and PDF/UA-1, with veraPDF. */
public final class PdfA {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private PdfA() {}

  /** Fails if it is not. */
  public static void requireConforming(byte[] pdf) throws Exception {
    require(pdf, PDFAFlavour.PDFA_2_A);
    require(pdf, PDFAFlavour.PDFUA_1);
  }

  private static void require(byte[] pdf, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      assertEquals(flavour, parser.getFlavour());
      ValidationResult result = validator.validate(parser);
      String failed =
          result.getTestAssertions().stream()
              .map(a -> flavour + " " + a.getRuleId().getClause() + " " + a.getMessage())
              .distinct()
              .collect(Collectors.joining("\n"));
      assertTrue(result.isCompliant(), failed);
      assertTrue(result.getTotalAssertions() > 1000, "it was looked at");
    }
  }
}
