package org.undercall.hearing;

/** What came of saying something once. */
enum Result {
  /** What was said was heard, and nothing else. */
  RIGHT("heard right"),
  /** Something came that is no phrase, so the program asks again. */
  ASKED("asked again"),
  /** Nothing came at all; the technician has to say it again unasked. */
  SILENT("not heard"),
  /** Something else was heard. */
  WRONG("heard wrong");

  private final String title;

  Result(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }
}
