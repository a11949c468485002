package org.undercall.text;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.StringReader;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.Event;

/** YAML as the files of the program use it, read through the same parser interface as JSON. */
public final class Yaml {
  /** The longest text, in characters; numbers and names may be as long. */
  private static final int MOST_CHARACTERS = 2 * 1024 * 1024;

  /** How deep objects and lists may be nested, in JSON and in YAML. */
  public static final int MOST_DEPTH = 32;

  private static final Pattern NAME = Pattern.compile("(?i).*\\.ya?ml");

  /** What a parser of JSON or YAML may meet before it gives up. */
  public static final StreamReadConstraints LIMITS =
      StreamReadConstraints.builder()
          .maxNestingDepth(MOST_DEPTH)
          .maxNumberLength(MOST_CHARACTERS)
          .maxNameLength(MOST_CHARACTERS)
          .build();

  private static final YAMLFactory FACTORY =
      YAMLFactory.builder().loaderOptions(options()).streamReadConstraints(LIMITS).build();

  private Yaml() {}

  private static LoaderOptions options() {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(MOST_CHARACTERS);
    options.setNestingDepthLimit(2 * MOST_DEPTH);
    return options;
  }

  /** Whether a file is read as YAML, by its name. */
  public static boolean named(String name) {
    return NAME.matcher(name).matches();
  }

  /**
   * The events of a text, with their marks, for who writes into it.
   *
   * @param comments whether comments are events too
   */
  public static Iterable<Event> events(String text, boolean comments) {
    LoaderOptions options = options();
    options.setProcessComments(comments);
    return new org.yaml.snakeyaml.Yaml(options).parse(new StringReader(text));
  }

  /** A parser of a text. */
  public static JsonParser parser(String text) throws IOException {
    return FACTORY.createParser(text);
  }
}
