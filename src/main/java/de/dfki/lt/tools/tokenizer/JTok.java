package de.dfki.lt.tools.tokenizer;

import de.dfki.lt.tools.tokenizer.annotate.AnnotatedString;
import de.dfki.lt.tools.tokenizer.annotate.FastAnnotatedString;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Splits plain English text into words, numbers and punctuation.
 *
 * <p>MaryTTS asks for a tokenizer of this name, which is not published where its other libraries
 * are. This one was written for Undercall and knows only what spoken replies need.
 */
public final class JTok {

  /** The mark of a token: a new object for each. */
  public static final String CLASS_ANNO = "class";

  /** The mark of the first token of a sentence or paragraph. */
  public static final String BORDER_ANNO = "border";

  /** The first token of the text. MaryTTS compares it by identity. */
  public static final String P_BORDER = "p";

  /** The first token of a later sentence. */
  public static final String TU_BORDER = "tu";

  private static final Pattern TOKEN =
      Pattern.compile("\\d+(?:[.,]\\d+)*|[\\p{L}\\p{Nd}]+(?:['’-][\\p{L}\\p{Nd}]+)*|\\S");

  /** A tokenizer; the settings are not used. */
  public JTok(Properties settings) {}

  /** Marks the tokens of a text; the language is not used. */
  public AnnotatedString tokenize(String text, String language) {
    FastAnnotatedString marked = new FastAnnotatedString(text);
    String border = P_BORDER;
    Matcher token = TOKEN.matcher(text);
    while (token.find()) {
      marked.annotate(CLASS_ANNO, new Object(), token.start(), token.end());
      boolean endsSentence = ".!?".contains(token.group());
      if (border != null && !endsSentence) {
        marked.annotate(BORDER_ANNO, border, token.start(), token.end());
        border = null;
      }
      if (endsSentence && border == null) {
        border = TU_BORDER;
      }
    }
    return marked;
  }
}
