package org.undercall.command.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.adapter.drawing.AnglePlot;
import org.undercall.adapter.drawing.PlotSize;
import org.undercall.adapter.report.Dossier;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.ReportCode;
import org.undercall.adapter.report.Sketch;
import org.undercall.command.figure.JointOptions;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.FrictionClass;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * A sketch of preload against angle. The procedure does not state the sizes of a joint, so it is
 * drawn only for a step for which they are given.
 */
final class SketchOptions {
  private static final String PLACE = "--sketch ";

  @Option(
      names = "--sketch",
      paramLabel = "STEP",
      description =
          "Also draw the computed preload of a step with an angle stage, by its id; needs the sizes"
              + " of the joint.")
  private String step;

  @Mixin private JointOptions joint;

  /** The sketches asked for; none if none was. */
  List<Sketch> sketches(Dossier dossier) throws Fault {
    return step == null ? List.of() : List.of(sketch(found(dossier)));
  }

  private StepReview found(Dossier dossier) throws Fault {
    return dossier.review().steps().stream()
        .filter(s -> s.place().ref().id().equals(step) && turns(s))
        .findFirst()
        .orElseThrow(
            () ->
                new Fault(
                    ReportCode.NO_ANGLE_STAGE,
                    PLACE + step,
                    "no such step with a torque and an angle whose stages are known",
                    "the id of a fastener with an angle stage, its head marking read"));
  }

  /** Whether the stages are a torque and an angle. */
  private static boolean turns(StepReview review) {
    List<StepReview.StageReview> stages = review.tightened().stages();
    return stages.size() == 2
        && stages.get(1).specification() instanceof Stage.AngleStage angle
        && !angle.backOff();
  }

  private Sketch sketch(StepReview review) throws Fault {
    Fastener fastener = ((Step.Fasten) review.place().step()).fastener();
    List<StepReview.StageReview> stages = review.tightened().stages();
    Stage.TorqueStage torque = (Stage.TorqueStage) stages.get(0).specification();
    Stage.AngleStage angle = (Stage.AngleStage) stages.get(1).specification();
    Bolt bolt = bolt(fastener, review.tightened().marking());
    Range<Friction> friction =
        FrictionClass.expect(fastener.part().lubrication())
            .orElseThrow(
                () -> fault("thread locker, whose friction is not known", "another lubrication"));
    Rotation turn = Rotation.of(angle.target());
    return drawn(
        found(bolt), torque.target(), turn, friction, review.place().step().head().title());
  }

  private Bolt bolt(Fastener fastener, Optional<HeadMarking> marking) throws Fault {
    if (marking.isEmpty()) {
      throw fault("no head marking", "a fastener whose head marking was read");
    }
    return Bolt.hexagon(fastener.thread(), marking.get().text());
  }

  private Joint found(Bolt bolt) throws Fault {
    return joint
        .joint(bolt)
        .orElseThrow(
            () -> fault("no sizes of the joint", "--clamped and --shank, and --plate or --tube"));
  }

  private Sketch drawn(
      Joint found, Torque torque, Rotation turn, Range<Friction> friction, String title) {
    String sizes =
        joint.inputs().stream()
            .map(item -> item.name() + " " + item.text())
            .collect(Collectors.joining(", "));
    String about =
        title
            + ": "
            + found.bolt()
            + ", "
            + torque
            + " and then "
            + Figure.Item.number("", turn.degrees(), 0, "°").text()
            + ", friction "
            + friction.low()
            + " to "
            + friction.high()
            + ", taken from the state of lubrication. Sizes given for this report, not in the"
            + " procedure: "
            + sizes
            + ". VDI 2230 Part 1.";
    return new Sketch(
        about,
        AnglePlot.of(
            found, torque, turn, friction, "computed sketch, not measured", PlotSize.WHOLE));
  }

  private Fault fault(String found, String expected) {
    return new Fault(ReportCode.NO_SKETCH, PLACE + step, found, expected);
  }
}
