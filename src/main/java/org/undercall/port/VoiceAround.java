package org.undercall.port;

/** A voice around another one, which it closes and to which it passes on all but the words. */
public abstract class VoiceAround implements Voice {
  /** The voice inside. */
  protected final Voice voice;

  /** A voice around {@code voice}. */
  protected VoiceAround(Voice voice) {
    this.voice = voice;
  }

  @Override
  public void stop() {
    voice.stop();
  }

  @Override
  public void hold() {
    voice.hold();
  }

  @Override
  public void goOn() {
    voice.goOn();
  }

  @Override
  public void signal(Signal signal) {
    voice.signal(signal);
  }

  @Override
  public boolean retry() {
    return voice.retry();
  }

  @Override
  public void close() {
    voice.close();
  }
}
