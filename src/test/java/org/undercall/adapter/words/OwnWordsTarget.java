package org.undercall.adapter.words;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.undercall.adapter.log.Coded;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.OwnWords;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Fault;

/**
 * Any bytes as a file of own words: refused with coded faults, or each wording means what the file
 * says and nothing that closes more than that.
 */
public final class OwnWordsTarget {
  private static final Set<IntentKind> ALL = EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));
  private static final Path FILE = file();

  private OwnWordsTarget() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    Files.write(FILE, data);
    try {
      use(OwnWordsFiles.read(List.of(FILE)).own());
    } catch (Fault e) {
      e.getMessage().lines().forEach(line -> Coded.requireCode("WRD", line));
    }
  }

  private static void use(OwnWords words) {
    List<String> list = words.with(Phrasebook.wordList(ALL));
    for (Map.Entry<String, IntentKind> own : words.wordings().entrySet()) {
      String standard = words.inStandard(own.getKey());
      IntentKind meant = Interpreter.interpret(RecognisedPhrase.typed(standard), ALL, 0.6).kind();
      if (meant != own.getValue() || !list.contains(own.getKey())) {
        throw new AssertionError(own + " means " + meant + " as \"" + standard + "\"");
      }
    }
  }

  private static Path file() {
    try {
      Path file = Files.createTempFile("undercall-words", ".json");
      file.toFile().deleteOnExit();
      return file;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
