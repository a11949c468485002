package org.undercall.adapter.drawing;

/** How large a plot is. */
public enum PlotSize {
  /** A picture by itself, with its title inside. */
  WHOLE(800, 500, 20, true),
  /** One of two beside each other on a page, which names it. */
  HALF(440, 285, 8, false);

  private final double wide;
  private final double high;
  private final int ticks;
  private final boolean titled;

  PlotSize(double wide, double high, int ticks, boolean titled) {
    this.wide = wide;
    this.high = high;
    this.ticks = ticks;
    this.titled = titled;
  }

  double wide() {
    return wide;
  }

  double high() {
    return high;
  }

  /** The most marks on an axis. */
  int ticks() {
    return ticks;
  }

  boolean titled() {
    return titled;
  }
}
