package org.undercall.command.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.adapter.recogniser.SpeechModel;
import picocli.CommandLine;

@DisplayName("Recognisers with own words")
class OwnWordsOptionTest {
  @TempDir private Path folder;

  private OwnWordsOption words(String wording) throws Exception {
    Path file = Files.writeString(folder.resolve("own.json"), "{\"hold\":[\"" + wording + "\"]}");
    return CommandLine.populateCommand(new OwnWordsOption(), "--words", file.toString());
  }

  private static void requireClosed(SpeechModel model) {
    assertThrows(IllegalStateException.class, () -> model.unknownWords(List.of("one")));
  }

  @Test
  @DisplayName("close the model when they are closed")
  void closed() throws Exception {
    OwnWordsOption words = words("coffee time for me");
    SpeechModel model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
    try (RecogniserMaker recognisers = words.of(model, words.load())) {
      recognisers.giveBack();
      assertEquals(List.of(), model.unknownWords(List.of("one")));
    }
    requireClosed(model);
  }

  @Test
  @DisplayName("leave no model open when it does not know one of them")
  void unknown() throws Exception {
    OwnWordsOption words = words("qwxyz time for me");
    SpeechModel model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
    Exception fault = assertThrows(Exception.class, () -> words.of(model, words.load()));
    assertEquals("WRD-006", fault.getMessage().substring(0, 7));
    requireClosed(model);
  }
}
