package org.undercall.command.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.adapter.fleet.FleetCode;
import org.undercall.core.review.Facts;
import org.undercall.port.Fault;

/**
 * What is compared with what.
 *
 * @param subject the session that is looked at; blank if all of a procedure are
 * @param base the sessions it is held against
 * @param words both, in one sentence
 */
record Measure(String subject, List<String> base, String words) {

  /** A session that is not damaged: its name, what was worked on and when it began. */
  private record Sound(String name, Facts.Work work, long began) {}

  static Measure of(Fleet fleet, List<String> names, String procedure) throws Fault {
    List<Sound> all = new ArrayList<>();
    fleet.each(
        row -> {
          if (!row.damaged()
              && (names.contains(row.session()) || row.facts().work().madeInWork())) {
            all.add(new Sound(row.session(), row.facts().work(), row.facts().times().firstMs()));
          }
        });
    if (names.isEmpty()) {
      List<String> titled = names(all, s -> s.work().title().equalsIgnoreCase(procedure));
      if (titled.isEmpty()) {
        throw nothing("--procedure " + procedure, "no sound session with this title");
      }
      return new Measure(
          "", titled, "All " + titled.size() + " sessions titled " + procedure + ".");
    }
    List<Sound> named = new ArrayList<>();
    for (String name : names) {
      Optional<Sound> found =
          names.size() == 1 && name.equals("last")
              ? all.stream().max(Comparator.comparing(Sound::began).thenComparing(Sound::name))
              : all.stream().filter(s -> s.name().equals(name)).findFirst();
      named.add(
          found.orElseThrow(
              () -> nothing("session " + name, "no session of that name that is not damaged")));
    }
    return names.size() == 1 ? earlier(all, named.get(0)) : among(named);
  }

  private static Measure earlier(List<Sound> all, Sound subject) {
    List<Sound> before = all.stream().filter(s -> s.began() < subject.began()).toList();
    Facts.Work work = subject.work();
    List<String> same = names(before, s -> s.work().sha256().equals(work.sha256()));
    String what = "same SHA-256";
    if (same.isEmpty()) {
      what = "same title and revision";
      same =
          names(
              before,
              s ->
                  s.work().title().equals(work.title())
                      && s.work().revision().equals(work.revision()));
    }
    String words = subject.name() + "\nagainst " + same.size() + " earlier, " + what + ".";
    return new Measure(subject.name(), same, words);
  }

  private static Measure among(List<Sound> sessions) {
    Sound last = sessions.get(0);
    for (Sound one : sessions) {
      last = one.began() > last.began() ? one : last;
    }
    String name = last.name();
    List<String> others = names(sessions, s -> !s.name().equals(name));
    return new Measure(name, others, name + "\nagainst the " + others.size() + " others named.");
  }

  private static List<String> names(List<Sound> sessions, Predicate<Sound> wanted) {
    return sessions.stream().filter(wanted).map(Sound::name).toList();
  }

  private static Fault nothing(String place, String found) {
    return new Fault(FleetCode.NOTHING_TO_COMPARE, place, found, "one that \"sessions\" lists");
  }
}
