package org.undercall.command.ear;

import java.util.List;
import org.undercall.core.decision.Phase;

/**
 * A phrase of the check of the ear.
 *
 * @param words what is to be said
 * @param phase the phase whose phrases are listened for meanwhile
 * @param sort what it stands for
 */
record CheckPhrase(String words, Phase phase, Sort sort) {

  /** What a phrase of the check stands for. */
  enum Sort {
    /** A value said digit by digit. */
    DIGITS,
    /** A value said in number words. */
    NUMBER_WORDS,
    /** A phrase that closes or confirms. */
    CLOSING,
    /** A phrase about the load. */
    LOAD
  }

  /** Every phrase of the check, in order. The values are invented. */
  static final List<CheckPhrase> ALL =
      List.of(
          new CheckPhrase("one seven five newton meters", Phase.TORQUE, Sort.DIGITS),
          new CheckPhrase("torque reached", Phase.TORQUE, Sort.CLOSING),
          new CheckPhrase("it reads two six eight", Phase.TORQUE, Sort.DIGITS),
          new CheckPhrase("fifteen newton meters", Phase.TORQUE, Sort.NUMBER_WORDS),
          new CheckPhrase("nine zero degrees", Phase.ANGLE, Sort.DIGITS),
          new CheckPhrase("it reads fifty", Phase.TORQUE, Sort.NUMBER_WORDS),
          new CheckPhrase("that is correct", Phase.READ_BACK, Sort.CLOSING),
          new CheckPhrase("wheels carry the car", Phase.GATE, Sort.LOAD),
          new CheckPhrase("left side at ride height", Phase.LOAD_READ_BACK, Sort.LOAD),
          new CheckPhrase("step completed", Phase.DO, Sort.CLOSING));
}
