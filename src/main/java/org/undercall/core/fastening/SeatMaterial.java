package org.undercall.core.fastening;

/**
 * The surface pressure under a head or nut that a material bears.
 *
 * <p>Limits pG of VDI 2230 Part 1 of 2003, table A9, read in a supplier's printing of it. Values
 * marked there as not yet checked against the latest research say so here. They hold for holes
 * without a chamfer, parts wide enough and room temperature. Strain hardening, a coating or a
 * hardened washer change them.
 */
public enum SeatMaterial {
  S235("steel S235 (St 37-2)", 490, true),
  E295("steel E295 (St 50-2)", 710, true),
  S355("steel S355 (St 52-3)", 760, true),
  C45("steel C45, quenched and tempered", 630, false),
  STEEL_34CRMO4("steel 34CrMo4", 870, false),
  STEEL_34CRNIMO6("steel 34CrNiMo6", 1080, false),
  STEEL_16MNCR5("steel 16MnCr5", 900, false),
  STAINLESS_1_4303("stainless X5CrNi18-12", 630, true),
  STAINLESS_1_4401("stainless X5CrNiMo17-12-2", 460, false),
  GJL_250("grey cast iron GJL 250", 900, true),
  GJS_400("nodular cast iron GJS 400", 700, false),
  GJS_500("nodular cast iron GJS 500", 900, false),
  GJS_600("nodular cast iron GJS 600", 1000, false),
  AW_6082("aluminium AlMgSi1 F31", 260, false),
  AW_5083("aluminium AlMg4.5Mn F27", 230, false),
  AW_7075("aluminium AlZnMgCu1.5", 410, false),
  SAND_CAST_ALSI9CU3("cast aluminium AlSi9Cu3, sand or gravity", 220, false),
  DIE_CAST_ALSI9CU3("cast aluminium AlSi9Cu3, die cast", 290, false),
  AZ91("magnesium AZ91", 280, false),
  TIAL6V4("titanium TiAl6V4", 890, false);

  private final String words;
  private final double limit;
  private final boolean checked;

  SeatMaterial(String words, double limit, boolean checked) {
    this.words = words;
    this.limit = limit;
    this.checked = checked;
  }

  /** The material in words. */
  public String words() {
    return words;
  }

  /** The largest pressure pG. */
  public Stress limit() {
    return new Stress(limit);
  }

  /** Whether the table counts the value as checked against the latest research. */
  public boolean checked() {
    return checked;
  }
}
