package org.undercall.command.record;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercall.adapter.log.EventFields;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.report.BeforeAfterTable;
import org.undercall.adapter.report.EventsCsv;
import org.undercall.adapter.report.FastenersCsv;
import org.undercall.adapter.report.ReviewJson;
import org.undercall.adapter.report.ReviewText;
import org.undercall.command.option.SessionOption;
import org.undercall.core.review.FollowUp;
import org.undercall.core.review.Review;
import org.undercall.port.Fault;
import org.undercall.session.FollowUps;
import org.undercall.session.StoredSession;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Prints what was done in a session, step by step, and what is still open. */
@Command(
    name = "review",
    description = "Print what was done in a session, and what is still open.",
    mixinStandardHelpOptions = true,
    exitCodeList = {"0:the session is complete", "3:the session is not complete"})
public final class ReviewCommand implements Callable<Integer> {
  /** Exit status: the session is complete. */
  public static final int COMPLETE = 0;

  /** Exit status: the session cannot be reviewed. */
  public static final int FAULT = 1;

  /** Exit status: something is still open. */
  public static final int NOT_COMPLETE = 3;

  @Spec private CommandSpec spec;

  @Mixin private SessionOption session;

  @Option(names = "--json", description = "Print JSON instead of text.")
  private boolean json;

  @Option(
      names = "--csv",
      arity = "0..1",
      paramLabel = "TABLE",
      fallbackValue = "FASTENERS",
      description =
          "Print CSV instead of text: fasteners (if no table is named), events, or readings"
              + " before and after.")
  private Table csv;

  /** A table that can be printed as CSV. */
  public enum Table {
    FASTENERS,
    EVENTS,
    READINGS
  }

  /** Made by the command line reader. */
  public ReviewCommand() {}

  @Override
  public Integer call() throws Fault {
    if (json && csv != null) {
      throw new ParameterException(
          spec.commandLine(), "found --json and --csv, expected one of them");
    }
    StoredSession stored = StoredSession.read(session.folder());
    if (stored.log().dropped().isPresent()) {
      PrintWriter err = spec.commandLine().getErr();
      err.println("The last line of the log is torn and was left out.");
      err.flush();
    }
    Review review = stored.review();
    PrintWriter out = spec.commandLine().getOut();
    out.print(text(review, stored));
    out.flush();
    return review.complete() ? COMPLETE : NOT_COMPLETE;
  }

  private String text(Review review, StoredSession stored) {
    LogContent log = stored.log();
    if (csv != null) {
      return switch (csv) {
        case EVENTS -> EventsCsv.of(review, log.decisions(), EventFields::json);
        case READINGS -> BeforeAfterTable.csv(review);
        case FASTENERS -> FastenersCsv.of(review);
      };
    }
    List<FollowUp> visits = FollowUps.of(stored.folder(), log.last());
    return json ? ReviewJson.of(review, visits) : ReviewText.of(review, stored.procedure(), visits);
  }
}
