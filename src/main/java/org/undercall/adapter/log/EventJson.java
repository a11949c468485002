package org.undercall.adapter.log;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
  private EventJson() {}

  static ObjectNode write(SessionEvent event) {
    EventKind kind = EventKind.of(event);
    ObjectNode node = LogJson.object().put("id", kind.id()).put("event", Kebab.of(kind));
    for (RecordComponent field : kind.type().getRecordComponents()) {
      Object value = get(field, event);
      Object present = value instanceof Optional<?> optional ? optional.orElse(null) : value;
      if (present != null) {
        node.set(field.getName(), toJson(present));
      }
    }
    return node;
  }

  static SessionEvent read(EventKind kind, JsonNode node) throws Fault {
    RecordComponent[] fields = kind.type().getRecordComponents();
    Object[] values = new Object[fields.length];
    for (int i = 0; i < fields.length; i++) {
      values[i] = value(fields[i], node);
    }
    Class<?>[] types = Arrays.stream(fields).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return kind.type().getDeclaredConstructor(types).newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("every event is a public record: " + kind, e);
    }
  }

  /** The form of a field in words, for the dictionary. */
  static String shape(RecordComponent field) {
    Class<?> type = inner(field);
    String shape = type.isEnum() ? names(type) : Form.of(type).shape();
    return field.getType() == Optional.class ? shape + "; left out if empty" : shape;
  }

  private static Object get(RecordComponent field, SessionEvent event) {
    try {
      return field.getAccessor().invoke(event);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("every event is a public record: " + event, e);
    }
  }

  private static JsonNode toJson(Object value) {
    return value instanceof Enum<?> constant
        ? TextNode.valueOf(Kebab.of(constant))
        : Form.of(value.getClass()).toJson(value);
  }

  private static Object value(RecordComponent field, JsonNode node) throws Fault {
    boolean optional = field.getType() == Optional.class;
    JsonNode member = node.get(field.getName());
    if (member == null) {
      if (optional) {
        return Optional.empty();
      }
      throw new Fault(LogCode.BAD_MEMBER, "member " + field.getName(), "nothing", shape(field));
    }
    Class<?> type = inner(field);
    Object value =
        type.isEnum()
            ? constant(field.getName(), type, member)
            : Form.of(type).fromJson(field.getName(), member);
    return optional ? Optional.of(value) : value;
  }

  private static Object constant(String name, Class<?> type, JsonNode member) throws Fault {
    return constants(type)
        .filter(c -> Kebab.of(c).equals(member.textValue()))
        .findFirst()
        .orElseThrow(
            () -> new Fault(LogCode.BAD_MEMBER, "member " + name, member.toString(), names(type)));
  }

  private static Stream<Enum<?>> constants(Class<?> type) {
    return Arrays.stream(type.getEnumConstants()).map(c -> (Enum<?>) c);
  }

  private static String names(Class<?> type) {
    return constants(type).map(Kebab::of).collect(Collectors.joining(" | "));
  }

  private static Class<?> inner(RecordComponent field) {
    return field.getGenericType() instanceof ParameterizedType generic
        ? (Class<?>) generic.getActualTypeArguments()[0]
        : field.getType();
  }
}
