package org.undercall.core.procedure;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.undercall.core.term.Side;
import org.undercall.core.term.Torque;

/**
 * A loaded procedure.
 *
 * @param about title, vehicle, author, revision and the note on where its values come from
 * @param cautions spoken before the first step, at least one
 * @param tools the torque wrenches at hand
 * @param rideHeight what a called wheel-centre-to-arch height is compared with; empty if heights
 *     are not used
 * @param loadHolds how long a confirmed load condition counts before it is asked for again
 * @param phases in the order of the work; neighbouring phases walked per side or corner form one
 *     run, side by side
 */
public record Procedure(
    About about,
    List<Caution> cautions,
    List<Tool> tools,
    Optional<RideHeight> rideHeight,
    Duration loadHolds,
    List<WorkPhase> phases) {

  /** How long a confirmed load condition counts if nothing is stated: a choice of this program. */
  public static final Duration LOAD_HOLDS = Duration.ofMinutes(60);

  /**
   * What the procedure is.
   *
   * @param values where the values come from, for example "invented for demonstration"
   * @param valuesBrief the same in fewer words, for later on a day; empty if it is said whole then
   */
  public record About(
      String title,
      String vehicle,
      String author,
      String revision,
      String values,
      Optional<String> valuesBrief) {
    /** With the origin of its values in one wording. */
    public About(String title, String vehicle, String author, String revision, String values) {
      this(title, vehicle, author, revision, values, Optional.empty());
    }
  }

  /** Of which it is not stated how long a confirmed load condition counts. */
  public Procedure(
      About about,
      List<Caution> cautions,
      List<Tool> tools,
      Optional<RideHeight> rideHeight,
      List<WorkPhase> phases) {
    this(about, cautions, tools, rideHeight, LOAD_HOLDS, phases);
  }

  /** The torque wrenches with their numbers. */
  public Wrenches wrenches() {
    return new Wrenches(tools);
  }

  /** The wheels of the car as it names them: by their side, or by their corner. */
  public List<Side> wheels() {
    boolean corners =
        phases.stream()
            .flatMap(phase -> Stream.concat(phase.each().sides().stream(), corners(phase)))
            .anyMatch(Each.CORNER.sides()::contains);
    return (corners ? Each.CORNER : Each.SIDE).sides();
  }

  private static Stream<Side> corners(WorkPhase phase) {
    return phase.steps().stream().flatMap(step -> step.head().bearing().corner().stream());
  }

  /** Whether its torques are in more than one unit. */
  public boolean mixesUnits() {
    return phases.stream()
            .flatMap(phase -> phase.steps().stream())
            .flatMap(step -> step instanceof Step.Fasten f ? Stream.of(f.fastener()) : Stream.of())
            .flatMap(fastener -> fastener.variants().stream())
            .flatMap(variant -> variant.stages().stream())
            .flatMap(s -> s instanceof Stage.TorqueStage t ? Stream.of(t.target()) : Stream.of())
            .map(Torque::unit)
            .distinct()
            .count()
        > 1;
  }

  public Procedure {
    Objects.requireNonNull(about, "about");
    cautions = List.copyOf(cautions);
    tools = List.copyOf(tools);
    phases = List.copyOf(phases);
  }
}
