package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.adapter.recogniser.TestModel;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.writing.Draft;
import org.undercall.core.writing.Interview;
import org.undercall.demo.DemoVoices;
import org.undercall.listen.AnswerEar;

@DisplayName("A procedure of two fasteners, asked for by voice and heard by the real recogniser")
class NewByVoiceTest {
  private static final String TYPED =
      """
      Rear arm, a trial
      Invented van
      Undercall project
      invented for demonstration
      2026-03-31
      """;

  /** What is said, and what must be read back. */
  private static final String SCRIPT =
      """
      take that one | 1
      take that one | Stands carry the car
      none | none
      take that one | wrench 1
      four zero newton meters | four zero newton metres
      two one zero newton meters | two one zero newton metres
      none | none
      none | none
      tighten | tighten
      both sides | both sides
      a fastener | a fastener
      bush bolt | bush bolt
      m twelve by one point five | M 12 by 1.5
      bolt | bolt
      one eight millimeters | one eight millimetres
      one | one
      yes it is | yes
      as delivered | as delivered
      none | none
      bonded bush | bonded bush
      none | none
      ride height | ride height
      ten point nine | ten point nine
      six five newton meters | six five newton metres
      three | plus or minus three
      six zero degrees | six zero degrees
      five | plus or minus five
      none | none
      none | none
      none | none
      eight point eight | eight point eight
      five two newton meters | five two newton metres
      three | plus or minus three
      none | none
      there is none | none
      take that one | Tighten the bush bolt
      none | none
      tighten a fastener | a fastener
      joint nut | joint nut
      m fourteen by one point five | M 14 by 1.5
      self locking nut | self locking nut
      one zero | one zero
      two one millimeters | two one millimetres
      one | one
      yes it is | yes
      dry | dry
      spherical joint | spherical joint
      none | none
      any height | any height
      none | none
      eight seven newton meters | eight seven newton metres
      four | plus or minus four
      none | none
      take that one | Tighten the joint nut
      none | none
      that was the last | that was the last
      """;

  @TempDir private Path folder;

  static List<String> voices() {
    return List.of(System.getProperty("undercall.voices", "alto").split(",", -1));
  }

  private static List<SpokenTechnician.Answer> script() {
    return SCRIPT
        .lines()
        .map(line -> line.split(" \\| ", 2))
        .map(parts -> new SpokenTechnician.Answer(parts[0], parts[1]))
        .toList();
  }

  @ParameterizedTest(name = "with the voice {0}")
  @MethodSource("voices")
  @DisplayName("is what was said, and nothing else")
  void said(String voice) throws Exception {
    Clock clock = Clock.fixed(Instant.parse("2026-06-01T09:00:00Z"), ZoneOffset.UTC);
    TableJudge judge = new TableJudge(clock);
    StringWriter out = new StringWriter();
    List<SpokenTechnician.Answer> script = script();
    try (SpokenCache speaker = DemoVoices.speaker(voice, Path.of("target", "speech-cache"));
        SpokenTechnician technician =
            new SpokenTechnician(speaker, Integer.getInteger("undercall.decibels", 0), script);
        AnswerEar ear = new AnswerEar(technician, TestModel.shared())) {
      VoicedInterview.Ports ports =
          new VoicedInterview.Ports(
              ear,
              technician,
              new BufferedReader(new StringReader(TYPED)),
              new PrintWriter(out, true));
      KeptAnswers kept = new KeptAnswers(folder.resolve("spoken.json"));
      Interview whole;
      try {
        whole = new VoicedInterview(ports, judge, kept).run(new Interview(Draft.EMPTY));
      } finally {
        System.out.println(out);
        System.out.println(
            voice
                + ": answers "
                + script.size()
                + ", right at first "
                + technician.rightAtFirst
                + ", asked again "
                + technician.askedAgain
                + ", said again unasked "
                + technician.saidAgain
                + ", read back wrong "
                + technician.misheard);
      }
      check(judge.procedure(whole.draft()).orElseThrow());
    }
  }

  private static void check(Procedure procedure) {
    WorkPhase phase = procedure.phases().get(0);
    assertEquals(Each.SIDE, phase.each());
    assertEquals(2, phase.steps().size());
    Fastener bolt = ((Step.Fasten) phase.steps().get(0)).fastener();
    assertEquals("M12x1.5", bolt.thread());
    assertEquals(LoadCondition.RIDE_HEIGHT, bolt.needs());
    assertTrue(bolt.part().oneTimeUse());
    assertEquals(
        "[TorqueStage[target=65 N·m, plusMinus=3, dialled=Optional.empty, form=NOMINAL],"
            + " AngleStage[target=60°, plusMinus=5, backOff=false, finalTorque=Optional.empty,"
            + " beyondYield=Optional.empty]]",
        bolt.variants().get(0).stages().toString());
    assertEquals("10.9", bolt.variants().get(0).marking().orElseThrow().text());
    assertEquals(1, bolt.variants().get(1).stages().size());
    Fastener nut = ((Step.Fasten) phase.steps().get(1)).fastener();
    assertEquals("M14x1.5", nut.thread());
    assertEquals(
        "[TorqueStage[target=87 N·m, plusMinus=4, dialled=Optional.empty, form=NOMINAL]]",
        nut.variants().get(0).stages().toString());
  }
}
