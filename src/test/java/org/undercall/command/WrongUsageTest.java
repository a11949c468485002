package org.undercall.command;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A user's mistake gets a line with a code and no stack trace:")
class WrongUsageTest {
  @TempDir private static Path lab;

  /** NONE is absent, FOLDER a folder, BYTES no text, EMPTY a file of no bytes, P a procedure. */
  private static final List<String> MISTAKES =
      List.of(
          "check NONE.json",
          "check FOLDER",
          "check BYTES.json",
          "check BYTES.yaml",
          "check EMPTY.json",
          "check P --on yesterday",
          "check P --sessions BYTES.json --on 2026-13-01",
          "check a\u0000b",
          "show FOLDER",
          "show NONE.json",
          "show P --sheet NONE/sheet.pdf",
          "show P --sheet NONE/sheet.html",
          "show P --sheet FOLDER.pdf",
          "rehearse FOLDER",
          "rehearse BYTES.json",
          "rehearse P --sessions BYTES.json",
          "rehearse P --resume NONE",
          "work NONE.json --voice none",
          "work P --voice none --volume 900",
          "work P --voice none --rate fast",
          "work P --voice banana",
          "work P --voice none --board --board-port 99999",
          "work P --voice none --microphone NONE",
          "demo --sessions BYTES.json",
          "review NONE",
          "review BYTES.json",
          "review FOLDER",
          "review last --sessions BYTES.json",
          "sessions --sessions BYTES.json",
          "sessions --from yesterday",
          "sessions --sessions FOLDER --memory many",
          "sessions --sessions FOLDER --state asleep",
          "compare last --sessions BYTES.json",
          "compare last --sessions FOLDER",
          "clips FOLDER",
          "clips NONE",
          "verify FOLDER",
          "verify last --sessions FOLDER --key BYTES.json",
          "sign FOLDER --key NONE",
          "key NONE/shop.pem",
          "key FOLDER",
          "report FOLDER",
          "report last --sessions FOLDER --out BYTES.json",
          "import NONE.csv",
          "import FOLDER.csv",
          "import BYTES.csv",
          "import BYTES.xlsx",
          "import EMPTY.xlsx",
          "import BYTES.json",
          "export FOLDER --csv",
          "export P --csv NONE/x.csv",
          "export P --csv FOLDER",
          "new NONE/rear.json",
          "new FOLDER.json",
          "listen --sound NONE.wav",
          "listen --sound BYTES.wav",
          "listen --sound FOLDER",
          "listen --sound EMPTY.wav",
          "listen --microphone --model FOLDER",
          "ear --sound NONE.wav",
          "ear --sound BYTES.wav",
          "say --voice mary --out NONE/x.wav torque",
          "say --voice mary --out FOLDER torque",
          "say --rate 99 torque",
          "words NONE.json",
          "words BYTES.json",
          "words FOLDER",
          "microphones --check never",
          "microphones --check -3",
          "figure convert banana --to Nm",
          "figure convert 5Nm --to parsec",
          "figure convert -5Nm --to lbf.ft",
          "figure convert 1e999Nm --to lbf.ft",
          "figure convert 62lbf.ft --to Nm --step 0",
          "figure preload --thread banana --class 8.8 --torque 45Nm",
          "figure preload --thread M12x1.5 --class 8.9 --torque 45Nm",
          "figure preload --thread M12x99 --class 8.8 --torque 45Nm",
          "figure preload --thread M12x1.5 --class 8.8 --torque 45Nm --friction -1",
          "figure angle --thread M12x1.5 --class 8.8 --torque 45Nm --angle NaN",
          "figure angle --thread M12x1.5 --class 8.8 --torque 45Nm --angle 60 --plot NONE/x.svg",
          "figure adaptor --torque 110Nm --wrench 0 --extension 60",
          "figure adaptor --torque 110Nm --wrench 450 --extension -450",
          "figure twist --arm 0 --ride -20 --droop -120 --bump 60 --at -95",
          "figure twist --arm 350 --ride -20 --droop -120 --bump 60 --at 900",
          "figure tool --torque -5Nm --most 210Nm --plus-minus 5",
          "figure tool --torque 110Nm --most 210Nm --plus-minus 500",
          "figure banana",
          "banana",
          "check",
          "check P --banana");

  @BeforeAll
  static void files() throws IOException {
    byte[] bytes = new byte[3000];
    new SplittableRandom(7).nextBytes(bytes);
    for (String end : List.of("json", "yaml", "csv", "xlsx", "wav")) {
      Files.write(lab.resolve("BYTES." + end), bytes);
      Files.write(lab.resolve("EMPTY." + end), new byte[0]);
    }
    for (String folder : List.of("FOLDER", "FOLDER.csv", "FOLDER.json", "FOLDER.pdf")) {
      Files.createDirectory(lab.resolve(folder));
    }
  }

  @TestFactory
  Stream<DynamicTest> mistakes() {
    return MISTAKES.stream().map(one -> DynamicTest.dynamicTest(shown(one), () -> tell(one)));
  }

  private static String shown(String mistake) {
    return mistake.replace("\u0000", "?");
  }

  private static void tell(String mistake) {
    StringWriter err = new StringWriter();
    int status =
        App.commandLine()
            .setOut(new PrintWriter(new StringWriter()))
            .setErr(new PrintWriter(err, true))
            .execute(
                Stream.of(mistake.split(" ", -1))
                    .map(WrongUsageTest::filled)
                    .toArray(String[]::new));
    String said = err.toString();
    assertTrue(status == 1 || status == 2, () -> "status " + status + ": " + said);
    assertFalse(said.contains("BUG-001") || said.contains("\tat "), said);
    assertTrue(said.matches("(?s)([A-Z]{3}-\\d{3} [^\n]+\n)+"), said);
  }

  private static String filled(String word) {
    if (word.equals("P")) {
      return "shared/procedures/demo-lateral-link.json";
    }
    return word.matches("(NONE|FOLDER|BYTES|EMPTY).*") ? lab.resolve(word).toString() : word;
  }
}
