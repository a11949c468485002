package org.undercall.hearing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.demo.DemoVoices;

/** The synthetic speakers that this machine has. */
final class Speakers {
  private static final Path CACHE = Path.of("target", "hearing-voices");
  private static final Pattern VARIANT = Pattern.compile("!v/(\\S+(?: \\S+)*)");
  private static final Set<String> PLAIN =
      Set.of(
          "f1", "f2", "f3", "f4", "f5", "m1", "m2", "m3", "m4", "m5", "m6", "m7", "edward", "Annie",
          "max");
  private static final Set<String> WHISPERS = Set.of("whisper", "whisperf");
  private static final List<String> ACCENTS =
      List.of(
          "en-gb",
          "en-gb-x-rp",
          "en-us-nyc",
          "en-gb-x-gbclan",
          "en-029",
          "en-gb-scotland",
          "en-gb-x-gbcwmd");
  private static final List<String> FLITE = List.of("kal", "kal16", "awb", "rms", "slt");

  private final Map<Speaker.Group, List<Speaker>> byGroup = new EnumMap<>(Speaker.Group.class);

  /** Finds them and says which are not there. */
  static Speakers find() {
    Speakers speakers = new Speakers();
    DemoVoices.names().forEach(speakers::addMary);
    Optional<String> variants = output("espeak-ng", "--voices=variant");
    if (variants.isPresent()) {
      speakers.addEspeak(variants.get());
    } else {
      System.out.println("hearing: espeak-ng is not installed, its speakers are left out");
    }
    if (output("flite", "-lv").isPresent()) {
      FLITE.forEach(
          v ->
              speakers.add(
                  Speaker.Group.FLITE,
                  List.of("flite", "-voice", v, "-t", "{words}", "-o", "{file}")));
    } else {
      System.out.println("hearing: flite is not installed, its speakers are left out");
    }
    return speakers;
  }

  private Speakers() {}

  /** The groups that have speakers. */
  Set<Speaker.Group> groups() {
    return byGroup.keySet();
  }

  int count(Speaker.Group group) {
    return byGroup.get(group).size();
  }

  /** Any speaker of a group. */
  Speaker any(Speaker.Group group, Random random) {
    List<Speaker> speakers = byGroup.get(group);
    return speakers.get(random.nextInt(speakers.size()));
  }

  /** Any speaker that is easily understood, each group as often as another. */
  Speaker anyPlain(Random random) {
    List<Speaker.Group> plain = byGroup.keySet().stream().filter(Speaker.Group::isPlain).toList();
    return any(plain.get(random.nextInt(plain.size())), random);
  }

  /** The speakers that are easily understood, at most so many of each group. */
  List<Speaker> plain(int most) {
    return byGroup.keySet().stream()
        .filter(Speaker.Group::isPlain)
        .flatMap(group -> byGroup.get(group).stream().limit(most))
        .toList();
  }

  private void addEspeak(String variants) {
    add(Speaker.Group.ESPEAK, espeak("en-us"));
    for (Matcher found = VARIANT.matcher(variants); found.find(); ) {
      String name = found.group(1);
      if (!WHISPERS.contains(name)) {
        Speaker.Group group = PLAIN.contains(name) ? Speaker.Group.ESPEAK : Speaker.Group.ODD;
        add(group, espeak("en-us+" + name));
      }
    }
    ACCENTS.forEach(accent -> add(Speaker.Group.ACCENT, espeak(accent)));
  }

  private static List<String> espeak(String voice) {
    return List.of("espeak-ng", "-v", voice, "-w", "{file}", "{words}");
  }

  private void add(Speaker.Group group, List<String> command) {
    add(new CommandSpeaker(group, command, CACHE));
  }

  private void addMary(String name) {
    var synthesiser = DemoVoices.speaker(name, CACHE.resolve("mary"));
    add(
        new Speaker() {
          @Override
          public Group group() {
            return Group.MARY;
          }

          @Override
          public String name() {
            return name;
          }

          @Override
          public Speech say(String words) {
            return Speech.in(new Sound(synthesiser.speak(words).samples()));
          }
        });
  }

  private void add(Speaker speaker) {
    byGroup.computeIfAbsent(speaker.group(), g -> new ArrayList<>()).add(speaker);
  }

  private static Optional<String> output(String... command) {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      process.getOutputStream().close();
      return Optional.of(
          new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
