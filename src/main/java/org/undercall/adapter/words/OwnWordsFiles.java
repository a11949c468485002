package org.undercall.adapter.words;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.OwnWords;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/**
 * Own wordings from several files, such as a technician's own and a pack of another language.
 *
 * @param packs what each file holds, in their order
 * @param own all their wordings
 */
public record OwnWordsFiles(List<Pack> packs, OwnWords own) {
  public OwnWordsFiles {
    packs = List.copyOf(packs);
  }

  /**
   * One file.
   *
   * @param language the language it states; empty if it states none
   * @param wordings what each wording stands for, in their order
   */
  public record Pack(Path file, Optional<Locale> language, Map<String, IntentKind> wordings) {}

  /**
   * Reads the files; a wording may collide with another one of any of them.
   *
   * @throws Fault with all that is wrong in all of them
   */
  public static OwnWordsFiles read(List<Path> files) throws Fault {
    List<Fault.Finding> faults = new ArrayList<>();
    List<Pack> packs = new ArrayList<>();
    for (Path file : files) {
      try {
        packs.add(OwnWordsFile.read(file, faults));
      } catch (Fault e) {
        faults.addAll(e.findings());
      }
    }
    Map<String, IntentKind> kinds = new LinkedHashMap<>();
    for (Pack pack : packs) {
      pack.wordings().forEach((wording, kind) -> add(pack, wording, kind, packs, kinds, faults));
    }
    for (OwnWords.Problem problem : OwnWords.problems(kinds)) {
      faults.add(told(problem, packs));
    }
    if (!faults.isEmpty()) {
      throw new Fault(faults);
    }
    return new OwnWordsFiles(packs, OwnWords.of(kinds));
  }

  private static void add(
      Pack pack,
      String wording,
      IntentKind kind,
      List<Pack> packs,
      Map<String, IntentKind> kinds,
      List<Fault.Finding> faults) {
    if (kinds.putIfAbsent(wording, kind) != null) {
      String found = Shown.quoted(wording) + ", which stands in ";
      String where = Shown.plain(fileOf(wording, packs).toString());
      faults.add(
          OwnWordsFile.fault(
              WordsCode.TAKEN, pack.file(), found + where + " too", "each wording once"));
    }
  }

  /** The file that a wording is from. */
  public Path fileOf(String wording) {
    return fileOf(wording, packs);
  }

  private static Path fileOf(String wording, List<Pack> packs) {
    return packs.stream()
        .filter(pack -> pack.wordings().containsKey(wording))
        .map(Pack::file)
        .findFirst()
        .orElseThrow();
  }

  private static Fault.Finding told(OwnWords.Problem problem, List<Pack> packs) {
    Path file = fileOf(problem.wording(), packs);
    String found = Shown.quoted(problem.wording()) + " for " + OwnWordsFile.name(problem.kind());
    return switch (problem.trouble()) {
      case FORM ->
          OwnWordsFile.fault(
              WordsCode.FORM,
              file,
              found,
              "two to eight lower-case words with one blank between them");
      case NO_FIXED_WORDING ->
          OwnWordsFile.fault(
              WordsCode.NO_MEANING,
              file,
              found,
              "a meaning that is said without a number or a choice");
      case KNOWN -> OwnWordsFile.fault(WordsCode.TAKEN, file, found, "words that mean nothing yet");
      case TOO_CLOSE ->
          OwnWordsFile.fault(
              WordsCode.TOO_CLOSE,
              file,
              found,
              "at least two words other than in " + other(problem, file, packs));
    };
  }

  /** The other phrase, with its file if that is another one. */
  private static String other(OwnWords.Problem problem, Path file, List<Pack> packs) {
    String where =
        packs.stream()
            .filter(pack -> pack.wordings().containsKey(problem.other()))
            .filter(pack -> !pack.file().equals(file))
            .map(pack -> " of " + Shown.plain(pack.file().toString()))
            .findFirst()
            .orElse("");
    return "\"" + problem.other() + "\"" + where + ", which means something else";
  }
}
