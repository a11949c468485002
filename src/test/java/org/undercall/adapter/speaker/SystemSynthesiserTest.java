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
import org.undercall.sound.Pcm;
import org.undercall.sound.SpeakerException;
import org.undercall.sound.SpeakerException.Fault;
import org.undercall.sound.WavFile;

class SystemSynthesiserTest {
  private static final Duration LONG = Duration.ofSeconds(20);

  @TempDir private Path folder;

  private static Fault faultOf(Duration limit, String... command) {
    SystemSynthesiser voice = new SystemSynthesiser(List.of(command), limit);
    return assertThrows(SpeakerException.class, () -> voice.speak("ready")).fault();
  }

  @Test
  void eachSystemHasItsProgram() {
    assertEquals("say", SystemSynthesiser.command("Mac OS X").get(0));
    assertEquals("powershell", SystemSynthesiser.command("Windows 11").get(0));
    assertEquals("espeak-ng", SystemSynthesiser.command("Linux").get(0));
  }

  @Test
  void anAbsentProgramIsNamed() {
    assertEquals(Fault.NO_SYSTEM_VOICE, faultOf(LONG, "no-such-voice-program"));
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aProgramThatTakesTooLongIsEnded() {
    assertEquals(Fault.SYSTEM_VOICE_SLOW, faultOf(Duration.ofMillis(100), "sleep", "30"));
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aProgramThatFailsOrWritesNothingIsACodedError() {
    assertEquals(Fault.SYSTEM_VOICE_FAILED, faultOf(LONG, "sh", "-c", "cat; exit 3"));
    assertEquals(Fault.BAD_WAV, faultOf(LONG, "cat"));
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
    } catch (SpeakerException e) {
      assertEquals(Fault.NO_SYSTEM_VOICE, e.fault());
    }
  }
}
