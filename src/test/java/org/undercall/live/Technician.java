package org.undercall.live;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.demo.DemoVoices;
import org.undercall.sound.Pcm;
import org.undercall.sound.WavFile;

/** A synthetic technician: knows what to answer to what is asked, and says it. */
final class Technician implements AutoCloseable {
  private static final Pattern READ_BACK =
      Pattern.compile("(?:Read it back|Say): ([a-z ]+ at [a-z ]+)\\.");
  private static final Pattern SAY = Pattern.compile("Say: ([a-z ]+)\\.$");

  private final SpokenCache voice;
  private final Path folder;
  private String last = "say again";

  Technician(Path cache, Path folder) {
    this.voice = DemoVoices.speaker("tenor", cache);
    this.folder = folder;
  }

  /** The answer to a reply of the program: what it asks to say, or the phrase before once more. */
  String answer(String reply) {
    Matcher readBack = READ_BACK.matcher(reply);
    Matcher say = SAY.matcher(reply);
    if (readBack.find()) {
      last = readBack.group(1);
    } else if (say.find()) {
      last = say.group(1).toLowerCase(Locale.ROOT);
    } else if (reply.endsWith("Correct?")) {
      last = "that is correct";
    } else if (reply.endsWith("ook at the boot.")) {
      last = "step completed";
    } else if (reply.contains("Not yet. Confirm ride height, ")) {
      last = "wheels carry the car";
    } else if (reply.matches(".*[Tt]orque,? eight zero( newton metres)?\\.")) {
      last = "torque reached eight zero";
    }
    return last;
  }

  /** The words as a WAV file, with so much silence before them, in milliseconds. */
  Path said(String words, int silence) throws IOException {
    Path file = folder.resolve(silence + " " + words + ".wav");
    if (!Files.exists(file)) {
      Pcm spoken = voice.speak(words);
      short[] samples = new short[DemoVoices.RATE * silence / 1000 + spoken.length()];
      int from = samples.length - spoken.length();
      System.arraycopy(spoken.samples(), 0, samples, from, spoken.length());
      WavFile.write(file, Pcm.of(DemoVoices.RATE, samples));
    }
    return file;
  }

  @Override
  public void close() {
    voice.close();
  }
}
