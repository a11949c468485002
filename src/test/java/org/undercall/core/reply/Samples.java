package org.undercall.core.reply;

import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Renewal;
import org.undercall.core.procedure.Reuse;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Angle;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Positions;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.Side;
import org.undercall.core.term.Torque;

/** Calls what makes a reply with sample values. */
final class Samples {
  private static final Reuse LENGTH = new Reuse(ReuseBy.LENGTH, new BigDecimal("52.5"));
  private static final Reuse USES = new Reuse(ReuseBy.USES, new BigDecimal("3"));

  private static final Procedure PROCEDURE = procedure("front-control-arms");
  private static final Procedure OTHER = procedure("light-van-rear-axle");

  private Samples() {}

  private static Procedure procedure(String name) {
    try {
      return ProcedureFile.load(Path.of("shared/procedures/" + name + ".json")).procedure();
    } catch (org.undercall.port.Fault e) {
      throw new IllegalStateException(e);
    }
  }

  /** The replies of a method: with the first sample of each parameter, then with each other one. */
  static List<Reply> of(Method method) throws ReflectiveOperationException {
    List<List<?>> samples =
        Arrays.stream(method.getGenericParameterTypes())
            .<List<?>>map(Samples::of)
            .collect(Collectors.toList());
    List<Reply> replies = new ArrayList<>();
    Object[] first = samples.stream().map(each -> each.get(0)).toArray();
    replies.add((Reply) method.invoke(null, first));
    for (int i = 0; i < first.length; i++) {
      for (Object other : samples.get(i).subList(1, samples.get(i).size())) {
        Object[] values = first.clone();
        values[i] = other;
        replies.add((Reply) method.invoke(null, values));
      }
    }
    return replies;
  }

  private static List<?> of(Type type) {
    if (type instanceof ParameterizedType of) {
      return ofMany(of);
    }
    Class<?> plain = (Class<?>) type;
    if (plain == Side.class) {
      return List.of(Side.LEFT, Side.CAR);
    }
    if (plain == LoadCondition.class) {
      return List.of(LoadCondition.RIDE_HEIGHT, LoadCondition.FULL_DROOP);
    }
    if (plain.isEnum()) {
      return List.of(plain.getEnumConstants());
    }
    return switch (plain.getSimpleName()) {
      case "int", "Integer" -> List.of(2, 1);
      case "Boolean" -> List.of(true, false);
      case "Matter" ->
          List.of(
              new ShiftTalk.Matter("hand tight", List.of("left, Front bush bolt")),
              new ShiftTalk.Matter("put off", List.of("right, Rear bush bolt, for later")));
      case "Band" ->
          List.of(new Stage.AngleStage.Band(Torque.newtonMetres("90"), Torque.newtonMetres("130")));
      case "long" -> List.of(200L, 15L, 0L);
      case "boolean" -> List.of(false, true);
      case "String" -> List.of("AB12");
      case "BigDecimal" -> List.of(new BigDecimal("64"), BigDecimal.ZERO);
      case "Procedure" -> List.of(PROCEDURE);
      case "Place" -> places().subList(0, 2);
      case "Load" -> steps(Step.Load.class);
      case "At" ->
          List.of(
              new Ask.At(0, false, false),
              new Ask.At(1, false, false),
              new Ask.At(0, true, false),
              new Ask.At(0, false, true));
      case "Fastener" -> fasteners();
      case "Reuse" -> List.of(LENGTH, USES);
      case "Part" -> fasteners().stream().map(Fastener::part).toList();
      case "Stage" -> List.of(torque(), angle());
      case "TorqueStage" -> List.of(torque());
      case "AngleStage" -> List.of(angle());
      case "HeadMarking" -> List.of(new HeadMarking("10.9"));
      case "Measure" -> steps(Step.Measure.class).isEmpty() ? List.of() : measures(plain);
      case "Torque" -> List.of(Torque.newtonMetres("62"));
      case "Positions" -> List.of(Positions.of(3), new Positions(List.of(2, 4)));
      case "Tool" -> List.of(tool());
      case "Wait" -> steps(Step.Wait.class);
      case "HandOver" -> steps(Step.HandOver.class);
      case "Step" -> List.of(steps(Step.Fasten.class).get(0), steps(Step.Measure.class).get(0));
      default -> throw new IllegalStateException("no sample of " + plain);
    };
  }

  private static List<?> ofMany(ParameterizedType type) {
    List<?> samples = of(type.getActualTypeArguments()[0]);
    if (type.getRawType() == Optional.class) {
      List<Object> all = new ArrayList<>();
      samples.forEach(sample -> all.add(Optional.of(sample)));
      all.add(Optional.empty());
      return all;
    }
    if (type.getRawType() == Set.class) {
      return List.of(Set.of(), Set.of(1, 2, 3, 4));
    }
    return type.getActualTypeArguments()[0] == Integer.class
        ? List.of(List.of(3, 5), List.of(4))
        : List.of(List.copyOf(samples));
  }

  private static List<?> measures(Class<?> type) {
    return type == Measure.class
        ? List.of(new Measure(new BigDecimal("348"), MeasureUnit.MILLIMETRE))
        : steps(Step.Measure.class).subList(0, 1);
  }

  private static List<Walk.Place> places() {
    return Walk.of(PROCEDURE).places().stream().filter(p -> p.ref().side() == Side.LEFT).toList();
  }

  private static <S extends Step> List<S> steps(Class<S> type) {
    return Walk.of(OTHER).places().stream()
        .map(Walk.Place::step)
        .filter(type::isInstance)
        .map(type::cast)
        .distinct()
        .limit(1)
        .toList();
  }

  private static List<Fastener> fasteners() {
    List<Fastener> all =
        Walk.of(PROCEDURE).places().stream()
            .map(Walk.Place::step)
            .filter(Step.Fasten.class::isInstance)
            .map(step -> ((Step.Fasten) step).fastener())
            .toList();
    Fastener one = all.stream().filter(f -> !f.set().several()).findFirst().orElseThrow();
    return List.of(
        one,
        all.stream().filter(f -> f.set().several()).findFirst().orElseThrow(),
        limited(one, Renewal.YIELDED, LENGTH),
        limited(one, Renewal.SELF_LOCKING, USES));
  }

  private static Fastener limited(Fastener f, Renewal why, Reuse limit) {
    Fastener.Part part =
        new Fastener.Part(
            f.part().hardware(), true, f.part().lubrication(), Set.of(why), Optional.of(limit));
    return new Fastener(
        f.name(),
        f.thread(),
        f.drive(),
        part,
        f.needs(),
        f.set(),
        f.variants(),
        f.joint(),
        f.manner());
  }

  private static Stage.TorqueStage torque() {
    return new Stage.TorqueStage(
        Torque.newtonMetres("62"),
        new BigDecimal("3"),
        Optional.empty(),
        Stage.TorqueStage.Form.NOMINAL);
  }

  private static Stage.AngleStage angle() {
    return new Stage.AngleStage(
        new Angle(new BigDecimal("90")), new BigDecimal("5"), false, Optional.empty());
  }

  private static Tool tool() {
    return PROCEDURE.tools().get(0);
  }
}
