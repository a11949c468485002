package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;

/** The same clips heard by the program and by another recogniser. */
final class PeerFigures {
  private static final int VALUES = 100;
  private static final int CHATTER = 60;

  private final Bench bench;
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);
  private final Table table =
      new Table(
          "The same clips heard by pocketsphinx",
          "Debian's pocketsphinx with its stock English model and a JSGF grammar of the very same"
              + " phrases, which has no word for foreign speech; its answer goes through the same"
              + " interpreter. Torque stage; values by real people as above. For chatter, heard"
              + " wrong is a false acceptance.",
          Tally.columns("recogniser, sound"));

  PeerFigures(Bench bench) {
    this.bench = bench;
  }

  List<Table> tables() {
    if (!Peer.isHere()) {
      return List.of();
    }
    Digits wide = Digits.of(bench.recordings().of("digits"));
    Digits narrow = Digits.of(bench.recordings().of("digits-narrowband"));
    values("values, clean", wide, Conditions.clean());
    values("values, helicopter 10 dB", wide, new Conditions("helicopter", 10));
    values("narrow band, clean", narrow, Conditions.clean());
    chatter();
    return List.of(table);
  }

  private void values(String label, Digits digits, Conditions conditions) {
    List<Sound> clips = new ArrayList<>();
    List<String> said = new ArrayList<>();
    for (int i = 0; i < bench.trials().count(VALUES); i++) {
      Random random = new Random(900 + i);
      Digits.Said value = digits.threeDigits(random);
      said.add(value.digits());
      clips.add(conditions.clip(value.speech(), bench.noises(), random).sound());
    }
    compare(label, clips, said);
  }

  private void chatter() {
    List<Sound> clips =
        bench.recordings().mixed("chatter").stream()
            .limit(bench.trials().count(CHATTER))
            .map(r -> Sound.joined(Mixing.LEAD, r.sound(), Mixing.TAIL))
            .toList();
    compare("chatter, clips", clips, List.of());
  }

  private void compare(String label, List<Sound> clips, List<String> said) {
    Tally mine = new Tally();
    Tally peer = new Tally();
    List<List<Listener.Heard>> heard =
        bench.trials().all(clips.size(), i -> bench.listener().hear(clips.get(i), allowed));
    List<List<Intent>> others = Peer.hear(clips, allowed);
    for (int i = 0; i < clips.size(); i++) {
      String value = said.isEmpty() ? "-1" : said.get(i);
      mine.add(Listener.result(heard.get(i), DigitFigures.isValue(value)));
      peer.add(Listener.judged(others.get(i), DigitFigures.isValue(value)));
    }
    table.row(mine.cells("Undercall: " + label));
    table.row(peer.cells("pocketsphinx: " + label));
  }
}
