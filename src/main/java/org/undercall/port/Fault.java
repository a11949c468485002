package org.undercall.port;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.List;
import java.util.stream.Collectors;
import org.undercall.core.term.Mismatch;
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
   * Where something is wrong.
   *
   * @param name of the file, session, device or option; empty if the code says it all
   * @param pointer JSON pointer (RFC 6901) to the value; empty for the whole file, or for none
   * @param line line from 1; 0 if there is no text to point at
   * @param column column from 1, in UTF-16 units; 0 if there is no text to point at
   */
  public record Place(String name, String pointer, int line, int column) {
    /** A place that has no lines. */
    public static Place of(String name) {
      return new Place(name, "", 0, 0);
    }

    @Override
    public String toString() {
      String at = line == 0 ? name : name + ":" + line + ":" + column;
      return pointer.isEmpty() ? at : at + " " + Shown.plain(pointer);
    }
  }

  /**
   * One thing that is wrong.
   *
   * @param code what kind of thing it is
   * @param place where it is
   * @param found what is there
   * @param expected what should be there; empty if {@code found} is a sentence that says it all
   */
  public record Finding(Code code, Place place, String found, String expected) {
    public Finding {
      found = Shown.line(found);
    }

    /** Something that is wrong at a place without lines. */
    public Finding(Code code, String place, String found, String expected) {
      this(code, Place.of(place), found, expected);
    }

    /** The finding as one line to be printed. */
    @Override
    public String toString() {
      String where = place.toString();
      return code.id() + (where.isEmpty() ? " " : " " + where + ": ") + told();
    }

    private Finding within(String outer) {
      String inner = place.name().isEmpty() ? outer : outer + " " + place.name();
      Place whole = new Place(inner, place.pointer(), place.line(), place.column());
      return new Finding(code, whole, found, expected);
    }

    /** What was found and expected, without code and place. */
    public String told() {
      return expected.isEmpty() ? found : new Mismatch(found, expected).toString();
    }
  }

  private final transient List<Finding> findings;

  /** One thing that is wrong. */
  public Fault(Code code, String place, String found, String expected) {
    this(List.of(new Finding(code, place, found, expected)));
  }

  /** One thing that is wrong, in a sentence that says it all. */
  public Fault(Code code, String place, String sentence) {
    this(code, place, sentence, "");
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
    return cause.getMessage() == null ? kind(cause) : kind(cause) + ": " + cause.getMessage();
  }

  /** Why the system refused something, in plain words, where the place is named already. */
  public static String kind(Exception cause) {
    if (cause instanceof NoSuchFileException || cause instanceof FileNotFoundException) {
      return "no such file";
    }
    if (cause instanceof AccessDeniedException) {
      return "no permission";
    }
    if (cause instanceof NotDirectoryException) {
      return "no folder";
    }
    if (cause instanceof FileAlreadyExistsException) {
      return "a file that is there already";
    }
    if (cause instanceof CharacterCodingException) {
      return "text that is not UTF-8";
    }
    if (cause instanceof FileSystemException file && file.getReason() != null) {
      return file.getReason();
    }
    return cause instanceof IOException
        ? "reading or writing failed"
        : "something that cannot be used";
  }

  /** The same at places of another one, which is named before them. */
  public Fault within(String outer) {
    return new Fault(findings.stream().map(finding -> finding.within(outer)).toList());
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
