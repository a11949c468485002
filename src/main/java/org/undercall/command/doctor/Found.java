package org.undercall.command.doctor;

/**
 * What a check found.
 *
 * @param state how good it is
 * @param found what was found, in one line; trouble begins with its code
 * @param remedy what to do; empty if nothing
 */
record Found(State state, String found, String remedy) {

  /** How good it is. */
  enum State {
    /** As it should be. */
    WELL("well"),
    /** The work can be done, but somebody should look at it. */
    NOTE("note"),
    /** The work cannot be done by voice like this. */
    FAULT("fault");

    private final String word;

    State(String word) {
      this.word = word;
    }

    /** The word that is printed. */
    String word() {
      return word;
    }
  }

  Found {
    found = oneLine(found);
    if (state != State.WELL && remedy.isBlank()) {
      throw new IllegalArgumentException("trouble without a remedy: " + found);
    }
  }

  static Found well(String found) {
    return new Found(State.WELL, found, "");
  }

  static Found note(String found, String remedy) {
    return new Found(State.NOTE, found, remedy);
  }

  static Found fault(String found, String remedy) {
    return new Found(State.FAULT, found, remedy);
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s*\\R\\s*", " | ");
  }
}
