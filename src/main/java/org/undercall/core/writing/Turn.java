package org.undercall.core.writing;

import java.util.List;
import org.undercall.core.reply.Reply;

/**
 * What came of something that was said or typed.
 *
 * @param next how it goes on
 * @param reply what is said
 * @param told faults with their codes, for the screen
 */
public record Turn(Talk next, Reply reply, Act act, List<String> told) {

  /** What is to be done besides speaking. */
  public enum Act {
    NOTHING,
    /** Read a line from the keyboard and give it to {@link Talk#typed}. */
    TYPE,
    /** Show what is there so far. */
    LIST,
    /** Everything is kept: end. */
    STOP,
    /** Everything is answered and wanted: write it. */
    WRITE
  }

  public Turn {
    told = List.copyOf(told);
  }
}
