package org.undercall.core.intent;

/** What can be said at a question in place of an answer. */
public enum AnswerCommand {
  /** Say the question again. */
  REPEAT,
  /** Say what it is for. */
  EXPLAIN,
  /** Ask the question before. */
  BACK,
  /** Show what is there. */
  LIST,
  /** Type this answer. */
  TYPE,
  /** Keep it and end. */
  STOP,
  /** What was read back is right. */
  RIGHT,
  /** What was read back is wrong. */
  WRONG,
  /** Write the procedure. */
  WRITE
}
