package org.undercall.adapter.words;

import java.util.IllformedLocaleException;
import java.util.Locale;
import java.util.stream.Collectors;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.OwnWords;
import org.undercall.core.intent.Phrasebook;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/** A file of own words for a translator to fill in: every meaning that can have some. */
public final class OwnWordsBlank {
  private OwnWordsBlank() {}

  /**
   * The file's text, YAML, which can be used as it is but adds nothing.
   *
   * @param tag the language, a tag of BCP 47
   * @throws Fault WRD-007 if it is none
   */
  public static String text(String tag) throws Fault {
    try {
      Locale language = OwnWordsFile.language(tag);
      return "# Own words for Undercall. Fill in lists such as [\"two words\", \"and three"
          + " more\"]:\n"
          + "# two to eight words in small letters, at least two of them other than in every"
          + " phrase\n"
          + "# that means something else. Check with: undercall words --typed FILE.yaml\n"
          + OwnWordsFile.LANGUAGE
          + ": "
          + language.toLanguageTag()
          + "\n"
          + OwnWords.possible().stream().map(OwnWordsBlank::entry).collect(Collectors.joining());
    } catch (IllformedLocaleException e) {
      throw new Fault(WordsCode.LANGUAGE, "--blank", Shown.quoted(tag), OwnWordsFile.A_LANGUAGE);
    }
  }

  private static String entry(IntentKind kind) {
    String english =
        Phrasebook.wordings(kind).stream()
            .filter(wording -> wording.indexOf('<') < 0)
            .map(wording -> '"' + wording + '"')
            .collect(Collectors.joining(", "));
    String closes = kind.closes() ? " It closes or confirms something." : "";
    return "\n# "
        + kind.meaning()
        + closes
        + "\n# English: "
        + english
        + "\n"
        + OwnWordsFile.name(kind)
        + ": []\n";
  }
}
