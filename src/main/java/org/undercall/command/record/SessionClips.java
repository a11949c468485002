package org.undercall.command.record;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.adapter.clips.ClipFolder;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Recorded;
import org.undercall.port.Fault;

/** The sounds kept of a session, as far as they are what the log says they are. */
final class SessionClips {
  private SessionClips() {}

  /**
   * The sound of each decision that has one, by its number. A clip that was changed or deleted, or
   * that the log does not name, is left out.
   */
  static Map<Long, Path> of(Path session, List<Recorded> decisions) throws Fault {
    ClipFolder folder = new ClipFolder(new SessionFolder(session).clips());
    Map<Long, Path> clips = new HashMap<>();
    for (Recorded decision : decisions) {
      Optional<Clip> clip = decision.heard().flatMap(Recorded.Heard::clip);
      if (clip.isPresent() && folder.look(clip.get()).state() == ClipFolder.State.WHOLE) {
        clips.put(decision.seq(), folder.path().resolve(clip.get().file()));
      }
    }
    return clips;
  }
}
