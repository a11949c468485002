package org.undercall.adapter.log;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.undercall.core.event.SessionEvent;

/** The fields of an event, in the form the log has them. */
public final class EventFields {
  private EventFields() {}

  /** One JSON object in one line, without the event's id and name. */
  public static String json(SessionEvent event) {
    ObjectNode node = EventJson.write(event);
    node.remove(List.of("id", "event"));
    return LogJson.write(node);
  }
}
