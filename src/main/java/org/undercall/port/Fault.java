package org.undercall.port;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.undercall.text.Shown;

/**
 * Something that cannot be used or done as it is, for the user to mend. The message has one line
 * for each finding, each with its code, its place, what was found and what was expected.
 */
public final class Fault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What can be wrong: the constants of one enum for each subject. */
  public interface Code {
    /** The permanent code, for example {@code LOG-004}; it is never given out again. */
    String id();

    /** What is wrong, in one sentence. */
    String meaning();
  }

  /**
   * One thing that is wrong.
   *
   * @param code what kind of thing it is
   * @param place the file with the place in it, the session, the device or the option
   * @param found what is there
   * @param expected what should be there
   */
  public record Finding(Code code, String place, String found, String expected) {
    public Finding {
      found = Shown.line(found);
    }

    /** The finding as one line to be printed. */
    @Override
    public String toString() {
      return code.id() + " " + place + ": found " + found + ", expected " + expected;
    }
  }

  private final transient List<Finding> findings;

  /** One thing that is wrong. */
  public Fault(Code code, String place, String found, String expected) {
    this(List.of(new Finding(code, place, found, expected)));
  }

  /** One thing that is wrong because the system refused something. */
  public Fault(Code code, String place, IOException cause, String expected) {
    this(code, place, reason(cause), expected);
    initCause(cause);
  }

  /** Several things that are wrong, at least one, in the order they are to be read in. */
  public Fault(List<Finding> findings) {
    super(findings.stream().map(Finding::toString).collect(Collectors.joining("\n")));
    this.findings = List.copyOf(findings);
  }

  /** Why the system refused something, in a few words. */
  public static String reason(IOException cause) {
    String kind = cause.getClass().getSimpleName();
    return cause.getMessage() == null ? kind : kind + " " + cause.getMessage();
  }

  /** All that is wrong, at least one thing. */
  public List<Finding> findings() {
    return findings;
  }

  /** The first thing that is wrong. */
  public Finding first() {
    return findings.get(0);
  }

  /** What is wrong first. */
  public Code code() {
    return first().code();
  }
}
