package org.undercall.adapter.desk;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.undercall.port.Fault;

/**
 * What the page can ask for, by the path it posts to. None takes a path of a file: the desk has one
 * file, which the command line names.
 *
 * @param byPath such as {@code /save}
 */
public record DeskActs(Map<String, Act> byPath) {
  /** Does what is asked. Several threads may use it. */
  public interface Act {
    /** The answer to an object that the page sent. */
    JsonNode answer(JsonNode asked) throws Fault;
  }

  public DeskActs {
    byPath = Map.copyOf(byPath);
  }
}
