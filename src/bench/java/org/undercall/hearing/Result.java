package org.undercall.hearing;

/** What came of saying something once. */
enum Result {
  /** What was said was heard, and nothing else. */
  RIGHT("heard right"),
  /** Something came that is no phrase, so the program asks again. */
  ASKED("asked again"),
  /** Nothing came at all; the technician has to say it again unasked. */
  SILENT("not heard"),
  /** What was said came in two or more pieces, each a phrase of its own or none. */
  CUT("cut in two"),
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
