package org.undercall.session;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.IntentKind;
import org.undercall.port.Ear;
import org.undercall.port.EarAround;
import org.undercall.port.Heard;
import org.undercall.port.Voice;
import org.undercall.port.VoiceAround;

/** Prints what was heard and what is said, as it happens. */
public final class Dialogue {
  private static final String HEARD = "  heard  ";
  private static final String SAID = "  reply  ";

  private final PrintWriter out;

  /** A dialogue printed to a writer. */
  public Dialogue(PrintWriter out) {
    this.out = out;
  }

  /** The ear, with every phrase printed. */
  public Ear of(Ear ear) {
    return new PrintedEar(ear);
  }

  /** The voice, with every reply printed before it is spoken. */
  public Voice of(Voice voice) {
    return new PrintedVoice(voice);
  }

  /** Prints a line. */
  public void print(String line) {
    out.println(line);
    out.flush();
  }

  private final class PrintedEar extends EarAround {
    PrintedEar(Ear ear) {
      super(ear);
    }

    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
      Optional<Heard> next = ear.next(allowed, patienceMillis);
      next.ifPresent(heard -> print(HEARD + heard.text()));
      return next;
    }
  }

  private final class PrintedVoice extends VoiceAround {
    PrintedVoice(Voice voice) {
      super(voice);
    }

    @Override
    public void say(String words) {
      print(SAID + words);
      voice.say(words);
    }
  }
}
