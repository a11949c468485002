package org.undercall.core.fastening;

/** The numbers in front of pitch and thread friction in the long form of the torque equation. */
public enum TorqueLaw {
  /** Rounded as VDI 2230 Part 1 prints them: 0.16 P + 0.58 d2 µG. */
  VDI_2230(0.16, 0.58),
  /** As they follow from a 60 degree thread, ISO 16047: P/(2π) + d2 µG/√3. */
  ISO_16047(1 / (2 * Math.PI), 1 / Math.sqrt(3));

  private final double pitch;
  private final double thread;

  TorqueLaw(double pitch, double thread) {
    this.pitch = pitch;
    this.thread = thread;
  }

  /** The number in front of the pitch. */
  double pitch() {
    return pitch;
  }

  /** The number in front of the pitch diameter and thread friction. */
  double thread() {
    return thread;
  }
}
