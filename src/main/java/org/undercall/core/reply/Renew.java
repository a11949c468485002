package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Renewal;
import org.undercall.core.procedure.Reuse;
import org.undercall.core.term.ReuseBy;

/** What the program says of new parts, and of used ones that may be fitted again. */
public final class Renew {
  private Renew() {}

  /** New hardware is to be fitted, or a used part to be measured or counted where it may be. */
  public static Reply ask(Fastener fastener) {
    return fastener
        .part()
        .reuse()
        .map(limit -> ask(fastener, limit))
        .orElseGet(() -> fit(fastener));
  }

  private static Reply fit(Fastener fastener) {
    return Reply.once(
        Lesson.HARDWARE, fitWhole(fastener, "then"), Words.sentence(fresh(fastener)) + "?");
  }

  private static String fitWhole(Fastener fastener, String then) {
    String all = fresh(fastener);
    String article = fastener.set().several() ? "" : "a ";
    return "Fit " + article + all + ", " + then + " say: " + all + " fitted.";
  }

  private static Reply ask(Fastener fastener, Reuse limit) {
    boolean several = fastener.set().several();
    String most = most(limit);
    String brief = Words.sentence(fresh(fastener)) + ", or ";
    if (limit.by() == ReuseBy.LENGTH) {
      String measure = several ? "measure all" : "measure it";
      String longest = several ? "the longest at most " : "at most ";
      return Reply.once(
          Lesson.REUSE_LENGTH,
          fitWhole(fastener, "and")
              + (" Or " + measure + ", " + longest + most + " millimetres, and say: ")
              + "length, and the value.",
          brief + measure + ": at most " + most + ".");
    }
    return Reply.once(
        Lesson.REUSE_USES,
        fitWhole(fastener, "and")
            + (" Or, if it was used at most " + most + " before, say: used, and how often."),
        brief + "used at most " + most + " before?");
  }

  /** The greatest value that may be said. */
  private static String most(Reuse limit) {
    return limit.by() == ReuseBy.LENGTH
        ? Words.digits(limit.most())
        : times(limit.mostBefore().intValueExact());
  }

  /** How often: "once", "twice", "three times". */
  static String times(int number) {
    return switch (number) {
      case 1 -> "once";
      case 2 -> "twice";
      default -> Words.count(number) + " times";
    };
  }

  private static String fresh(Fastener fastener) {
    int count = fastener.set().count();
    return count > 1
        ? Words.count(count) + " new " + part(fastener) + "s"
        : "new " + part(fastener);
  }

  private static String part(Fastener fastener) {
    return fastener.part().hardware() == Hardware.BOLT ? "bolt" : "nut";
  }

  /** What was called of a used part, read back: of a set of all. */
  public static Reply readBack(Fastener fastener, ReuseBy by, BigDecimal value) {
    boolean several = fastener.set().several();
    if (by == ReuseBy.LENGTH) {
      String longest = several ? "All measured, the longest " : "Length ";
      return Reply.of(longest + Words.digits(value) + " millimetres.").and(Ask.correct());
    }
    int before = value.intValueExact();
    int most = fastener.part().reuse().map(r -> r.most().intValueExact()).orElse(before + 1);
    return Reply.of(
            (several ? "All used " : "Used ")
                + times(before)
                + " before: this is use "
                + Words.count(before + 1)
                + " of "
                + Words.count(most)
                + ".")
        .and(Ask.correct());
  }

  /** A used part is not fitted again. */
  public static Reply refused(Fastener fastener, Reuse limit, BigDecimal value) {
    if (value.compareTo(limit.mostBefore()) > 0) {
      boolean length = limit.by() == ReuseBy.LENGTH;
      String fit = fastener.set().several() ? fresh(fastener) : "a " + fresh(fastener);
      return Reply.of((length ? "Too long." : "Used too often.") + " Fit " + fit + ".");
    }
    return limit.by() == ReuseBy.LENGTH
        ? Reply.of(Words.sentence(Words.digits(value)) + " is too short for it. Measure again.")
        : Reply.of("No. Say: used, and how often.");
  }

  /** More uses are known than were said. */
  public static Reply usedMore(int least) {
    return Reply.of("No. With this job it was used at least " + times(least) + ".");
  }

  /** Only a new part will do. */
  public static Reply onlyNew(Fastener fastener) {
    return Reply.of("No. Only new ones will do: " + fresh(fastener) + ".");
  }

  /** A length is called in millimetres. */
  public static Reply inMillimetres() {
    return Reply.of("No. Say it in millimetres.");
  }

  /** Why a new part is needed, and until when a used one will do. */
  public static Reply why(Fastener.Part part) {
    Stream<String> reasons =
        Stream.of(Renewal.values()).filter(part.renew()::contains).map(Renew::why);
    Stream<String> limit = part.reuse().stream().map(Renew::until);
    List<String> all = Stream.concat(reasons, limit).toList();
    return Reply.of(all.isEmpty() ? List.of("The procedure gives no reason.") : all);
  }

  private static String why(Renewal reason) {
    return switch (reason) {
      case SELF_LOCKING -> "Its lock wears out.";
      case MICRO_ENCAPSULATED -> "The glue in its thread works only once.";
      case YIELDED -> "It was stretched into yield.";
      case MAKER -> "The maker says so.";
    };
  }

  private static String until(Reuse limit) {
    return limit.by() == ReuseBy.LENGTH
        ? "Longer than " + most(limit) + " millimetres, it is used up."
        : "After " + times(limit.most().intValueExact()) + " it is used up.";
  }
}
