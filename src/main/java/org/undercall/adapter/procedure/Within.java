package org.undercall.adapter.procedure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.procedure.BlockFiles.Source;

/**
 * Where a piece is put together.
 *
 * @param scope what it can refer to
 * @param prefix what is put before its ids
 * @param chain the procedure, and the blocks that led to here, the innermost last
 */
record Within(Scope scope, String prefix, List<Source> chain) {
  /** The file in which it is written. */
  Source file() {
    return chain.get(chain.size() - 1);
  }

  /** How many blocks are around it. */
  int depth() {
    return chain.size() - 1;
  }

  /** Whether it is in that file, at once or through others. */
  boolean isIn(Path real) {
    return chain.stream().anyMatch(file -> file.real().equals(real));
  }

  /** One block further in. */
  Within inside(Scope other, String ids, Source block) {
    List<Source> longer = new ArrayList<>(chain);
    longer.add(block);
    return new Within(other, prefix + ids, longer);
  }
}
