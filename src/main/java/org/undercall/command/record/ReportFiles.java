package org.undercall.command.record;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.undercall.adapter.log.LogSignature;
import org.undercall.adapter.log.SignedStatement;
import org.undercall.adapter.report.Clip;
import org.undercall.adapter.report.ReportCode;
import org.undercall.core.event.Recorded;
import org.undercall.port.Fault;

/** The files of a report in their folder; each is whole or not there. */
final class ReportFiles {
  private static final String SOUNDS = "report-sounds";
  private static final String EXPECTED = "a folder that can be written, with room";

  private final Path folder;
  private final List<Path> written = new ArrayList<>();

  private ReportFiles(Path folder) {
    this.folder = folder;
  }

  /** Something that writes itself. */
  interface Content {
    void to(OutputStream out) throws IOException;
  }

  /** In the folder {@code report} of a session. */
  static ReportFiles ofSession(Path session) throws Fault {
    Path folder = session.resolve("report");
    try {
      own(folder);
    } catch (IOException e) {
      throw fault(ReportCode.CANNOT_WRITE, "" + folder.getFileName(), e);
    }
    return in(folder);
  }

  static ReportFiles in(Path folder) throws Fault {
    try {
      Files.createDirectories(folder);
      return new ReportFiles(folder);
    } catch (IOException e) {
      throw fault(ReportCode.CANNOT_WRITE, "" + folder.getFileName(), e);
    }
  }

  void text(String name, String text) throws Fault {
    write(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  void write(String name, Content content) throws Fault {
    Path part = folder.resolve(name + ".part");
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      content.to(bytes);
      Files.write(
          part,
          bytes.toByteArray(),
          StandardOpenOption.CREATE,
          StandardOpenOption.TRUNCATE_EXISTING,
          StandardOpenOption.WRITE,
          LinkOption.NOFOLLOW_LINKS);
      Files.move(part, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
      written.add(folder.resolve(name));
    } catch (IOException e) {
      throw fault(ReportCode.CANNOT_WRITE, name, e);
    }
  }

  /**
   * Signs what was written so far.
   *
   * @param name the file of the statement; its signature goes beside it
   */
  void sign(String name, SignedStatement.Signer signer) throws Fault {
    Path statement = folder.resolve(name);
    SignedStatement.write(statement, signer, written());
    written.add(statement);
    written.add(LogSignature.beside(statement));
  }

  /** Copies the sounds kept of a session beside the page. */
  List<Clip> clips(List<Recorded> decisions, Path session) throws Fault {
    Map<Long, Path> sounds = SessionClips.of(session, decisions);
    List<Clip> clips = new ArrayList<>();
    for (Recorded decision : decisions) {
      Path sound = sounds.get(decision.seq());
      if (sound != null) {
        clips.add(new Clip(decision, copied(sound)));
      }
    }
    return clips;
  }

  private String copied(Path sound) throws Fault {
    String name = "" + sound.getFileName();
    try {
      Path beside = own(folder.resolve(SOUNDS));
      Files.copy(sound, beside.resolve(name), StandardCopyOption.REPLACE_EXISTING);
      return SOUNDS + "/" + name;
    } catch (IOException e) {
      throw fault(ReportCode.CANNOT_COPY, name, e);
    }
  }

  /** A folder that is made if it is absent, and is not a link to another one. */
  private static Path own(Path folder) throws IOException {
    if (Files.isSymbolicLink(folder)) {
      throw new IOException("a link in the place of a folder");
    }
    return Files.createDirectories(folder);
  }

  /** The files written so far. */
  List<Path> written() {
    return List.copyOf(written);
  }

  private static Fault fault(ReportCode code, String place, IOException e) {
    return new Fault(code, place, Fault.kind(e), EXPECTED);
  }
}
