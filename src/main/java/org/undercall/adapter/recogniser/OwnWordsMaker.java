package org.undercall.adapter.recogniser;

import java.util.List;
import org.undercall.core.intent.Alternative;
import org.undercall.core.intent.OwnWords;
import org.undercall.core.intent.RecognisedPhrase;

/** Makes recognisers that also listen for the technician's own words, and give the program's. */
public final class OwnWordsMaker implements RecogniserMaker {
  private final RecogniserMaker maker;
  private final OwnWords own;

  /** The same recognisers, which this closes, with own words. */
  public OwnWordsMaker(RecogniserMaker maker, OwnWords own) {
    this.maker = maker;
    this.own = own;
  }

  @Override
  public Recogniser withWordList(List<String> phrases, double startSeconds) {
    return new Translating(maker.withWordList(own.with(phrases), startSeconds), own);
  }

  @Override
  public Recogniser free(double startSeconds) {
    return maker.free(startSeconds);
  }

  @Override
  public List<Alternative> alternatives(List<String> phrases, byte[] sound, double startSeconds) {
    return maker.alternatives(own.with(phrases), sound, startSeconds).stream()
        .map(one -> new Alternative(own.inStandard(one.words()), one.score()))
        .toList();
  }

  @Override
  public void giveBack() {
    maker.giveBack();
  }

  @Override
  public void close() {
    maker.close();
  }

  private record Translating(Recogniser recogniser, OwnWords own) implements Recogniser {
    @Override
    public boolean accept(byte[] sound, int length) {
      return recogniser.accept(sound, length);
    }

    @Override
    public RecognisedPhrase result() {
      return new RecognisedPhrase(own.inStandard(recogniser.result().words()));
    }

    @Override
    public RecognisedPhrase finalResult() {
      return new RecognisedPhrase(own.inStandard(recogniser.finalResult().words()));
    }

    @Override
    public String partial() {
      return own.inStandard(recogniser.partial());
    }

    @Override
    public void close() {
      recogniser.close();
    }
  }
}
