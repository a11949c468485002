package org.undercall.command.option;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.Consumer;
import org.undercall.core.board.DeviceNews;
import org.undercall.port.Display;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.session.BoardLink;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What every command takes that can show a board. */
public final class BoardOptions {
  private static final int HIGHEST_PORT = 65_535;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(names = "--board", description = "Show the session on a page, on this machine only.")
  private boolean board;

  @Option(
      names = "--board-on-network",
      description = "Show it to the network too; each browser needs a code from the console.")
  private boolean network;

  @Option(
      names = "--board-port",
      paramLabel = "PORT",
      defaultValue = "7390",
      description = "The port of the page; 0 for any free one (default: ${DEFAULT-VALUE}).")
  private int port;

  /** Made by the command line reader. */
  public BoardOptions() {}

  /** Opens the board if it is wanted. */
  public Opened open(PrintWriter out) throws Fault {
    requirePort("--board-port", port, spec);
    return new Opened(
        board || network ? Optional.of(BoardLink.open(port, network, out)) : Optional.empty());
  }

  /**
   * Finds a port that no machine has before anything is opened.
   *
   * @param option that names it
   */
  public static void requirePort(String option, int port, CommandSpec spec) {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new ParameterException(
          spec.commandLine(), "found " + option + " " + port + ", expected 0 to " + HIGHEST_PORT);
    }
  }

  /**
   * A board, or none.
   *
   * @param link empty for none
   */
  public record Opened(Optional<BoardLink> link) implements AutoCloseable {
    /** The ear, with the board's presses if there is one. */
    public Ear of(Ear ear) {
      return link.map(l -> l.of(ear)).orElse(ear);
    }

    /** Where news of the devices are shown. */
    public Consumer<DeviceNews> devices() {
      return news -> link.ifPresent(l -> l.told(news));
    }

    /** Where the session is shown. */
    public Display display() {
      return link.map(Display.class::cast).orElse(Display.NONE);
    }

    @Override
    public void close() {
      link.ifPresent(BoardLink::close);
    }
  }
}
