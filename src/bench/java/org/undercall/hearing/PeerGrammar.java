package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Phrasebook;

/** The phrases of a phase as a JSGF grammar, for a recogniser that takes one. */
final class PeerGrammar {
  private static final String RULES =
      """
      <unit> = one | two | three | four | five | six | seven | eight | nine ;
      <digit> = zero | oh | <unit> ;
      <teen> = ten | eleven | twelve | thirteen | fourteen | fifteen | sixteen | seventeen | eighteen | nineteen ;
      <tens> = twenty | thirty | forty | fifty | sixty | seventy | eighty | ninety ;
      <pair> = <teen> | <tens> [ <unit> ] ;
      <rest> = [ and ] ( <pair> | <unit> ) ;
      <hundreds> = ( <unit> | a ) hundred [ <rest> ] ;
      <digits> = zero | <unit> [ <digit> [ <digit> [ <digit> ] ] ] ;
      <whole> = <digits> | <pair> | <unit> <pair> | <hundreds> | ( <unit> | a ) thousand [ <rest> | <hundreds> ] ;
      <number> = [ <whole> ] point <digit> [ <digit> ] | <whole> ;
      <step> = <pair> | <unit> | <unit> <digit> ;
      <side> = left side | right side | whole car ;
      <wheelside> = left side | right side ;
      <marking> = ( <unit> | ten | twelve | one zero | one two ) point ( six | eight | nine ) ;
      <reason> = for ride height | until ride height | for full droop | until full droop | waiting for parts | tool missing | missing a tool | for later | until later ;
      """;

  private PeerGrammar() {}

  static String of(Set<IntentKind> allowed) {
    List<String> phrases = new ArrayList<>();
    for (IntentKind kind : IntentKind.values()) {
      if (allowed.contains(kind)) {
        Phrasebook.wordings(kind).forEach(w -> phrases.add(w.replace("wheel side", "wheelside")));
      }
    }
    return "#JSGF V1.0;\ngrammar heard;\npublic <heard> = "
        + String.join(" | ", phrases)
        + " ;\n"
        + RULES;
  }
}
