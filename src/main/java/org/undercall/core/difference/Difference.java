package org.undercall.core.difference;

/**
 * One difference between two procedures.
 *
 * @param weight how much it matters
 * @param step the id of the step it is about, as in the newer one if it is there; blank for the
 *     procedure as a whole
 * @param where the fastener, the title of the step or the phase; "procedure" for the whole
 * @param what the field, for example "stage 1 torque"
 * @param before its value in the older one; blank if it has none
 * @param after its value in the newer one; blank if it has none
 * @param note what is to be known of it beside; blank if nothing
 */
public record Difference(
    Weight weight,
    String step,
    String where,
    String what,
    String before,
    String after,
    String note) {

  /** The difference as one line, without its weight. */
  public String line() {
    String values = before.isEmpty() && after.isEmpty() ? "" : " " + was() + " -> " + is();
    return where + ": " + what + values + (note.isEmpty() ? "" : " (" + note + ")");
  }

  private String was() {
    int cut = before.lastIndexOf(' ');
    boolean sameUnit =
        cut > 0
            && after.endsWith(before.substring(cut))
            && before.substring(0, cut).matches("[0-9.]+");
    return before.isEmpty() ? "none" : sameUnit ? before.substring(0, cut) : before;
  }

  private String is() {
    return after.isEmpty() ? "none" : after;
  }
}
