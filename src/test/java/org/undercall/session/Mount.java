package org.undercall.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A small disk in memory, for tests that only root can do. */
final class Mount {
  private Mount() {}

  /** Mounts a disk of that size on a folder; false if that is not allowed here. */
  static boolean disk(Path folder, String size) throws InterruptedException {
    return run("mount", "-t", "tmpfs", "-o", "size=" + size, "small", folder.toString());
  }

  /** Mounts it anew with other options, for example {@code ro}. */
  static boolean again(Path folder, String options) throws InterruptedException {
    return run("mount", "-o", "remount," + options, folder.toString());
  }

  static boolean gone(Path folder) throws InterruptedException {
    return run("umount", folder.toString());
  }

  private static boolean run(String... command) throws InterruptedException {
    try {
      Process process = new ProcessBuilder(List.of(command)).redirectErrorStream(true).start();
      process.getInputStream().readAllBytes();
      return process.waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }
}
