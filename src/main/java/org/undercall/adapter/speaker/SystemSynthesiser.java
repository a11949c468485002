package org.undercall.adapter.speaker;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.Pcm;
import org.undercall.sound.SpeakerCode;
import org.undercall.sound.WavFile;

/**
 * The voice of the operating system: espeak-ng on Linux, {@code say} on macOS, the speech service
 * of Windows through PowerShell.
 *
 * <p>The words go to the program's standard input and the sound comes back in a file, so nothing
 * that is said can become an argument or a command.
 */
public final class SystemSynthesiser implements Synthesiser {
  /** The place of the sound file in a command line. */
  static final String FILE = "{file}";

  private static final String SAPI =
      "Add-Type -AssemblyName System.Speech;"
          + "[Console]::InputEncoding=[Text.Encoding]::UTF8;"
          + "$s=New-Object System.Speech.Synthesis.SpeechSynthesizer;"
          + "$f=New-Object System.Speech.AudioFormat.SpeechAudioFormatInfo(22050,"
          + "[System.Speech.AudioFormat.AudioBitsPerSample]::Sixteen,"
          + "[System.Speech.AudioFormat.AudioChannel]::Mono);"
          + "$s.SetOutputToWaveFile($env:UNDERCALL_SPEECH_FILE,$f);"
          + "$s.Speak([Console]::In.ReadToEnd());$s.Dispose()";

  private final List<String> command;
  private final Duration limit;

  /**
   * A voice from a command that reads words and writes a WAV file.
   *
   * @param command the program and its arguments, {@code {file}} for the file to write
   * @param limit how long it may take
   */
  SystemSynthesiser(List<String> command, Duration limit) {
    this.command = List.copyOf(command);
    this.limit = limit;
  }

  /** The voice of the system that the program runs on. */
  public static SystemSynthesiser here() {
    return new SystemSynthesiser(
        command(System.getProperty("os.name", "")), Duration.ofSeconds(10));
  }

  /** The command of a system by its name as Java gives it. */
  static List<String> command(String system) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("mac")) {
      return List.of(
          "say", "--file-format=WAVE", "--data-format=LEI16@22050", "-o", FILE, "-f", "-");
    }
    if (name.startsWith("windows")) {
      return List.of("powershell", "-NoProfile", "-NonInteractive", "-Command", SAPI);
    }
    return List.of("espeak-ng", "-v", "en-us", "-s", "150", "-w", FILE, "--stdin");
  }

  @Override
  public String voice() {
    return "system " + String.join(" ", command.subList(0, Math.min(5, command.size())));
  }

  @Override
  public Pcm speak(String words) {
    try {
      Path file = Files.createTempFile("undercall-", ".wav");
      try {
        run(words, file);
        Pcm sound = WavFile.read(file);
        if (sound.peak() == 0) {
          throw new UncheckedFault(SpeakerCode.NO_SOUND, "no sound came for \"" + words + "\"");
        }
        return sound;
      } finally {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw failed(e.toString(), e);
    }
  }

  private void run(String words, Path file) throws IOException {
    Process process = start(file);
    try {
      try (OutputStream in = process.getOutputStream()) {
        in.write(words.getBytes(StandardCharsets.UTF_8));
      }
      if (!process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS)) {
        throw new UncheckedFault(
            SpeakerCode.SYSTEM_VOICE_SLOW,
            command.get(0) + " took longer than " + limit.toMillis() + " ms");
      }
      if (process.exitValue() != 0) {
        throw failed("it ended with status " + process.exitValue() + ", expected 0", null);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw failed("it was interrupted", e);
    } finally {
      process.destroyForcibly();
    }
  }

  private Process start(Path file) {
    List<String> line =
        command.stream().map(part -> part.equals(FILE) ? file.toString() : part).toList();
    ProcessBuilder builder =
        new ProcessBuilder(line)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD);
    builder.environment().put("UNDERCALL_SPEECH_FILE", file.toString());
    try {
      return builder.start();
    } catch (IOException e) {
      throw new UncheckedFault(
          SpeakerCode.NO_SYSTEM_VOICE,
          "the program " + line.get(0) + " was not found; install it or use --voice mary",
          e);
    }
  }

  private UncheckedFault failed(String why, Throwable cause) {
    return new UncheckedFault(
        SpeakerCode.SYSTEM_VOICE_FAILED, "the voice " + command.get(0) + " failed: " + why, cause);
  }
}
