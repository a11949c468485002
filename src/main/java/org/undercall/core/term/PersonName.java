package org.undercall.core.term;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * How a person is named: whole, by one word of the name, or by its initials. Letters and digits
 * count, in capitals. Where two writings could be the same person they are taken for the same.
 */
public final class PersonName {
  private PersonName() {}

  /** Whether two writings could name the same person; a name that is not known could be anybody. */
  public static boolean same(String one, String other) {
    String first = whole(one);
    String second = whole(other);
    return first.isEmpty()
        || second.isEmpty()
        || forms(one).contains(second)
        || forms(other).contains(first);
  }

  /** The names of a list that a spelled text could mean. */
  public static List<String> meant(String spelled, List<String> names) {
    return names.stream().filter(name -> forms(name).contains(whole(spelled))).toList();
  }

  /** Whether a name can be spelled letter by letter: at least one letter A to Z or digit. */
  public static boolean canBeSpelled(String name) {
    return name.strip().matches("[A-Za-z0-9][A-Za-z0-9 .'-]{0,39}");
  }

  /** The whole name, each of its words, and its initials. */
  private static Set<String> forms(String name) {
    List<String> words = new ArrayList<>();
    for (String word : name.split("[ .-]+", -1)) {
      if (!whole(word).isEmpty()) {
        words.add(whole(word));
      }
    }
    Set<String> forms = new TreeSet<>(words);
    forms.add(whole(name));
    StringBuilder initials = new StringBuilder();
    words.forEach(word -> initials.append(word.charAt(0)));
    if (words.size() > 1) {
      forms.add(initials.toString());
    }
    return forms;
  }

  private static String whole(String name) {
    return name.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{Nd}]", "");
  }
}
