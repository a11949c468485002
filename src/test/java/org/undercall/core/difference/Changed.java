package org.undercall.core.difference;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Changes a record in every way that one field of it, or of what is in it, can be changed. */
final class Changed {
  /** Values of every type that were met in examples. */
  private final Map<Class<?>, Set<Object>> known = new HashMap<>();

  /** A changed value, with the record and field in which it differs. */
  record One(Object value, String field) {}

  /** Takes the values in a record as examples of their types. */
  void learn(Object value) {
    if (value instanceof Record) {
      known.computeIfAbsent(value.getClass(), any -> new LinkedHashSet<>()).add(value);
      for (RecordComponent part : value.getClass().getRecordComponents()) {
        learn(part(value, part));
      }
    } else if (value instanceof Iterable<?> several) {
      several.forEach(this::learn);
    } else if (value instanceof Optional<?> perhaps) {
      perhaps.ifPresent(this::learn);
    }
  }

  private static Object part(Object of, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Every record and field that a type has in it, as they are named in changes; a field that is a
   * record itself is changed in its own fields.
   */
  static Set<String> fields(Class<?> type) {
    Set<String> fields = new TreeSet<>();
    collect(type, fields, new HashSet<>());
    return fields;
  }

  private static void collect(Type type, Set<String> fields, Set<Type> seen) {
    if (!seen.add(type)) {
      return;
    }
    if (type instanceof ParameterizedType several) {
      Arrays.stream(several.getActualTypeArguments()).forEach(t -> collect(t, fields, seen));
    } else if (type instanceof Class<?> one && one.isSealed()) {
      Arrays.stream(one.getPermittedSubclasses()).forEach(t -> collect(t, fields, seen));
    } else if (type instanceof Class<?> one && one.isRecord()) {
      for (RecordComponent part : one.getRecordComponents()) {
        if (!part.getType().isRecord()) {
          fields.add(one.getSimpleName() + "." + part.getName());
        }
        collect(part.getGenericType(), fields, seen);
      }
    }
  }

  /** All changes of a record. */
  List<One> of(Object record) {
    List<One> all = new ArrayList<>();
    RecordComponent[] parts = record.getClass().getRecordComponents();
    for (int i = 0; i < parts.length; i++) {
      String field = record.getClass().getSimpleName() + "." + parts[i].getName();
      for (One one : of(part(record, parts[i]), parts[i].getGenericType(), field)) {
        Object[] values = Arrays.stream(parts).map(p -> part(record, p)).toArray();
        values[i] = one.value();
        made(record.getClass(), parts, values)
            .filter(changed -> !changed.equals(record))
            .ifPresent(changed -> all.add(new One(changed, one.field())));
      }
    }
    return all;
  }

  private static Optional<Object> made(Class<?> type, RecordComponent[] parts, Object[] values) {
    try {
      Class<?>[] types =
          Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
      Constructor<?> constructor = type.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return Optional.of(constructor.newInstance(values));
    } catch (InvocationTargetException e) {
      return Optional.empty();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** All changes of a value in a field. */
  private List<One> of(Object value, Type type, String field) {
    List<One> all = new ArrayList<>();
    if (value instanceof Optional<?> perhaps) {
      Type inner = ((ParameterizedType) type).getActualTypeArguments()[0];
      if (perhaps.isPresent()) {
        all.add(new One(Optional.empty(), field));
        of(perhaps.get(), inner, field)
            .forEach(o -> all.add(new One(Optional.of(o.value()), o.field())));
      } else {
        samples(inner).forEach(sample -> all.add(new One(Optional.of(sample), field)));
      }
    } else if (value instanceof List<?> several) {
      lists(several, ((ParameterizedType) type).getActualTypeArguments()[0], field, all);
    } else if (value instanceof Set<?> set) {
      for (Object sample : samples(((ParameterizedType) type).getActualTypeArguments()[0])) {
        Set<Object> other = new LinkedHashSet<>(set);
        if (!other.remove(sample)) {
          other.add(sample);
        }
        all.add(new One(other, field));
      }
    } else if (value instanceof Record) {
      all.addAll(of(value));
    } else {
      others(value).forEach(other -> all.add(new One(other, field)));
    }
    return all;
  }

  private void lists(List<?> several, Type inner, String field, List<One> all) {
    for (int i = 0; i < several.size(); i++) {
      List<Object> shorter = new ArrayList<>(several);
      shorter.remove(i);
      all.add(new One(shorter, field));
      for (One one : of(several.get(i), inner, field)) {
        List<Object> other = new ArrayList<>(several);
        other.set(i, one.value());
        all.add(new One(other, one.field()));
      }
      if (i > 0) {
        List<Object> swapped = new ArrayList<>(several);
        swapped.add(i - 1, swapped.remove(i));
        all.add(new One(swapped, field));
      }
    }
    for (Object sample : samples(inner)) {
      List<Object> longer = new ArrayList<>(several);
      longer.add(sample);
      all.add(new One(longer, field));
    }
  }

  private Set<Object> samples(Type type) {
    Class<?> one = (Class<?>) type;
    Set<Object> samples = new LinkedHashSet<>();
    if (one.isSealed()) {
      Arrays.stream(one.getPermittedSubclasses()).forEach(t -> samples.addAll(samples(t)));
    } else if (one.isEnum()) {
      samples.addAll(Arrays.asList(one.getEnumConstants()));
    } else if (one.isRecord()) {
      known.getOrDefault(one, Set.of()).stream().limit(3).forEach(samples::add);
    } else {
      samples.addAll(plain(one));
    }
    return samples;
  }

  private static List<Object> plain(Class<?> type) {
    if (type == String.class) {
      return List.of("something new");
    }
    if (type == BigDecimal.class) {
      return List.of(new BigDecimal("0.15"), new BigDecimal("7"), new BigDecimal("60"));
    }
    if (type == Boolean.class) {
      return List.of(true, false);
    }
    if (type == Integer.class) {
      return List.of(1, 2);
    }
    if (type == Duration.class) {
      return List.of(Duration.ofMinutes(7));
    }
    if (type == LocalDate.class) {
      return List.of(LocalDate.of(2026, 2, 3));
    }
    throw new IllegalStateException("no example of " + type);
  }

  private static List<Object> others(Object value) {
    if (value instanceof Enum<?> constant) {
      return List.of(constant.getDeclaringClass().getEnumConstants()).stream()
          .filter(other -> other != value)
          .map(Object.class::cast)
          .toList();
    }
    if (value instanceof String text) {
      return List.of(text + "x", "8.8", "9.8");
    }
    if (value instanceof BigDecimal number) {
      return Stream.of("1", "0.1", "-0.1")
          .map(BigDecimal::new)
          .map(share -> share.scale() == 0 ? share : number.multiply(share))
          .filter(more -> more.signum() != 0)
          .<Object>map(number::add)
          .toList();
    }
    if (value instanceof Boolean yes) {
      return List.of(!yes);
    }
    if (value instanceof Integer number) {
      return List.of(number + 1, number - 1);
    }
    if (value instanceof Duration time) {
      return List.of(time.plusSeconds(1));
    }
    if (value instanceof LocalDate day) {
      return List.of(day.plusDays(1));
    }
    throw new IllegalStateException("cannot be changed: " + value.getClass());
  }
}
