package org.undercall.command.doctor;

import java.util.Locale;

/** What only the doctor finds. Numbers are permanent and never given out again. */
public enum DoctorCode {
  OLD_JAVA(1, "Java is older than 17."),
  NO_ANSWER(2, "A check did not end in time; the device or disk hangs."),
  UNEXPECTED(3, "A check failed in a way nobody thought of."),
  NOT_WRITABLE(4, "The folder of sessions cannot be written."),
  LITTLE_SPACE(5, "There is little space left for sessions."),
  SLOW_DISK(6, "The disk takes long until a decision is on it."),
  DEAD_SILENCE(7, "The microphone gives not the faintest noise."),
  OVERDRIVEN(8, "The sound of the microphone is cut off at its loudest."),
  LOUD(9, "It is loud at the microphone."),
  NO_DETECTOR(10, "The native detector of speech cannot be loaded."),
  NO_PROCEDURE(11, "No procedure was found."),
  LITTLE_MEMORY(12, "Java may use little memory."),
  UNREAD_FILE(13, "A file lies in an old place and is not read, because the new one is there.");

  private final int number;
  private final String meaning;

  DoctorCode(int number, String meaning) {
    this.number = number;
    this.meaning = meaning;
  }

  /** The code as printed, for example {@code DOC-004}. */
  public String code() {
    return String.format(Locale.ROOT, "DOC-%03d", number);
  }

  /** What is wrong, in one sentence. */
  public String meaning() {
    return meaning;
  }

  /** A line with the code. */
  String line(String found, String expected) {
    return code() + " found " + found + ", expected " + expected;
  }
}
