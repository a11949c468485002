package org.undercall.command.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import org.undercall.session.Browser;
import org.undercall.session.SmallPicture;

/** Makes the picture of the desk that the documents show, of an example with one value changed. */
final class DeskPictures {
  private static final String STEP = "/phases/1/steps/1";

  private DeskPictures() {}

  /** Writes it into a folder, the only argument. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("procedures");
    Path file = folder.resolve("lateral-link.json");
    Files.copy(Path.of("shared/procedures/demo-lateral-link.json"), file);
    Files.createDirectories(Path.of("target"));
    Path profile = Files.createTempDirectory(Path.of("target"), "chromium").toAbsolutePath();
    try (Browser browser = Browser.start(profile);
        ServedDesk desk = ServedDesk.of(file)) {
      DeskHand hand = new DeskHand(browser);
      browser.size(1400, 900);
      browser.prefers("prefers-color-scheme", "light");
      hand.open(desk);
      hand.to("[data-item='" + STEP + "']");
      browser.keys(DeskHand.ENTER);
      hand.fill(STEP + "/fastener/oneTimeUse", "f");
      hand.found("CHK-041", true);
      browser.until("document.querySelector('#form .found li') !== null");
      browser.eval("(document.getElementById('file').textContent = 'lateral-link.json', 1)");
      byte[] small = SmallPicture.of(browser.picture());
      Files.write(Path.of(arguments[0]).resolve("desk.png"), small);
      System.out.printf("desk.png %d bytes%n", small.length);
    }
  }
}
