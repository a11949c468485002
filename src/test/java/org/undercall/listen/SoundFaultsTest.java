package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.adapter.activity.Activities;
import org.undercall.adapter.recogniser.TestModel;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.intent.SoundLevels;
import org.undercall.port.Ear;
import org.undercall.port.Heard;
import org.undercall.session.Voiced;
import org.undercall.sound.WavBytes;
import org.undercall.sound.WavFrames;

/**
 * From a file with a fault in it to what the program takes it for, through the whole ear. An
 * invented speaker says four phrases in a quiet room; the loudest sample is at half of full scale.
 */
@DisplayName("Faulty sound")
class SoundFaultsTest {
  private static final Set<IntentKind> ALLOWED = Decider.heard(Phase.TORQUE);
  private static final int RATE = 16_000;
  private static final int SECONDS = 20;

  /** Above this the program says that it is too loud here, at a voice like this one. */
  private static final double LOUD_ROOM = -35;

  private static final List<String> FIGURES = new ArrayList<>();

  @TempDir private Path folder;

  /** A fault, and the file that has it. */
  static final class Fault {
    private final String name;
    private final byte[] wav;

    Fault(String name, byte[] wav) {
      this.name = name;
      this.wav = wav;
    }

    @Override
    public String toString() {
      return name;
    }
  }

  /** What was heard, what of it counts, and how loud the room seemed. */
  private record Heard(List<String> believed, List<String> unclear, double loudestRoom) {}

  static Stream<Fault> harmless() {
    double[] plain = Voiced.phrases();
    double[] silent = new double[plain.length];
    return Stream.of(
        new Fault("no fault", new WavBytes().sound(plain)),
        new Fault("offset of 2 %", new WavBytes().sound(changed(plain, v -> v + 0.02))),
        new Fault("offset of -20 %", new WavBytes().sound(changed(plain, v -> v - 0.2))),
        new Fault("offset of 45 %", new WavBytes().sound(changed(plain, v -> v + 0.45))),
        new Fault(
            "offset of 90 %, voice at a tenth",
            new WavBytes().sound(changed(plain, v -> 0.2 * v + 0.9))),
        new Fault("clipped at half", new WavBytes().sound(changed(plain, v -> 4 * v))),
        new Fault("26 dB down", new WavBytes().sound(changed(plain, v -> v / 20))),
        new Fault("8 bit, 16 kHz", new WavBytes().coded(1, 8).sound(plain)),
        new Fault(
            "24 bit, 44.1 kHz, stereo",
            new WavBytes().coded(1, 24).rate(44_100).sound(at(44_100, plain), at(44_100, plain))),
        new Fault(
            "16 bit, 48 kHz, one of two channels dead",
            new WavBytes().rate(48_000).sound(at(48_000, plain), at(48_000, silent))),
        new Fault("32 bit", new WavBytes().coded(1, 32).sound(plain)),
        new Fault(
            "float, 48 kHz, offset of 45 %",
            new WavBytes()
                .coded(3, 32)
                .rate(48_000)
                .sound(changed(at(48_000, plain), v -> v + 0.45))),
        new Fault("double, 8 kHz", new WavBytes().coded(3, 64).rate(8_000).sound(at(8_000, plain))),
        new Fault(
            "a length that says it is not known",
            new WavBytes().statedLength(0xffff_ffffL).sound(plain)));
  }

  @ParameterizedTest
  @MethodSource("harmless")
  @DisplayName("that still holds the words is understood, and no loud room is seen in it")
  void understood(Fault fault) throws Exception {
    Heard heard = heard(fault, Attention.standard());
    assertEquals(Voiced.PHRASES, heard.believed(), () -> fault + ", unclear " + heard.unclear());
    assertTrue(heard.loudestRoom() < LOUD_ROOM, () -> fault + ": " + heard);
    FIGURES.add(fault + ": all of " + Voiced.PHRASES.size());
  }

  static Stream<Fault> offsets() {
    return harmless().filter(f -> f.name.contains("offset") || f.name.equals("no fault"));
  }

  @ParameterizedTest
  @MethodSource("offsets")
  @DisplayName("is also understood where the native detector of speech is missing")
  void byLoudness(Fault fault) throws Exception {
    Attention attention = new Attention(Activities.byLoudness(), new QuickEnd(Waits.STANDARD));
    assertEquals(Voiced.PHRASES, heard(fault, attention).believed(), fault.name);
  }

  static Stream<Fault> gross() {
    double[] plain = Voiced.phrases();
    return Stream.of(
        new Fault("clipped at 1/10", new WavBytes().sound(changed(plain, v -> 20 * v))),
        new Fault("clipped at 1/50", new WavBytes().sound(changed(plain, v -> 100 * v))),
        new Fault(
            "offset of 90 %, the upper half clipped",
            new WavBytes().sound(changed(plain, v -> v + 0.9))),
        new Fault("50 dB down", new WavBytes().sound(changed(plain, v -> v / 333))),
        new Fault(
            "two channels of opposite polarity",
            new WavBytes().sound(plain, changed(plain, v -> -v))));
  }

  @ParameterizedTest
  @MethodSource("gross")
  @DisplayName("that has lost much of the words is asked for again, and never taken for others")
  void neverOthers(Fault fault) throws Exception {
    Heard heard = heard(fault, Attention.standard());
    List<String> said = new ArrayList<>(Voiced.PHRASES);
    for (String words : heard.believed()) {
      assertTrue(said.remove(words), () -> fault + ": never said: " + words);
    }
    FIGURES.add(
        String.format(
            Locale.ROOT,
            "%s: %d of %d, asked again or left alone %s",
            fault,
            heard.believed().size(),
            Voiced.PHRASES.size(),
            heard.unclear()));
  }

  static Stream<Fault> wordless() {
    Random random = new Random(7);
    return Stream.of(
        wordless("silence", i -> 0),
        wordless("a constant 90 %", i -> 0.9),
        wordless("an offset that jumps", i -> i / RATE % 2 == 0 ? 0.9 : -0.9),
        wordless("white noise at full scale", i -> 2 * random.nextDouble() - 1),
        wordless("a square of 100 Hz at full scale", i -> i / 80 % 2 == 0 ? 1 : -1),
        wordless("a tone of 1 kHz", i -> 0.5 * Math.sin(2 * Math.PI * 1000.0 * i / RATE)),
        wordless("clicks", i -> i % 4_000 < 3 ? 1 : 0),
        wordless("bursts of noise", i -> i / 3_000 % 3 == 0 ? random.nextGaussian() / 4 : 0),
        wordless("a stuck bit", i -> i % 2 == 0 ? 0.5 : 0));
  }

  @ParameterizedTest
  @MethodSource("wordless")
  @DisplayName("without words holds no phrase")
  void nothing(Fault fault) throws Exception {
    Heard heard = heard(fault, Attention.standard());
    assertEquals(List.of(), heard.believed(), fault.name);
    FIGURES.add(fault + ": none, unclear " + heard.unclear());
  }

  @AfterAll
  static void print() {
    FIGURES.forEach(line -> System.out.println("sound: " + line));
  }

  private Heard heard(Fault fault, Attention attention) throws Exception {
    Path file = Files.write(folder.resolve("faulty.wav"), fault.wav);
    Heard heard = new Heard(new ArrayList<>(), new ArrayList<>(), 0);
    double room = -120;
    try (SoundEar ear =
        new SoundEar(WavFrames.open(file), TestModel.shared(), Phrasebook::wordList, attention)) {
      while (true) {
        Optional<org.undercall.port.Heard> next = ear.next(ALLOWED, 60_000);
        if (next.isPresent()) {
          Intent intent =
              Interpreter.interpret(next.get().phrase(), ALLOWED, Interpreter.LEAST_CONFIDENCE);
          boolean clear = !(intent instanceof Intent.Unclear);
          (clear ? heard.believed() : heard.unclear()).add(next.get().text());
          room = Math.max(room, next.get().levels().map(SoundLevels::noise).orElse(room));
        }
      }
    } catch (Ear.EndOfInput e) {
      return new Heard(heard.believed(), heard.unclear(), room);
    }
  }

  private static Fault wordless(String name, IntToDoubleFunction sample) {
    double[] sound = IntStream.range(0, SECONDS * RATE).mapToDouble(sample).toArray();
    return new Fault(name, new WavBytes().sound(sound));
  }

  private static double[] changed(double[] sound, DoubleUnaryOperator change) {
    return java.util.Arrays.stream(sound).map(change).toArray();
  }

  /** The sound at another rate, drawn straight from sample to sample. */
  private static double[] at(int rate, double[] sound) {
    double[] made = new double[(int) ((long) sound.length * rate / RATE)];
    for (int i = 0; i < made.length; i++) {
      double place = (double) i * RATE / rate;
      int before = (int) place;
      double after = before + 1 < sound.length ? sound[before + 1] : sound[before];
      made[i] = sound[before] + (place - before) * (after - sound[before]);
    }
    return made;
  }
}
