package org.undercall.hearing;

/** A synthetic speaker. Any thread may use it. */
interface Speaker {
  /** Its kind, as the tables name it. */
  Group group();

  /** The name of its voice. */
  String name();

  /** Says words of plain English. */
  Speech say(String words);

  /** Kinds of speakers. */
  enum Group {
    MARY("MaryTTS, one voice changed in pitch, throat and pace"),
    FLITE("flite"),
    ESPEAK("espeak-ng en-us and its plain variants"),
    ACCENT("espeak-ng, other accents"),
    ODD("espeak-ng en-us, all other variants but whispers");

    private final String title;

    Group(String title) {
      this.title = title;
    }

    String title() {
      return title;
    }

    /** Whether a person understands it without effort; the others are a stress. */
    boolean isPlain() {
      return this == MARY || this == FLITE || this == ESPEAK;
    }
  }
}
