package org.undercall.listen;

import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.reply.Reply;
import org.undercall.port.Ear;
import org.undercall.port.EarAround;
import org.undercall.port.Heard;
import org.undercall.port.Voice;

/**
 * An ear that looks, several times a second, whether something is to be said about the devices, and
 * whether the voice can say again what it failed to say. What has been heard of a phrase it keeps,
 * unless it speaks.
 */
public final class NoticingEar extends EarAround {
  private static final long SLICE_MILLIS = 200;

  private final DeviceNotices notices;
  private final Voice voice;

  /** An ear, which this one closes, beside notices that {@code voice} says. */
  public NoticingEar(Ear ear, DeviceNotices notices, Voice voice) {
    super(ear);
    this.notices = notices;
    this.voice = voice;
  }

  @Override
  public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
    for (long left = patienceMillis; left > 0; left -= SLICE_MILLIS) {
      Optional<Heard> heard = ear.next(allowed, Math.min(left, SLICE_MILLIS));
      if (heard.isPresent()) {
        return heard;
      }
      if (spoke()) {
        ear.forget();
      }
    }
    return Optional.empty();
  }

  private boolean spoke() {
    boolean spoke = voice.retry();
    for (Optional<Reply> next = notices.poll(); next.isPresent(); next = notices.poll()) {
      voice.say(next.get().text());
      spoke = true;
    }
    return spoke;
  }
}
