package org.undercall.core.intent;

import java.math.BigDecimal;
import java.util.Optional;

/** What somebody said at a question. */
public sealed interface Said {

  /** A command. */
  record Command(AnswerCommand kind) implements Said {}

  /** One of the answers that a question names. */
  record Answer(String text) implements Said {}

  /** The answer that stands ready. */
  record Ready() implements Said {}

  /** A number, with its unit if one was said. */
  record Amount(SpokenNumber number, Optional<SpokenUnit> unit) implements Said {
    /** What it is worth, however it was said. */
    public BigDecimal value() {
      return number.value();
    }
  }
}
