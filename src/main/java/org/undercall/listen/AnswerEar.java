package org.undercall.listen;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.adapter.activity.Activities;
import org.undercall.adapter.activity.Activity;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.AnswerWords;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear.EndOfInput;
import org.undercall.port.Heard;
import org.undercall.sound.Frames;

/**
 * Hears answers to questions, each with the words of its own question. One thread uses it.
 *
 * <p>Within one question nothing that was said is lost; between two, what was begun is.
 */
public final class AnswerEar implements Answers, AutoCloseable {
  private final Frames frames;
  private final RecogniserMaker maker;
  private final Activity activity = Activities.best();
  private Optional<AnswerWords> words = Optional.empty();
  private SoundEar ear;

  /**
   * An ear.
   *
   * @param frames the sound; the ear closes it
   * @param maker makes recognisers; the ear does not close it
   */
  public AnswerEar(Frames frames, RecogniserMaker maker) {
    this.frames = frames;
    this.maker = maker;
  }

  @Override
  public Optional<RecognisedPhrase> next(AnswerWords allowed, long patienceMillis)
      throws EndOfInput {
    if (ear == null || !words.equals(Optional.of(allowed))) {
      forget();
      ear = ear(allowed);
      words = Optional.of(allowed);
    }
    return ear.next(Set.of(), patienceMillis).map(Heard::phrase);
  }

  private SoundEar ear(AnswerWords allowed) {
    Attention attention = new Attention(activity, new QuickEnd(Waits.STANDARD, allowed::next));
    List<String> phrases = allowed.phrases();
    return new SoundEar(frames, maker, kinds -> phrases, attention, Optional.of(allowed));
  }

  @Override
  public void forget() {
    if (ear != null) {
      ear.forget();
    }
  }

  @Override
  public void close() {
    forget();
    frames.close();
    activity.close();
  }
}
