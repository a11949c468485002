package org.undercall.core.writing;

import org.undercall.core.intent.AnswerTable;
import org.undercall.core.reply.AskToWrite;
import org.undercall.core.reply.Wanted;

/** The words an answer is read back with. */
final class ReadBack {
  private ReadBack() {}

  static String words(Wanted wanted, String text) {
    if (text.equals(Given.NONE) || wanted.choices().contains(text)) {
      return AnswerTable.said(text).get(0);
    }
    return switch (wanted) {
      case THREAD -> AskToWrite.thread(text);
      case MARKING, MORE_MARKINGS -> AskToWrite.marking(text);
      case ORDER -> text.replace("-", ", ");
      default -> text;
    };
  }
}
