package org.undercall.core.procedure;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.undercall.core.term.Torque;

/**
 * The torque wrenches of a procedure and the number by which each is called: the one in its name,
 * as in "wrench 2", if every name ends in another number, else its place in the list.
 *
 * @param tools in their order
 */
public record Wrenches(List<Tool> tools) {
  private static final Pattern NUMBERED = Pattern.compile("(?:.*\\D)?([1-9][0-9]?)");

  public Wrenches {
    tools = List.copyOf(tools);
  }

  /** The wrench with a name; empty if there is none. */
  public Optional<Tool> called(String id) {
    return tools.stream().filter(tool -> tool.id().equals(id)).findFirst();
  }

  /** The wrench with a number; empty if there is none. */
  public Optional<Tool> called(int number) {
    return tools.stream().filter(tool -> number(tool) == number).findFirst();
  }

  /** The number of a wrench of the list. */
  public int number(Tool tool) {
    return numbers().get(tools.indexOf(tool));
  }

  /** The numbers of all, in their order. */
  public List<Integer> numbers() {
    List<Integer> own = tools.stream().map(tool -> own(tool.id())).toList();
    boolean distinct = new HashSet<>(own).size() == own.size() && !own.contains(0);
    return distinct ? own : IntStream.rangeClosed(1, tools.size()).boxed().toList();
  }

  private static int own(String id) {
    Matcher matcher = NUMBERED.matcher(id);
    return matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
  }

  /** Those that could serve for a torque: with its unit, and its range holds it. */
  public List<Tool> serving(Torque torque) {
    return tools.stream().filter(tool -> tool.serves(torque)).toList();
  }

  /** Whether more than one could be taken for a torque, be it with a scale in another unit. */
  public boolean leaveAChoice(Torque torque) {
    return tools.stream().filter(tool -> tool.covers(torque)).count() > 1;
  }
}
