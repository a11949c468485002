package org.undercall.adapter.speaker;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.SampleFormat;
import org.undercall.sound.SpeakerCode;

/** The sound card through Java Sound, with a buffer of 200 ms. */
final class JavaSoundLine implements SoundLine {
  private volatile SourceDataLine line;

  @Override
  public void open(int rate) {
    AudioFormat format = SampleFormat.pcm(1, rate).ofDevice();
    try {
      SourceDataLine opened = AudioSystem.getSourceDataLine(format);
      opened.open(format, rate / 5 * 2);
      opened.start();
      line = opened;
    } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
      throw new UncheckedFault(
          SpeakerCode.NO_DEVICE,
          "no sound device plays " + rate + " Hz, 1 channel: " + e.getMessage(),
          e);
    }
  }

  @Override
  public int write(byte[] bytes, int offset, int length) {
    return line.write(bytes, offset, length);
  }

  @Override
  public void drain() {
    line.drain();
  }

  @Override
  public void silence() {
    SourceDataLine open = line;
    if (open != null) {
      open.stop();
      open.flush();
    }
  }

  @Override
  public void resume() {
    line.start();
  }

  @Override
  public void close() {
    SourceDataLine open = line;
    line = null;
    if (open != null) {
      // A sound server that hangs can block close for many seconds.
      Thread closer = new Thread(open::close, "speaker-close");
      closer.setDaemon(true);
      closer.start();
    }
  }
}
