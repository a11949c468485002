package org.undercall.session;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.undercall.core.board.DeviceNews;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.Time;
import org.undercall.port.Voice;

/** A bay with a board in which a session runs on a thread of its own. */
final class BoardBay implements AutoCloseable {
  final List<Recorded> recorded = new CopyOnWriteArrayList<>();
  private final BlockingQueue<Optional<Heard>> phrases = new LinkedBlockingQueue<>();
  private final BoardLink link;
  private final Thread loop;

  private BoardBay(Procedure procedure) throws Fault {
    link = BoardLink.open(0, false, new PrintWriter(new StringWriter()));
    Session session = Session.start(Walk.of(procedure));
    link.earlier(session, List.of());
    loop = new Thread(() -> run(session), "session");
    loop.start();
  }

  static BoardBay of(Procedure procedure) throws Fault {
    return new BoardBay(procedure);
  }

  private void run(Session session) {
    SessionLoop.Ports ports =
        new SessionLoop.Ports(
            link.of(new QueueEar()), new Silent(), recorded::add, Time.ofMachine(), link);
    try {
      new SessionLoop(session, ports, 0)
          .run(Decider.begin(session, new SessionEvent.SessionStarted("", "", "", "")));
    } catch (Fault e) {
      throw new IllegalStateException(e);
    }
  }

  /** Says a phrase; it is heard when the loop listens next. */
  void says(String phrase) {
    phrases.add(Optional.of(Heard.typed(phrase)));
  }

  /** Lets the loop hear a text as it is, as one word. */
  void hears(String text) {
    List<RecognisedPhrase.Word> word = List.of(new RecognisedPhrase.Word(text, 1, 0, 0));
    phrases.add(Optional.of(new Heard(new RecognisedPhrase(word), Heard.How.SPOKEN)));
  }

  /** Tells news of a device, as its thread would. */
  void tells(DeviceNews news) {
    link.told(news);
  }

  /** The last phrase that was recorded, with how it came. */
  Recorded.Heard lastHeard() {
    return recorded.get(recorded.size() - 1).heard().orElseThrow();
  }

  String address() {
    return "http://localhost:" + link.port() + "/";
  }

  @Override
  public void close() {
    phrases.add(Optional.empty());
    try {
      loop.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    link.close();
  }

  private static final class Silent implements Voice {
    @Override
    public void say(String words) {}

    @Override
    public void close() {}
  }

  private final class QueueEar implements Ear {
    @Override
    public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
      try {
        Optional<Heard> phrase = phrases.poll(patienceMillis, TimeUnit.MILLISECONDS);
        return phrase == null ? Optional.empty() : Optional.of(phrase.orElseThrow(EndOfInput::new));
      } catch (InterruptedException e) {
        throw new EndOfInput();
      }
    }

    @Override
    public void close() {}
  }
}
