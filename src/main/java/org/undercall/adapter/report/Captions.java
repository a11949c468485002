package org.undercall.adapter.report;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.review.Review;
import org.undercall.text.Markup;

/**
 * What was heard and said in a session as captions, WebVTT (W3C).
 *
 * <p>Zero is the time of the first decision. A decision is made when a phrase is over: what was
 * heard is shown before it, what was said after it, for as long as its words take to read, and at
 * most until the next decision.
 */
public final class Captions {
  private static final long MILLIS_A_WORD = 400;
  private static final long LEAST = 1000;
  private static final long LONGEST_ABOUT = 8000;

  private Captions() {}

  /** The whole file, each line ended with a line feed. */
  public static String of(Review review, List<Recorded> decisions) {
    StringBuilder text = new StringBuilder("WEBVTT\n\nNOTE Times from the log of the session.\n");
    String about = about(review);
    text.append("\nNOTE ").append(escaped(about)).append('\n');
    cue(text, "about", 0, LONGEST_ABOUT, escaped(about));
    OffsetDateTime start = decisions.get(0).at().wall();
    long free = 0;
    for (int i = 0; i < decisions.size(); i++) {
      Recorded decision = decisions.get(i);
      long at = Math.max(free, millis(start, decision));
      Optional<String> heard = decision.heard().map(Recorded.Heard::text);
      if (heard.isPresent()) {
        long from = Math.max(free, at - length(heard.get()));
        at = Math.max(at, from + 1);
        cue(text, decision.seq() + " heard", from, at, "<v Technician>" + escaped(heard.get()));
      }
      free = at;
      if (!decision.said().isBlank()) {
        long next = i + 1 < decisions.size() ? until(start, decisions.get(i + 1)) : Long.MAX_VALUE;
        long to = Math.max(at + 1, Math.min(at + length(decision.said()), next));
        cue(text, decision.seq() + " said", at, to, "<v Undercall>" + escaped(decision.said()));
        free = to;
      }
    }
    return text.toString();
  }

  /** What holds for all that is called in it, shown with the first words. */
  private static String about(Review review) {
    return RecordWords.mark(review.origin()).map(mark -> mark + " ").orElse("")
        + "Values of the procedure: "
        + review.head().about().values()
        + ". "
        + ReviewWords.CALLED_NOT_MEASURED;
  }

  /** When the words of a decision begin, at the latest. */
  private static long until(OffsetDateTime start, Recorded next) {
    long heard = next.heard().map(h -> length(h.text())).orElse(0L);
    return millis(start, next) - heard;
  }

  private static long millis(OffsetDateTime start, Recorded decision) {
    return Duration.between(start, decision.at().wall()).toMillis();
  }

  private static long length(String words) {
    return Math.max(LEAST, MILLIS_A_WORD * words.strip().split("\\s+").length);
  }

  private static void cue(StringBuilder text, String id, long from, long to, String words) {
    text.append('\n').append(id).append('\n');
    text.append(time(from)).append(" --> ").append(time(to)).append('\n');
    text.append(words).append('\n');
  }

  private static String time(long millis) {
    long seconds = millis / 1000;
    return String.format(
        Locale.ROOT,
        "%02d:%02d:%02d.%03d",
        seconds / 3600,
        seconds / 60 % 60,
        seconds % 60,
        millis % 1000);
  }

  /** One line without markup; an arrow would end the cue, so its sign is escaped too. */
  private static String escaped(String words) {
    return new Markup()
        .text(words.replaceAll("\\s+", " ").strip())
        .toString()
        .replace("&#39;", "'")
        .replace("&quot;", "\"");
  }
}
