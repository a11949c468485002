package org.undercall.core.check;

/** What a rule rests on: its source, what it assumes, and what it cannot see. */
enum Basis {
  TORQUE(
      "VDI 2230 Part 1; ISO 898-1:2013",
      "long form, yield at the onset of plastic torsion, friction of the state of thread and seat"
          + " or as stated, seat of a standard hexagon if none is stated; without a head marking"
          + " 12.9 for too high and 4.6 for too low",
      "flanges, washers and coatings that are not stated"),
  SPREAD(
      "VDI 2230 Part 1; ISO 6789-1:2017",
      "friction, torque and wrench spread evenly between their ends, drawn 10 000 times from a"
          + " fixed seed",
      "how friction is really spread; a bolt that is stronger than the least of its class"),
  ANGLE(
      "VDI 2230 Part 1; ISO 898-1:2013",
      "the stated joint; without one a long joint for too far and a short one for too little",
      "parts that settle, and how far a turn is lost before they lie flat"),
  SHARE("choice of this program", "nothing else", "why an author chose the value"),
  STATE(
      "VDI 2230 Part 1, table A5: preload depends on it",
      "nothing else",
      "what the part is really coated with"),
  BUSH(
      "a bonded bush keeps the twist it is tightened with: common practice",
      "a fastener holds a bush if it says so; by its name only where nothing is stated",
      "bushes that turn freely, unless they are stated as such"),
  PRACTICE("common practice, no source", "nothing else", "what the maker says"),
  FORM(
      "follows from the procedure itself",
      "what is not written is not done",
      "what is not written"),
  WORDS(
      "follows from the procedure itself",
      "the words of titles and names are read in English",
      "what other words mean"),
  LOAD_WORDS(
      "follows from the procedure itself; what the words mean: common practice, no source",
      "a part of a sentence asks for a load condition if it tells to tighten at it, or is nothing"
          + " else, in English",
      "other words, a sentence with two conditions, and the fasteners of a wheel"),
  WHEEL(
      "published repair and owner manuals: diagonally",
      "a wheel is held by what says so; else guessed from wheel, lug, stud and rim in the name of"
          + " three or more",
      "positions that are not numbered one after the other round the circle"),
  WHEEL_DRY(
      "published owner manuals: wheel bolts and studs dry, unless the maker says so",
      "as for the order of a wheel",
      "what the maker says"),
  WHEEL_AGAIN(
      "published tyre maker's advice: check again after 50 km, or the maker's statement",
      "a hand-over asks for it if a sentence of it tells to check or tighten, without a no",
      "other words for it"),
  RENEWED(
      "published repair manuals: new each time, unless the maker allows re-use",
      "nothing else",
      "what the maker allows"),
  MARKS("ISO 898-1 for the strengths; common practice, no source", "nothing else", "the real part"),
  TOOL(
      "ISO 6789-1:2017: from the lowest marked value",
      "the least that a tool states is its lowest marked value",
      "a scale that is marked otherwise"),
  TOOL_PROOF(
      "ISO 6789-1:2017: 4 %, up to 10 N·m 6 %; ISO 6789-2 if an uncertainty is stated",
      "the best of the wrenches that cover the torque is used", "how the wrench is handled"),
  CALIBRATION(
      "ISO 6789-1:2017: 12 months, if nothing else is laid down",
      "nothing else",
      "another period of the workshop"),
  STANDS(
      "published repair manuals: never rely on a jack alone",
      "a sentence tells it if stands carry, hold or are used in it, without a no; guessed",
      "other words for it"),
  DRIVE("ISO 272 and common practice, from memory", "nothing else", "heads of a special form"),
  NUT(
      "ISO 898-2:2012",
      "a nut of style 1 or 2; a thin one, and one on a bolt without a class, is judged by its proof"
          + " load",
      "its height"),
  THREADS("ISO 261, M4 to M24", "nothing else", "other threads"),
  CLASSES("ISO 898-1:2013: class 9.8 up to 16 mm", "nothing else", "the real part"),
  THUMB(
      "rule of thumb: 1 diameter in steel, 1.5 in cast iron, 2 in aluminium; common practice, no"
          + " source",
      "nothing else",
      "the strength of the part, inserts"),
  STRIP(
      "VDI 2230 Part 1, engaged threads; strengths of usual materials, from memory",
      "the strongest usual material of its kind, the most friction",
      "inserts, chamfers and worn threads"),
  PRESSURE(
      "VDI 2230 Part 1, pressure under the head; limits of table A9",
      "friction in the middle; the strongest usual material of its kind, the ring of the seat within"
          + " the clamped parts",
      "hardened washers that are not stated"),
  EMBED(
      "VDI 2230 Part 1, table 5: embedding",
      "the smoothest surfaces, one between the clamped parts, friction in the middle",
      "coats of paint, which settle more"),
  PREVAILING(
      "ISO 2320: prevailing torque, from memory",
      "a nut as new, at the largest the standard permits; class 8 if none is stated",
      "the real nut: measure it as it runs down");

  private final String source;
  private final String assumes;
  private final String unseen;

  Basis(String source, String assumes, String unseen) {
    this.source = source;
    this.assumes = assumes;
    this.unseen = unseen;
  }

  String source() {
    return source;
  }

  String assumes() {
    return assumes;
  }

  String unseen() {
    return unseen;
  }
}
