package org.undercall.live;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** A virtual microphone and loudspeaker, made by a script with PulseAudio. */
final class VirtualSound implements AutoCloseable {
  private static final Path SCRIPT =
      Path.of("src", "test", "resources", "live", "virtual-sound.sh").toAbsolutePath();

  private final Path folder;

  private VirtualSound(Path folder) {
    this.folder = folder;
  }

  /** Starts both; empty where that cannot be done, which is printed. */
  static Optional<VirtualSound> start(Path folder) throws IOException, InterruptedException {
    VirtualSound sound = new VirtualSound(folder);
    try {
      Process process = script(folder, "start").redirectErrorStream(true).start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (process.waitFor() == 0) {
        return Optional.of(sound);
      }
      System.out.println("live: no virtual sound card, not tried: " + said.strip());
    } catch (IOException e) {
      System.out.println("live: no virtual sound card, not tried: " + e);
    }
    sound.close();
    return Optional.empty();
  }

  /** Where a program finds both as its default devices: the value of ALSA_CONFIG_PATH. */
  String alsa() {
    return folder.resolve("alsa.conf").toString();
  }

  /** Takes the microphone away. */
  void lose() throws IOException, InterruptedException {
    run("lose");
  }

  /** Brings it back. */
  void find() throws IOException, InterruptedException {
    run("find");
  }

  /** Plays a WAV file into the microphone and returns when it has been played. */
  void call(Path wav) throws IOException, InterruptedException {
    Process process = tool("mic", "paplay", "--device=mic_in", wav.toString()).inheritIO().start();
    if (!process.waitFor(20, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IOException("paplay hangs");
    }
  }

  /**
   * Lets the microphone hear the loudspeaker, as in a small room: the sound itself, and four
   * reflections of it.
   *
   * @param gain how loud the sound itself is heard
   */
  AutoCloseable echoing(double gain) throws IOException {
    List<String> command = new ArrayList<>(List.of("pacat", "--device=mic_in"));
    command.addAll(Room.options());
    return Room.between(recording(), tool("mic", command.toArray(new String[0])).start(), gain);
  }

  /** Records the loudspeaker: 16 kHz, 16 bit, little-endian, mono. */
  Process recording() throws IOException {
    return tool(
            "speaker",
            "parec",
            "--device=speaker.monitor",
            "--format=s16le",
            "--rate=16000",
            "--channels=1",
            "--latency-msec=20")
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  @Override
  public void close() throws IOException {
    try {
      run("stop");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void run(String what) throws IOException, InterruptedException {
    Process process = script(folder, what).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
    process.waitFor(20, TimeUnit.SECONDS);
  }

  private static ProcessBuilder script(Path folder, String what) {
    return new ProcessBuilder("bash", SCRIPT.toString(), what, folder.toString());
  }

  private ProcessBuilder tool(String server, String... command) {
    ProcessBuilder builder = new ProcessBuilder(List.of(command));
    builder.environment().put("PULSE_SERVER", "unix:" + folder.resolve(server).resolve("socket"));
    builder
        .environment()
        .put("PULSE_RUNTIME_PATH", folder.resolve(server).resolve("run").toString());
    return builder;
  }
}
