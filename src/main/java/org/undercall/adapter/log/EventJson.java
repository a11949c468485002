package org.undercall.adapter.log;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Kebab;
import org.undercall.port.Fault;

/**
 * An event as a JSON object: its id, its name, then its fields in the order of its record.
 *
 * <p>An empty field is left out. On reading, the id alone decides which event it is; the name is
 * for the eye, and members that the record does not have are passed over.
 */
final class EventJson {
  private static final Map<EventKind, Shape> SHAPES = new EnumMap<>(EventKind.class);

  static {
    for (EventKind kind : EventKind.values()) {
      SHAPES.put(kind, shape(kind));
    }
  }

  private EventJson() {}

  /** How one kind of event is made and what it has. */
  private record Shape(Constructor<? extends SessionEvent> maker, List<EventField> fields) {}

  private static Shape shape(EventKind kind) {
    RecordComponent[] fields = kind.type().getRecordComponents();
    Class<?>[] types = Arrays.stream(fields).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return new Shape(
          kind.type().getDeclaredConstructor(types),
          Arrays.stream(fields).map(EventField::of).toList());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("every event is a public record: " + kind, e);
    }
  }

  static ObjectNode write(SessionEvent event) {
    EventKind kind = EventKind.of(event);
    ObjectNode node = LogJson.object().put("id", kind.id()).put("event", Kebab.of(kind));
    for (EventField field : SHAPES.get(kind).fields()) {
      field.of(event).ifPresent(value -> node.set(field.name(), value));
    }
    return node;
  }

  static SessionEvent read(EventKind kind, JsonNode node) throws Fault {
    Shape shape = SHAPES.get(kind);
    Object[] values = new Object[shape.fields().size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = shape.fields().get(i).from(node);
    }
    try {
      return shape.maker().newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("every event is a public record: " + kind, e);
    }
  }
}
