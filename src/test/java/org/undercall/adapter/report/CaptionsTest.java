package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The captions of a session")
class CaptionsTest {
  private static final Pattern TIMES =
      Pattern.compile(
          "(\\d\\d):(\\d\\d):(\\d\\d)\\.(\\d{3}) --> (\\d\\d):(\\d\\d):(\\d\\d)\\.(\\d{3})");

  @TempDir private Path folder;

  private static List<long[]> times(String captions) {
    List<long[]> times = new ArrayList<>();
    Matcher cue = TIMES.matcher(captions);
    while (cue.find()) {
      long[] parts =
          IntStream.rangeClosed(1, 8).mapToLong(i -> Long.parseLong(cue.group(i))).toArray();
      times.add(new long[] {millis(parts, 0), millis(parts, 4)});
    }
    return times;
  }

  private static long millis(long[] p, int from) {
    return ((p[from] * 60 + p[from + 1]) * 60 + p[from + 2]) * 1000 + p[from + 3];
  }

  @Test
  @DisplayName("have cues that follow each other, a heard one ending when its decision was made")
  void ordered() throws Exception {
    Dossier dossier = ReportMaker.with("A note", folder);
    String captions = Captions.of(dossier.review(), dossier.decisions());
    assertTrue(captions.startsWith("WEBVTT\n\n"));
    List<long[]> times = times(captions);
    for (int i = 0; i < times.size(); i++) {
      assertTrue(times.get(i)[0] < times.get(i)[1]);
      assertTrue(i == 0 || times.get(i - 1)[1] <= times.get(i)[0], "cue " + i);
    }
    var decisions = dossier.decisions();
    long third =
        Duration.between(decisions.get(0).at().wall(), decisions.get(2).at().wall()).toMillis();
    String cue = captions.substring(captions.indexOf("\n3 heard\n"));
    assertEquals(third, times(cue).get(0)[1]);
  }

  @Test
  @DisplayName("hold no markup and no arrow of what was heard")
  void escaped() throws Exception {
    Dossier dossier = ReportMaker.with("<c.x>a & b --> 00:00:09.000 --> 1", folder);
    String captions = Captions.of(dossier.review(), dossier.decisions());
    assertTrue(captions.contains("<v Technician>&lt;c.x&gt;a &amp; b --&gt; 00:00:09.000"));
    long arrows = captions.lines().filter(line -> line.contains("-->")).count();
    assertEquals(times(captions).size(), arrows);
  }
}
