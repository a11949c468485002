package org.undercall.core.fastening.reference;

/** Where an outside value comes from. */
enum Basis {
  READ("read in the source"),
  RECALLED("recalled from the source, not read again"),
  COMPUTED("computed beforehand, apart from this program");

  private final String words;

  Basis(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
