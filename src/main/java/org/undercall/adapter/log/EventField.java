package org.undercall.adapter.log;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Kebab;
import org.undercall.port.Fault;

/**
 * One field of an event, as it stands in the log.
 *
 * @param component the field of the record
 * @param optional whether it is left out if it is empty
 * @param type the type of its value, without the {@code Optional}
 * @param constants the values of an enum by their names in the log; empty for any other type
 */
record EventField(
    RecordComponent component, boolean optional, Class<?> type, Map<String, Enum<?>> constants) {

  static EventField of(RecordComponent component) {
    Class<?> type =
        component.getGenericType() instanceof ParameterizedType generic
            ? (Class<?>) generic.getActualTypeArguments()[0]
            : component.getType();
    Map<String, Enum<?>> constants = new LinkedHashMap<>();
    if (type.isEnum()) {
      Arrays.stream(type.getEnumConstants())
          .map(c -> (Enum<?>) c)
          .forEach(c -> constants.put(Kebab.of(c), c));
    }
    return new EventField(component, component.getType() == Optional.class, type, constants);
  }

  String name() {
    return component.getName();
  }

  /** The form in words, for messages and the dictionary. */
  String shape() {
    String shape = type.isEnum() ? names() : Form.of(type).shape();
    return optional ? shape + "; left out if empty" : shape;
  }

  private String names() {
    return String.join(" | ", constants.keySet());
  }

  /** The value in an event; empty if it is to be left out. */
  Optional<JsonNode> of(SessionEvent event) {
    Object value;
    try {
      value = component.getAccessor().invoke(event);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("every event is a public record: " + event, e);
    }
    Object present = value instanceof Optional<?> o ? o.orElse(null) : value;
    return Optional.ofNullable(present).map(EventField::json);
  }

  private static JsonNode json(Object value) {
    return value instanceof Enum<?> constant
        ? TextNode.valueOf(Kebab.of(constant))
        : Form.of(value.getClass()).toJson(value);
  }

  /** The value in a JSON object, as the record takes it. */
  Object from(JsonNode node) throws Fault {
    JsonNode member = node.get(name());
    if (member == null) {
      if (optional) {
        return Optional.empty();
      }
      throw new Fault(LogCode.BAD_MEMBER, "member " + name(), "nothing", shape());
    }
    Object value = type.isEnum() ? constant(member) : Form.of(type).fromJson(name(), member);
    return optional ? Optional.of(value) : value;
  }

  private Object constant(JsonNode member) throws Fault {
    Object constant = constants.get(member.asText());
    if (constant == null || !member.isTextual()) {
      throw new Fault(LogCode.BAD_MEMBER, "member " + name(), member.toString(), names());
    }
    return constant;
  }
}
