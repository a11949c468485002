package org.undercall.command.fleet;

/** Lines of at most 80 columns; what is longer goes on in the next line. */
final class Lines {
  private static final int WIDTH = 80;

  private final StringBuilder text = new StringBuilder();

  /** Adds a line; further lines of it begin with the indent. */
  void add(String line, String indent) {
    String rest = line.stripTrailing();
    while (rest.length() > WIDTH) {
      int end = rest.lastIndexOf(' ', WIDTH);
      if (rest.substring(0, Math.max(0, end)).isBlank()) {
        end = WIDTH - (Character.isHighSurrogate(rest.charAt(WIDTH - 1)) ? 1 : 0);
      }
      text.append(rest.substring(0, end).stripTrailing()).append('\n');
      rest = indent + rest.substring(end).strip();
    }
    text.append(rest).append('\n');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
