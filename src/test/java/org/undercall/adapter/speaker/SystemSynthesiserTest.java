package org.undercall.adapter.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.port.Fault;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.Pcm;
import org.undercall.sound.SpeakerCode;
import org.undercall.sound.WavFile;

class SystemSynthesiserTest {
  private static final Duration LONG = Duration.ofSeconds(20);

  @TempDir private Path folder;

  private static Fault.Code codeOf(Duration limit, String... command) {
    SystemSynthesiser voice = new SystemSynthesiser(List.of(command), limit);
    return assertThrows(UncheckedFault.class, () -> voice.speak("ready")).fault().code();
  }

  @Test
  void eachSystemHasItsProgram() {
    assertEquals("say", SystemSynthesiser.command("Mac OS X").get(0));
    assertEquals("powershell", SystemSynthesiser.command("Windows 11").get(0));
    assertEquals("espeak-ng", SystemSynthesiser.command("Linux").get(0));
  }

  @Test
  void anAbsentProgramIsNamed() {
    assertEquals(SpeakerCode.NO_SYSTEM_VOICE, codeOf(LONG, "no-such-voice-program"));
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aProgramThatTakesTooLongIsEnded() {
    assertEquals(SpeakerCode.SYSTEM_VOICE_SLOW, codeOf(Duration.ofMillis(100), "sleep", "30"));
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aProgramThatFailsOrWritesNothingIsACodedError() {
    assertEquals(SpeakerCode.SYSTEM_VOICE_FAILED, codeOf(LONG, "sh", "-c", "cat; exit 3"));
    assertEquals(SpeakerCode.BAD_WAV, codeOf(LONG, "cat"));
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void theWordsAreDataAndTheSoundIsRead() throws Exception {
    Path ready = folder.resolve("ready.wav");
    Pcm sound = new FakeSynthesiser(300).sound("ready");
    WavFile.write(ready, sound);
    Path heard = folder.resolve("heard.txt");
    List<String> command =
        List.of(
            "sh",
            "-c",
            "cat > \"$1\" && cp \"$2\" \"$3\"",
            "sh",
            heard.toString(),
            ready.toString(),
            SystemSynthesiser.FILE);
    String words = "$(touch \"" + folder.resolve("owned") + "\"); --help `id`";
    assertEquals(sound, new SystemSynthesiser(command, LONG).speak(words));
    assertEquals(words, Files.readString(heard));
    assertFalse(Files.exists(folder.resolve("owned")));
  }

  @Test
  void theVoiceOfThisSystemIsHeardIfThereIsOne() {
    try {
      Pcm sound = SystemSynthesiser.here().speak("Step completed.");
      assertTrue(sound.peak() > 1000 && sound.millis() > 400, sound.toString());
    } catch (UncheckedFault e) {
      assertEquals(SpeakerCode.NO_SYSTEM_VOICE, e.fault().code());
    }
  }
}
