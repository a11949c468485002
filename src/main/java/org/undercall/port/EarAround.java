package org.undercall.port;

/** An ear around another one, which it closes and to which it passes on what it does not do. */
public abstract class EarAround implements Ear {
  /** The ear inside. */
  protected final Ear ear;

  /** An ear around {@code ear}. */
  protected EarAround(Ear ear) {
    this.ear = ear;
  }

  @Override
  public void forget() {
    ear.forget();
  }

  @Override
  public void close() {
    ear.close();
  }
}
