package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.listen.TalkedOver.Turn;

@DisplayName("Talking over the voice")
class TalkedOverTest {
  private static final int FRAME = 30;

  private final TalkedOver over = new TalkedOver();

  /** The voice speaks alone for a while, of which so much is left. */
  @BeforeEach
  void learn() {
    over.replies();
    assertEquals(Turn.NOTHING, voice(12_000, true, -60));
  }

  /** What comes of sound while the voice speaks: the first turn that is one. */
  private Turn voice(int millis, boolean speech, double level) {
    return pass(millis, speech, level, true);
  }

  private Turn pass(int millis, boolean speech, double level, boolean sounds) {
    for (int at = 0; at < millis; at += FRAME) {
      if (sounds) {
        over.plays(-20);
      }
      Turn turn = over.take(FRAME, speech, level, sounds);
      if (turn != Turn.NOTHING) {
        return turn;
      }
    }
    return Turn.NOTHING;
  }

  @Test
  @DisplayName("holds the voice within 90 ms")
  void holds() {
    assertEquals(Turn.HOLD, voice(90, true, -30));
  }

  @Test
  @DisplayName("a cough, what is no speech, and what is left of the voice do not")
  void doesNot() {
    assertEquals(Turn.NOTHING, voice(60, true, -30));
    assertEquals(Turn.NOTHING, voice(600, false, -60));
    assertEquals(Turn.NOTHING, voice(1_000, false, -30));
    assertEquals(Turn.NOTHING, voice(2_000, true, -60));
  }

  @Test
  @DisplayName("nor does speech while the voice is silent")
  void silent() {
    assertEquals(Turn.NOTHING, pass(2_000, true, -30, false));
  }

  @Test
  @DisplayName("the voice goes on a second after the last of it, if no phrase came")
  void goesOn() {
    assertEquals(Turn.HOLD, voice(300, true, -30));
    assertEquals(Turn.NOTHING, pass(2_000, true, -30, false));
    assertEquals(Turn.NOTHING, pass(960, false, -70, false));
    assertEquals(Turn.GO_ON, pass(60, false, -70, false));
  }

  @Test
  @DisplayName("and after eight seconds of it in any case")
  void longTalk() {
    assertEquals(Turn.HOLD, voice(300, true, -30));
    assertEquals(Turn.NOTHING, pass(7_900, true, -30, false));
    assertEquals(Turn.GO_ON, pass(200, true, -30, false));
  }

  @Test
  @DisplayName("a phrase ends it at once")
  void answered() {
    assertEquals(Turn.HOLD, voice(300, true, -30));
    over.answered();
    assertEquals(Turn.NOTHING, pass(3_000, false, -70, false));
  }

  @Test
  @DisplayName("in lasting chatter a reply is held twice, and the next one again")
  void chatter() {
    for (int i = 0; i < 2; i++) {
      assertEquals(Turn.HOLD, voice(6_000, true, -10 + 10 * i));
      assertEquals(Turn.GO_ON, pass(9_000, true, -10, false));
    }
    assertEquals(Turn.NOTHING, voice(1_000, true, 10));
    voice(12_000, false, -60);
    over.replies();
    assertEquals(Turn.HOLD, voice(300, true, -10));
  }

  @Test
  @DisplayName("what held the voice and was nothing must be louder the next time")
  void learns() {
    assertEquals(Turn.HOLD, voice(300, true, -30));
    assertEquals(Turn.GO_ON, pass(1_200, false, -70, false));
    over.replies();
    assertEquals(Turn.NOTHING, voice(300, true, -30));
  }
}
