package org.undercall.command.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.adapter.fleet.IndexRow;
import org.undercall.core.review.Facts;
import org.undercall.core.term.Job;
import org.undercall.port.Fault;

/** What is open of one car in all its sessions, the newest first, and what was done since. */
final class OfCar {
  private static final List<String> COLUMNS =
      List.of("session", "started", "odometer", "state", "step", "what", "detail", "since");

  private final List<IndexRow> sessions;

  private OfCar(List<IndexRow> sessions) {
    this.sessions = sessions;
  }

  /**
   * The open items of a car: a row each, and one without an item for a session with none.
   *
   * @param car its registration or vehicle number
   */
  static Grid of(Fleet fleet, String car) throws Fault {
    List<IndexRow> sessions = new ArrayList<>();
    fleet.each(
        row -> {
          if (is(row.facts().told(), car)) {
            sessions.add(row);
          }
        });
    sessions.sort(
        Comparator.comparing((IndexRow row) -> -row.facts().times().firstMs())
            .thenComparing(IndexRow::session, Comparator.reverseOrder()));
    return new OfCar(sessions).grid();
  }

  private static boolean is(Facts.Told told, String car) {
    boolean plate = !told.registration().isEmpty() && Job.samePlate(told.registration(), car);
    return plate || (!told.vin().isEmpty() && Job.samePlate(told.vin(), car));
  }

  private Grid grid() {
    List<List<Optional<Object>>> rows = new ArrayList<>();
    for (IndexRow session : sessions) {
      List<Facts.Due> items = new ArrayList<>(session.facts().due());
      items.addAll(session.facts().found());
      session.facts().told().moved().stream()
          .filter(step -> isLast(session))
          .map(step -> new Facts.Due(step, "had moved", "to be looked at again", ""))
          .forEach(items::add);
      items.forEach(item -> rows.add(row(session, Optional.of(item))));
      if (items.isEmpty()) {
        rows.add(row(session, Optional.empty()));
      }
    }
    return new Grid(COLUMNS, rows);
  }

  /** Whether no later visit to the same session found everything in its place. */
  private boolean isLast(IndexRow visit) {
    Facts.Told told = visit.facts().told();
    return sessions.stream()
        .filter(later -> later.facts().told().visitOf().equals(told.visitOf()))
        .filter(later -> later.facts().times().firstMs() > visit.facts().times().firstMs())
        .noneMatch(later -> counts(later) && later.facts().told().moved().isEmpty());
  }

  private List<Optional<Object>> row(IndexRow session, Optional<Facts.Due> item) {
    Facts facts = session.facts();
    String kind = !facts.work().madeInWork() ? facts.work().occasion() : facts.work().state();
    return List.of(
        Optional.of(session.session()),
        Optional.of(facts.times().firstAt()),
        some(facts.told().odometer()),
        Optional.of(kind),
        some(item.map(Facts.Due::step).orElse("")),
        some(item.map(Facts.Due::what).orElse("")),
        some(item.map(Facts.Due::detail).orElse("")),
        some(item.map(due -> since(session, due)).orElse("")));
  }

  /** The visits for an item that tells to tighten something again, the first one first. */
  private String since(IndexRow session, Facts.Due item) {
    if (!session.facts().told().again().contains(item.step())) {
      return "";
    }
    List<String> words = new ArrayList<>();
    for (IndexRow visit : sessions) {
      if (visit.facts().told().visitOf().equals(session.session())) {
        words.add(0, (counts(visit) ? "done by " : "not done by ") + visit.session());
      }
    }
    return String.join("; ", words);
  }

  private static boolean counts(IndexRow visit) {
    return visit.facts().work().state().equals(Facts.COMPLETE) && visit.facts().work().madeInWork();
  }

  private static Optional<Object> some(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  /** The rows as text: a session and its items below. */
  static String text(Grid grid) {
    Lines lines = new Lines();
    String before = "";
    for (int i = 0; i < grid.size(); i++) {
      String session = grid.text(i, "session");
      if (!session.equals(before)) {
        String km = grid.text(i, "odometer");
        String began =
            (grid.text(i, "started").replace('T', ' ') + " ".repeat(16)).substring(0, 16);
        String at = km.isEmpty() ? "" : "  " + km + " km";
        lines.add(began + "  " + grid.text(i, "state") + at + "  " + session, "  ");
        before = session;
      }
      String item = grid.text(i, "step") + ": " + grid.text(i, "what");
      String since = grid.text(i, "since");
      lines.add(
          grid.text(i, "what").isEmpty()
              ? "    nothing open"
              : "    "
                  + (since.startsWith("done by") || since.contains("; done by") ? "[x] " : "[ ] ")
                  + item
                  + (" " + grid.text(i, "detail")).stripTrailing()
                  + (since.isEmpty() ? "" : "; " + since),
          "        ");
    }
    return lines.toString();
  }
}
