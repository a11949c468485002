package org.undercall.command;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.undercall.core.event.Recorded;

/** The sounds kept of a session: {@code clips/000012.flac} or {@code .wav} is that of line 12. */
final class SessionClips {
  private static final List<String> ENDINGS = List.of("flac", "wav");

  private SessionClips() {}

  /** The sound of each decision that has one, by its number. */
  static Map<Long, Path> of(Path session, List<Recorded> decisions) {
    Map<Long, Path> clips = new HashMap<>();
    for (Recorded decision : decisions) {
      for (String ending : ENDINGS) {
        String name = String.format(Locale.ROOT, "%06d.%s", decision.seq(), ending);
        Path file = session.resolve("clips").resolve(name);
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
          clips.putIfAbsent(decision.seq(), file);
        }
      }
    }
    return clips;
  }
}
