package org.undercall.hearing;

/** What hearing is held against. */
enum Goal {
  NEAR_MISS(
      "a wrong value accepted as the specification, near misses, clean and down to 5 dB", "0"),
  FREE_VALUE("a measured value stored without read-back and confirmation", "0"),
  CONFUSION(
      "a phrase heard as another that changes the state, clean and down to 0 dB",
      "0 (down to 5 dB)"),
  CLOSINGS("closings or load confirmations out of chatter and noise", "0"),
  OTHERS("other false acceptances out of chatter and noise", "0.5 an hour"),
  DENIED("a denied closing phrase believed, clean and down to 5 dB", "0"),
  NEAR("a closing phrase with another word in it believed, clean and at 10 dB", "0.1 %"),
  DANGER("calls of danger obeyed at once: clean", "99 %"),
  DANGER_10("... at 10 dB", "95 %"),
  CANCELLING("loads cancelled out of chatter and noise", "0.5 an hour"),
  PHRASES("phrases right at the first try, plain synthetic speakers: clean", "99 %"),
  PHRASES_10("... at 10 dB", "97 %"),
  PHRASES_5("... at 5 dB", "92 %"),
  VALUES("values of three digits by real people, right at the first try: clean", "97 %"),
  VALUES_10("... at 10 dB", "85 %, the rest asked again"),
  VALUES_5("... at 5 dB", "75 %, the rest asked again"),
  DELAY("end of speech to decision, fixed phrases, clean: median, 95th percentile", "0.35, 0.5 s"),
  DELAY_VALUES("... real people's values", "0.3, 0.5 s"),
  IDLE("processor in silence", "3 % of a core"),
  MEMORY("memory at the end of an hour of sound, and half-way", "300 MB, flat");

  private final String figure;
  private final String aim;

  Goal(String figure, String aim) {
    this.figure = figure;
    this.aim = aim;
  }

  String figure() {
    return figure;
  }

  String aim() {
    return aim;
  }
}
