package org.undercall.adapter.log;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Positions;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/** Sample events of every kind, built from the field types alone. */
final class Samples {
  static final String ODD_TEXT =
      "bolt \"A\"\\ worn\n\r\t\u000b\u000c\u0000\u001f\u007f\u0085\u2028\u2029\ufeff 90° N·m \ud83d\udd27 \ud800";

  private static final Map<Class<?>, List<?>> VALUES =
      Map.ofEntries(
          Map.entry(String.class, List.of("", "front strut", ODD_TEXT)),
          Map.entry(boolean.class, List.of(true, false)),
          Map.entry(int.class, List.of(1, 0, Integer.MAX_VALUE)),
          Map.entry(Integer.class, List.of(1, 3)),
          Map.entry(long.class, List.of(1200L, 0L, Long.MAX_VALUE)),
          Map.entry(
              BigDecimal.class,
              List.of(new BigDecimal("110.0"), dec("0.1"), dec("1E+2"), dec("1E-7"))),
          Map.entry(
              Instant.class,
              List.of(Instant.parse("2026-11-25T08:00:00Z"), Instant.ofEpochSecond(1, 123456789))),
          Map.entry(
              StepRef.class,
              List.of(
                  new StepRef("arm-bolt", Side.LEFT),
                  new StepRef("arm-bolt", Side.RIGHT),
                  new StepRef("arm-bolt", Side.CAR))),
          Map.entry(HeadMarking.class, List.of(new HeadMarking("10.9"), new HeadMarking("8.8"))),
          Map.entry(Positions.class, List.of(Positions.of(3), new Positions(List.of(1, 5, 2)))),
          Map.entry(Measure.class, measures()));

  private Samples() {}

  private static BigDecimal dec(String text) {
    return new BigDecimal(text);
  }

  private static List<Measure> measures() {
    return Arrays.stream(MeasureUnit.values()).map(u -> new Measure(dec("382.5"), u)).toList();
  }

  /** Events of a kind in which every sample value of every field occurs. */
  static List<SessionEvent> of(EventKind kind) {
    RecordComponent[] fields = kind.type().getRecordComponents();
    List<List<?>> columns = Arrays.stream(fields).<List<?>>map(Samples::values).toList();
    int rows = columns.stream().mapToInt(List::size).max().orElse(1);
    List<SessionEvent> events = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      int at = row;
      Object[] values = columns.stream().map(c -> (Object) c.get(at % c.size())).toArray();
      events.add(build(kind, fields, values));
    }
    return events;
  }

  private static SessionEvent build(EventKind kind, RecordComponent[] fields, Object[] values) {
    Class<?>[] types = Arrays.stream(fields).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return kind.type().getDeclaredConstructor(types).newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError("no sample of " + kind, e);
    }
  }

  private static List<?> values(RecordComponent field) {
    if (field.getGenericType() instanceof ParameterizedType generic) {
      List<Object> all = new ArrayList<>(List.of(Optional.empty()));
      samples((Class<?>) generic.getActualTypeArguments()[0]).forEach(v -> all.add(Optional.of(v)));
      return all;
    }
    return samples(field.getType());
  }

  private static List<?> samples(Class<?> type) {
    List<?> values = type.isEnum() ? List.of(type.getEnumConstants()) : VALUES.get(type);
    if (values == null) {
      throw new AssertionError("no sample value for a field of " + type);
    }
    return values;
  }

  static Recorded decision(long seq, SessionEvent... events) {
    OffsetDateTime wall = OffsetDateTime.parse("2026-11-25T09:12:00+01:00").plusSeconds(seq);
    return new Recorded(
        seq,
        new Moment(wall, 1000 * seq),
        Optional.of(new Recorded.Heard("step completed", "step-completed", 0.97, "spoken")),
        List.of(events),
        "Recorded.");
  }
}
