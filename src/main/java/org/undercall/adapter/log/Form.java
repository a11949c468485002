package org.undercall.adapter.log;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Positions;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.port.Fault;

/**
 * How one type of field stands in the log.
 *
 * @param type the type, boxed
 * @param shape the form in words, for messages and the dictionary
 * @param write the value as JSON
 * @param fits whether a JSON value can be read at all
 * @param read the value from JSON that fits
 */
record Form<T>(
    Class<T> type,
    String shape,
    Function<T, JsonNode> write,
    Predicate<JsonNode> fits,
    Function<JsonNode, T> read) {

  private static final Pattern MEASURE =
      Pattern.compile("(-?[0-9]{1,12}(?:\\.[0-9]{1,12})?) (\\S+)");
  private static final int LONGEST_NUMBER = 40;

  private static final List<Form<?>> ALL =
      List.of(
          text(String.class, "text", s -> s, s -> s),
          new Form<>(
              Boolean.class,
              "true or false",
              BooleanNode::valueOf,
              JsonNode::isBoolean,
              JsonNode::booleanValue),
          new Form<>(
              Integer.class,
              "whole number",
              i -> LongNode.valueOf(i),
              n -> n.isIntegralNumber() && n.canConvertToInt(),
              JsonNode::intValue),
          new Form<>(
              Long.class,
              "whole number",
              LongNode::valueOf,
              n -> n.isIntegralNumber() && n.canConvertToLong(),
              JsonNode::longValue),
          new Form<>(
              BigDecimal.class,
              "exact number",
              DecimalNode::valueOf,
              Form::isShort,
              JsonNode::decimalValue),
          text(
              Instant.class,
              "ISO instant of the years 1 to 9999",
              Instant::toString,
              WrittenTime::instant),
          text(StepRef.class, "step id with /left or /right", StepRef::toString, Form::step),
          text(Measure.class, "number, blank, unit", Measure::toString, Form::measure),
          text(
              Positions.class,
              "numbers from 1 with blanks between them",
              Positions::toString,
              Form::positions),
          text(HeadMarking.class, "property class", HeadMarking::text, HeadMarking::new));

  private static final Map<Class<?>, Form<?>> BY_TYPE = byType();

  /** Whether a number has few digits when it is written out: 1E+999999999 has not. */
  private static boolean isShort(JsonNode node) {
    if (!node.isNumber()) {
      return false;
    }
    BigDecimal number = node.decimalValue();
    return number.precision() <= LONGEST_NUMBER
        && Math.abs((long) number.scale()) <= LONGEST_NUMBER;
  }

  /** The form of a type that is no enum. */
  static Form<?> of(Class<?> type) {
    Form<?> form = BY_TYPE.get(type);
    if (form == null) {
      throw new IllegalStateException("no form for " + type);
    }
    return form;
  }

  private static Map<Class<?>, Form<?>> byType() {
    Map<Class<?>, Form<?>> forms = new HashMap<>();
    for (Form<?> form : ALL) {
      forms.put(form.type(), form);
      forms.put(java.lang.invoke.MethodType.methodType(form.type()).unwrap().returnType(), form);
    }
    return forms;
  }

  JsonNode toJson(Object value) {
    return write.apply(type.cast(value));
  }

  T fromJson(String member, JsonNode node) throws Fault {
    if (!fits.test(node)) {
      throw new Fault(LogCode.BAD_MEMBER, "member " + member, node.toString(), shape);
    }
    try {
      return read.apply(node);
    } catch (IllegalArgumentException | DateTimeException e) {
      throw new Fault(LogCode.BAD_MEMBER, "member " + member, node.toString(), shape);
    }
  }

  private static <T> Form<T> text(
      Class<T> type, String shape, Function<T, String> write, Function<String, T> read) {
    return new Form<>(
        type,
        shape,
        value -> TextNode.valueOf(write.apply(value)),
        JsonNode::isTextual,
        node -> read.apply(node.textValue()));
  }

  private static StepRef step(String text) {
    for (Side side : List.of(Side.values())) {
      String end = "/" + Kebab.of(side);
      if (text.endsWith(end)) {
        return new StepRef(text.substring(0, text.length() - end.length()), side);
      }
    }
    return new StepRef(text, Side.CAR);
  }

  private static Positions positions(String text) {
    if (!text.matches("[1-9][0-9]{0,2}( [1-9][0-9]{0,2})*")) {
      throw new IllegalArgumentException(text);
    }
    return new Positions(Stream.of(text.split(" ", -1)).map(Integer::valueOf).toList());
  }

  private static Measure measure(String text) {
    Matcher parts = MEASURE.matcher(text);
    if (parts.matches()) {
      for (MeasureUnit unit : MeasureUnit.values()) {
        if (unit.symbol().equals(parts.group(2))) {
          return new Measure(new BigDecimal(parts.group(1)), unit);
        }
      }
    }
    throw new IllegalArgumentException(text);
  }
}
