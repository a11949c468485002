package org.undercall.command.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.command.App;
import picocli.CommandLine;

@DisplayName("The command desk")
@Timeout(60)
class DeskCommandTest {
  @TempDir Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... words) {
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return line.execute(words);
  }

  @Test
  @DisplayName("wants a name that is one of a procedure, and a port that there is")
  void names() {
    assertEquals(2, run("desk", folder.resolve("own.txt").toString()));
    assertTrue(err.toString().contains("expected a name that ends in .json"), err.toString());
    assertEquals(2, run("desk", "own.json", "--port", "70000"));
    assertTrue(err.toString().contains("found --port 70000"), err.toString());
  }

  @Test
  @DisplayName("opens no file of which something would be lost")
  void broken() throws Exception {
    Path file =
        Files.writeString(folder.resolve("own.json"), "{\"title\": \"a\", \"title\": \"b\"}");
    assertEquals(1, run("desk", file.toString(), "--port", "0"));
    assertTrue(err.toString().startsWith("PRO-007 own.json:1:"), err.toString());
  }

  @Test
  @DisplayName("says that its port is in use")
  void port() throws Exception {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      String port = String.valueOf(taken.getLocalPort());
      assertEquals(1, run("desk", folder.resolve("new.json").toString(), "--port", port));
      assertTrue(err.toString().startsWith("DSK-001 port " + port), err.toString());
    }
  }

  @Test
  @DisplayName("prints an address at the loopback interface, serves there, and writes nothing")
  void serves() throws Exception {
    Thread served =
        new Thread(() -> run("desk", folder.resolve("new.yaml").toString(), "--port", "0"));
    served.start();
    String printed = "";
    for (int i = 0; i < 400 && !printed.contains("Ctrl-C"); i++) {
      Thread.sleep(50);
      printed = out.toString();
    }
    assertTrue(printed.startsWith("New file: "), printed);
    URI address = URI.create(printed.replaceAll("(?s).*Desk: (\\S+).*", "$1"));
    assertEquals("localhost", address.getHost());
    address.resolve("/desk.svg").toURL().openConnection().connect();
    served.interrupt();
    served.join();
    assertEquals(0, folder.toFile().list().length);
  }
}
