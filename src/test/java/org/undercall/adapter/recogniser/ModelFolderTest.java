package org.undercall.adapter.recogniser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.port.Fault;

class ModelFolderTest {
  @TempDir private Path parent;
  private Path folder;

  @BeforeEach
  void makeModel() throws IOException {
    folder = TestModel.tiny(parent);
  }

  private void replaced(String name, byte[] content) throws IOException {
    Files.write(folder.resolve(name), content);
  }

  private Fault refused(ModelCode code) {
    Fault fault = assertThrows(Fault.class, () -> ModelFolder.verify(folder));
    assertEquals(code, fault.code(), fault.getMessage());
    assertTrue(fault.getMessage().startsWith(code.id() + " "), fault.getMessage());
    assertEquals(1, fault.getMessage().lines().count());
    return fault;
  }

  @Nested
  class WithItsChecksumList {
    @Test
    void theModelOfTheBuildIsAcceptedWithoutAWarning() throws Fault {
      ModelFolder verified = ModelFolder.verify(ModelFolder.standard());
      assertEquals(Optional.empty(), verified.warning());
    }

    @Test
    void theModelOfTheBuildIsAdaptedToNoise() throws Fault {
      assertEquals(
          ModelFolder.STANDARD + ", adapted to noise",
          ModelFolder.verify(ModelFolder.standard()).name());
    }

    @Test
    void plainIsTheSameWithTheNetworkAsPublished() throws Fault, IOException {
      ModelFolder plain = ModelFolder.plain(ModelFolder.standard());
      assertEquals(ModelFolder.STANDARD + ", as published", plain.name());
      assertEquals(
          "75370a0137f9daf8f469dedd7daa4513ae7a621f03240c6e512e2b50b656a7b6",
          ChecksumList.sha256(plain.path().resolve("am/final.mdl")));
      assertTrue(Files.notExists(plain.path().resolve("am/plain.mdl")));
      assertEquals(
          ChecksumList.sha256(ModelFolder.standard().resolve("graph/Gr.fst")),
          ChecksumList.sha256(plain.path().resolve("graph/Gr.fst")));
      SpeechModel.load(plain).close();
    }

    @Test
    void plainNeedsTheNetworkAsPublished() {
      Fault fault = assertThrows(Fault.class, () -> ModelFolder.plain(folder));
      assertEquals(ModelCode.FILE_MISSING, fault.code(), fault.getMessage());
      assertTrue(fault.getMessage().contains("plain.mdl"), fault.getMessage());
    }

    @Test
    void oneFlippedBitInTheTrueModelIsFound() throws IOException {
      folder = TestModel.copied(parent);
      byte[] graph = Files.readAllBytes(folder.resolve("graph/HCLr.fst"));
      graph[graph.length / 2] ^= 1;
      replaced("graph/HCLr.fst", graph);
      Fault fault = refused(ModelCode.FILE_DAMAGED);
      assertTrue(fault.getMessage().contains("HCLr.fst"), fault.getMessage());
    }

    @Test
    void aFileThatWasCutIsFound() throws IOException {
      replaced("graph/Gr.fst", new byte[0]);
      refused(ModelCode.FILE_DAMAGED);
    }

    @Test
    void aMissingFileIsNamed() throws IOException {
      Files.delete(folder.resolve("graph/phones/word_boundary.int"));
      Fault fault = refused(ModelCode.FILE_MISSING);
      assertTrue(fault.getMessage().contains("word_boundary.int"), fault.getMessage());
    }

    @Test
    void aFileThatIsNotListedIsRefusedSinceTheRecogniserWouldTakeIt() throws IOException {
      Files.createDirectory(folder.resolve("rnnlm"));
      Files.writeString(folder.resolve("rnnlm/final.raw"), "x");
      refused(ModelCode.FILE_NOT_LISTED);
    }

    @Test
    void hiddenFilesOfTheSystemDoNotMatter() throws IOException, Fault {
      Files.writeString(folder.resolve(".DS_Store"), "x");
      assertEquals(Optional.empty(), ModelFolder.verify(folder).warning());
    }

    @Test
    void aSpoiltListIsNamedWithTheLine() throws IOException {
      Files.writeString(parent.resolve("model.sha256"), "0123  README\n");
      assertTrue(refused(ModelCode.LIST_DAMAGED).getMessage().contains("line 1"));
    }

    @Test
    void anEmptyListIsNoList() throws IOException {
      Files.writeString(parent.resolve("model.sha256"), "");
      refused(ModelCode.LIST_DAMAGED);
    }
  }

  @Nested
  class WithoutAChecksumList {
    @BeforeEach
    void removeList() throws IOException {
      Files.delete(parent.resolve("model.sha256"));
    }

    @Test
    void aWellFormedModelIsAcceptedWithAWarning() throws Fault {
      String warning = ModelFolder.verify(folder).warning().orElseThrow();
      assertTrue(warning.startsWith("MOD-008 "), warning);
    }

    @Test
    void aFolderWithoutTheGraphIsNoModel() throws IOException {
      Files.delete(folder.resolve("graph/HCLr.fst"));
      assertTrue(refused(ModelCode.NOT_A_MODEL).getMessage().contains("HCLr.fst"));
    }

    @Test
    void anEmptyFileIsNoPartOfAModel() throws IOException {
      replaced("conf/model.conf", new byte[0]);
      refused(ModelCode.NOT_A_MODEL);
    }

    @Test
    void aGraphThatIsNoGraphIsRefused() throws IOException {
      replaced("graph/Gr.fst", new byte[] {1, 2, 3, 4, 5});
      refused(ModelCode.NOT_A_MODEL);
    }

    @Test
    void aModelWithOneFixedGraphIsRefused() throws IOException {
      Files.move(folder.resolve("graph/HCLr.fst"), folder.resolve("graph/HCLG.fst"));
      refused(ModelCode.NO_WORD_LISTS);
    }
  }

  @Test
  void aFolderThatIsNotThereIsSaid() {
    folder = parent.resolve("nowhere");
    assertTrue(refused(ModelCode.NO_FOLDER).getMessage().contains("--model"));
  }
}
