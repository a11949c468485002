package org.undercall.command.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercall.adapter.table.TableFault;
import org.undercall.adapter.table.TableFaults;
import org.undercall.adapter.table.TorqueTable;

/** What was typed so far, as the table of torques that {@code import} reads. */
final class TypedTable {
  private static final Pattern CELL = Pattern.compile(".* ([A-Z])([0-9]+)");

  /** What is asked of each fastener, in this order. */
  enum Question {
    FASTENER("Fastener, such as bush bolt", ""),
    SIDE("Side: both (each side has it) or car", "both"),
    THREAD("Thread with pitch, such as M12x1.5", ""),
    HARDWARE("Hardware: bolt, nut or self-locking nut", "bolt"),
    CLASS("Class on the head, such as 10.9; - if the value does not depend on it", "-"),
    TORQUE("Torque with tolerance and unit, such as 52 ± 3 Nm", ""),
    ANGLE("Angle after it with tolerance, such as 60 ± 5; - for none", "-"),
    SOCKET("Socket in mm", ""),
    LOAD_CONDITION("Load condition: any, ride height or full droop", "any"),
    JOINT("Joint: rigid, bonded bush or spherical joint", "rigid"),
    ONE_TIME_USE("One-time use, new each time: yes or no", "no"),
    LUBRICATION("Thread and seat: dry, oiled, greased, threadlocker, as delivered", "as delivered");

    private final String text;
    private final String otherwise;

    Question(String text, String otherwise) {
      this.text = text;
      this.otherwise = otherwise;
    }

    String text() {
      return text;
    }

    /** The answer if none is given; blank if one must be. */
    String otherwise() {
      return otherwise;
    }

    private String heading() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
  }

  /** An answer that cannot be taken. */
  record Doubt(Optional<Question> question, String told) {}

  private final Map<String, String> head = new LinkedHashMap<>();
  private final List<Map<Question, String>> rows = new ArrayList<>();

  /** Notes something about the whole procedure; a blank is left out. */
  void head(String name, String value) {
    if (!value.isBlank()) {
      head.put(name, value);
    }
  }

  void add(Map<Question, String> row) {
    rows.add(new EnumMap<>(row));
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The procedure so far, with all doubts. */
  TorqueTable read() throws TableFaults {
    return TorqueTable.readAgain(csv());
  }

  /** What cannot be taken of the head, seen with a fastener that is right. */
  List<Doubt> doubtsOfHead() throws TableFaults {
    Map<Question, String> right = new EnumMap<>(Question.class);
    for (Question question : Question.values()) {
      right.put(question, question.otherwise());
    }
    right.put(Question.FASTENER, "bolt");
    right.put(Question.THREAD, "M12x1.5");
    right.put(Question.TORQUE, "52 ± 3 Nm");
    right.put(Question.SOCKET, "18");
    return doubts(right);
  }

  /** What cannot be taken of a fastener, beside what is there. */
  List<Doubt> doubts(Map<Question, String> row) throws TableFaults {
    TypedTable with = new TypedTable();
    with.head.putAll(head);
    with.rows.addAll(rows);
    with.add(row);
    int last = with.head.size() + 1 + with.rows.size();
    return with.read().faults().stream().map(fault -> doubt(fault, last)).toList();
  }

  private static Doubt doubt(TableFault fault, int row) {
    String told =
        fault.code().code() + " found " + fault.found() + ", expected " + fault.expected();
    Matcher cell = CELL.matcher(fault.place());
    boolean here = cell.matches() && Integer.parseInt(cell.group(2)) == row;
    return new Doubt(
        here ? Optional.of(Question.values()[cell.group(1).charAt(0) - 'A']) : Optional.empty(),
        told);
  }

  /** The table as text, to be read again by {@code import}. */
  String csv() {
    Stream<String> above =
        head.entrySet().stream()
            .map(e -> line(Stream.concat(Stream.of(e.getKey()), parts(e).stream()).toList()));
    String headings =
        line(Arrays.stream(Question.values()).map(question -> question.heading()).toList());
    Stream<String> below =
        rows.stream().map(row -> line(Arrays.stream(Question.values()).map(row::get).toList()));
    return Stream.of(above, Stream.of(headings), below)
        .flatMap(lines -> lines)
        .collect(Collectors.joining("\r\n", "", "\r\n"));
  }

  /** A wrench has a cell for each of its parts. */
  private static List<String> parts(Map.Entry<String, String> entry) {
    return entry.getKey().equals("tool")
        ? Arrays.stream(entry.getValue().split(";", -1)).map(String::strip).toList()
        : List.of(entry.getValue());
  }

  private static String line(List<String> cells) {
    return cells.stream()
        .map(cell -> '"' + cell.replace("\"", "\"\"") + '"')
        .collect(Collectors.joining(";"));
  }
}
