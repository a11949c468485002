package org.undercall.adapter.microphone;

/** Time and threads for what waits and tries again. */
interface Pace {

  /** Milliseconds of a clock that never goes back. */
  long nowMillis();

  /**
   * Waits.
   *
   * @throws InterruptedException if the thread is to end
   */
  void rest(long millis) throws InterruptedException;

  /** Does something on a thread that may hang for ever without harm. */
  void aside(Runnable work);

  /** The machine's clock and daemon threads. */
  static Pace ofMachine() {
    return new Pace() {
      @Override
      public long nowMillis() {
        return System.nanoTime() / 1_000_000;
      }

      @Override
      public void rest(long millis) throws InterruptedException {
        Thread.sleep(millis);
      }

      @Override
      public void aside(Runnable work) {
        Thread thread = new Thread(work, "microphone aside");
        thread.setDaemon(true);
        thread.start();
      }
    };
  }
}
