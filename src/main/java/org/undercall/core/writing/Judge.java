package org.undercall.core.writing;

import java.util.List;

/** Judges a whole draft as it would be judged if it were imported. */
public interface Judge {
  /** What cannot be taken, a line each with its code; none if all can. */
  List<String> doubts(Draft whole);
}
