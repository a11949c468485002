package org.undercall.core.procedure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.undercall.core.term.HeadMarking;

/**
 * The stages that apply to one kind of hardware.
 *
 * @param marking the head marking the stages hold for; empty if the specification does not depend
 *     on it
 * @param stages in order, at least one; the first is a torque
 */
public record Variant(Optional<HeadMarking> marking, List<Stage> stages) {
  public Variant {
    Objects.requireNonNull(marking, "marking");
    stages = List.copyOf(stages);
    if (stages.isEmpty() || !(stages.get(0) instanceof Stage.TorqueStage)) {
      throw new IllegalArgumentException("the first stage is a torque: " + stages);
    }
  }
}
