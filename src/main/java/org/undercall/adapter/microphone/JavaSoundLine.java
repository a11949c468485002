package org.undercall.adapter.microphone;

import java.util.List;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.TargetDataLine;
import org.undercall.port.Fault;
import org.undercall.sound.Frames;
import org.undercall.sound.SampleFormat;
import org.undercall.sound.SoundCode;

/** A line of Java Sound, opened in the first format of a few that the device takes. */
final class JavaSoundLine implements SoundLine {
  private static final List<SampleFormat> FORMATS =
      List.of(
          SampleFormat.pcm(1, Frames.RATE),
          SampleFormat.pcm(1, 48_000),
          SampleFormat.pcm(2, 48_000),
          SampleFormat.pcm(1, 44_100),
          SampleFormat.pcm(2, 44_100));

  private final TargetDataLine line;
  private final SampleFormat format;
  private final String name;

  private JavaSoundLine(TargetDataLine line, SampleFormat format, String name) {
    this.line = line;
    this.format = format;
    this.name = name;
  }

  static JavaSoundLine open(Optional<String> wanted) throws Fault {
    Mixer.Info info = Microphones.find(wanted);
    Mixer mixer = AudioSystem.getMixer(info);
    String refusal = "";
    for (SampleFormat format : FORMATS) {
      try {
        return new JavaSoundLine(opened(mixer, format), format, info.getName());
      } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
        refusal = String.valueOf(e.getMessage());
      }
    }
    throw new Fault(
        SoundCode.MICROPHONE_REFUSED,
        info.getName(),
        "cannot be opened ("
            + refusal
            + "), expected 16, 44.1 or 48 kHz; is another program using it?");
  }

  private static TargetDataLine opened(Mixer mixer, SampleFormat format)
      throws LineUnavailableException {
    AudioFormat java = format.ofDevice();
    TargetDataLine line =
        (TargetDataLine) mixer.getLine(new DataLine.Info(TargetDataLine.class, java));
    line.open(java, format.rate() / 5 * format.blockBytes());
    line.start();
    return line;
  }

  SampleFormat format() {
    return format;
  }

  String name() {
    return name;
  }

  @Override
  public int read(byte[] into) {
    return line.read(into, 0, into.length);
  }

  @Override
  public void close() {
    line.stop();
    line.close();
  }
}
