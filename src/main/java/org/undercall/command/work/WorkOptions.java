package org.undercall.command.work;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.PartsFirst;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.front.Choosing;
import org.undercall.command.front.Chosen;
import org.undercall.command.front.Offer;
import org.undercall.command.front.ProcedureShelf;
import org.undercall.command.front.Terminal;
import org.undercall.command.option.SessionsOption;
import org.undercall.command.option.UserFolders;
import org.undercall.command.record.ReviewCommand;
import org.undercall.core.decision.Session;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.TalkLevel;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.session.Dialogue;
import org.undercall.session.OpenSessions;
import org.undercall.session.Visit;
import org.undercall.session.Work;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What every command that works on a procedure takes. */
public final class WorkOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Parameters(
      paramLabel = "PROCEDURE",
      arity = "0..1",
      description = "The procedure file, JSON or YAML; without one, choose from what is found.")
  private Path procedure;

  @Option(
      names = "--resume",
      paramLabel = "SESSION",
      description = "Take up a session: its folder, its name, or \"last\".")
  private String resume;

  @Option(
      names = "--retorque",
      paramLabel = "SESSION",
      description =
          "Re-torque what a session handed over: its folder, its name, \"last\", or the registration"
              + " or VIN of a car with one such session.")
  private String retorque;

  @Mixin private SessionsOption sessions;
  @Mixin private JobOptions jobs;
  @Mixin private TalkOption talk;
  @Mixin private CrewOptions crew;

  @Option(
      names = "--parts",
      description =
          "Tick off the new parts first, each by \"step completed\"; \"put off waiting for parts\""
              + " says that it is missing.")
  private boolean parts;

  @Option(names = "--new", description = "Begin a new session even if one is open.")
  private boolean fresh;

  @Option(
      names = "--remind",
      paramLabel = "MINUTES",
      defaultValue = "10",
      description = "Remind after so long a quiet; 0 for never (default: ${DEFAULT-VALUE}).")
  private int remindMinutes;

  private Occasion occasion = Occasion.WORK;

  /** Made by the command line reader. */
  public WorkOptions() {}

  /**
   * What to work on: as named, or as chosen at the terminal.
   *
   * @param begunFor what the session is for
   * @throws ParameterException if nothing is named and nobody can be asked
   */
  Chosen choose(PrintWriter out, Occasion begunFor) throws Fault, IOException {
    occasion = begunFor;
    remindAfter();
    job();
    crew.given();
    if (parts && (retorque != null || resume != null)) {
      throw wrong(
          "found --parts with "
              + (resume != null ? "--resume" : "--retorque")
              + ", expected it with a procedure");
    }
    if (retorque != null && (resume != null || procedure != null)) {
      String other = resume != null ? "--resume" : "a procedure";
      throw wrong("found --retorque with " + other + ", expected one");
    }
    if (retorque != null) {
      return new Chosen.Visit(retorque, fresh);
    }
    if (resume != null && (procedure != null || fresh)) {
      throw wrong("found --resume with " + (fresh ? "--new" : "a procedure") + ", expected one");
    }
    if (resume != null) {
      boolean last = resume.equals(SessionFolder.LAST);
      return new Chosen.Session(
          last ? SessionFolder.last(folder()) : SessionFolder.find(sessions.folder(), resume));
    }
    if (procedure != null) {
      return fresh ? new Chosen.Fresh(procedure) : new Chosen.Procedure(procedure);
    }
    return asked(out);
  }

  private Chosen asked(PrintWriter out) throws IOException {
    Choosing choosing = new Choosing(Terminal.ofProgram(), out);
    OpenSessions found = OpenSessions.in(folder());
    if (found.none()) {
      choosing.welcome();
    }
    Path demonstrations = DemoCommand.shared().resolve("procedures");
    ProcedureShelf shelf = ProcedureShelf.standard(demonstrations);
    OpenSessions open = fresh ? new OpenSessions(List.of(), 0, List.of()) : found;
    Offer offer = new Offer(open, shelf);
    return choosing
        .choose(offer, Time.ofMachine().now().wall())
        .orElseThrow(
            () ->
                wrong(
                    "found no PROCEDURE and no choice, expected one, for example: "
                        + offer.command(spec.name())));
  }

  /** Where sessions like this one are kept: rehearsals lie apart from records. */
  private Path folder() {
    return occasion == Occasion.WORK
        ? sessions.folder()
        : SessionFolder.rehearsals(sessions.folder());
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }

  /** Begins or takes up the session, and says which. */
  Work open(Chosen chosen, PrintWriter out) throws Fault {
    Work work = begun(chosen, out);
    Optional<String> technician = job().technician();
    work.given(crew.given());
    Optional<TalkLevel> last =
        work.takenUp() ? Optional.empty() : Optional.of(talk.level(technician));
    Optional<TalkLevel> wanted = talk.given().or(() -> last);
    if (wanted.isPresent()) {
      work.talk(wanted.get(), technician, known().of(technician, work.procedure()));
    }
    boolean record = occasion == Occasion.WORK;
    String how =
        work.takenUp()
            ? (record ? "Session" : "Rehearsal") + " taken up: "
            : "New " + (record ? "session" : "rehearsal") + ": ";
    Dialogue dialogue = new Dialogue(out);
    work.passedOver().forEach(fault -> dialogue.print("Not taken up: " + fault));
    dialogue.print(how + work.folder().path());
    if (!record) {
      dialogue.print("A rehearsal is no record of work; its log and every page say so.");
    }
    if (work.takenUp() && !job().equals(Job.NOT_GIVEN)) {
      dialogue.print("Car, job and technician stay as the session began; --new begins another.");
    }
    jobs.job()
        .vin()
        .filter(vin -> !vin.checkDigitFits())
        .ifPresent(
            vin ->
                dialogue.print(
                    "The check digit of "
                        + vin
                        + " does not fit; outside North America it need not."));
    work.dropped().ifPresent(line -> dialogue.print("A torn last line was dropped: " + line));
    return work;
  }

  /** The job as given; an apprentice who works is its technician. */
  private Job job() {
    Job job = jobs.job();
    Optional<String> works = job.technician().or(crew::apprentice);
    if (!works.equals(crew.apprentice().or(job::technician))) {
      throw wrong("found --technician and --apprentice with two names, expected one who works");
    }
    return new Job(job.registration(), job.vin(), job.odometer(), job.number(), works);
  }

  private Work begun(Chosen chosen, PrintWriter out) throws Fault {
    if (chosen instanceof Chosen.Visit wanted) {
      Visit visit = Visit.of(sessions.folder(), wanted.session(), job(), occasion);
      Dialogue dialogue = new Dialogue(out);
      dialogue.print("Goes on from session: " + visit.begun().session());
      visit.notes().forEach(dialogue::print);
      return Work.on(visit, folder(), occasion, wanted.fresh());
    }
    if (chosen instanceof Chosen.Session session) {
      return Work.takeUp(session.folder(), occasion);
    }
    boolean begin = chosen instanceof Chosen.Fresh;
    Path file =
        chosen instanceof Chosen.Fresh named ? named.file() : ((Chosen.Procedure) chosen).file();
    LoadedProcedure loaded = ProcedureFile.load(file);
    LoadedProcedure used = parts ? PartsFirst.of(loaded) : loaded;
    return Work.on(used, folder(), job(), occasion, begin);
  }

  /** Keeps how much was said last, for the technician who worked then. */
  void keepTalk(Session left) {
    talk.keep(technician(left), left.talk().habit().level());
  }

  /** Keeps what the technician who worked last has learned by hearing it. */
  void keepKnown(Work work, Session left) {
    boolean done = RehearseCommand.status(left) == ReviewCommand.COMPLETE;
    known()
        .keep(
            technician(left),
            left.talk().habit().heard(),
            work.procedure(),
            done && left.account().byOne());
  }

  private static Optional<String> technician(Session left) {
    return Optional.of(left.account().technician()).filter(name -> !name.isEmpty());
  }

  private static KnownBefore known() {
    return new KnownBefore(
        UserFolders.ofMachine().known().used(), Time.ofMachine().now().wall().toLocalDate());
  }

  /** The quiet before the first reminder; zero for none. */
  Duration remindAfter() {
    if (remindMinutes < 0) {
      throw wrong("--remind takes 0 or more minutes, found " + remindMinutes);
    }
    return Duration.ofMinutes(remindMinutes);
  }
}
