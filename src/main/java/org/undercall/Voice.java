package org.undercall;

/** Where replies go: a speaker, a WAV file, the screen. One thread uses it. */
public interface Voice extends AutoCloseable {

  /** Says the words and returns when they have been said. */
  void say(String words);

  @Override
  void close();
}
