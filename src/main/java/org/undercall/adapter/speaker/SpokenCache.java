package org.undercall.adapter.speaker;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.undercall.sound.Pcm;
import org.undercall.text.Sha256;

/**
 * A synthesiser that says each sentence only once: sound is kept in memory and in a folder.
 *
 * <p>A file is named by the SHA-256 of the voice and the words. Both stores are bounded; the
 * longest unused goes first.
 */
public final class SpokenCache implements Synthesiser {
  private static final long IN_MEMORY_BYTES = 8L << 20;

  private final Synthesiser maker;
  private final SoundFolder folder;
  private final Map<String, Pcm> memory = new LinkedHashMap<>(64, 0.75f, true);
  private final Object making = new Object();
  private long inMemory;

  /**
   * A cache before a synthesiser.
   *
   * @param maker makes what is not there yet; {@link #close} closes it
   * @param folder where the files lie; made when first needed
   * @param maxBytes how much the files may take together
   */
  public SpokenCache(Synthesiser maker, Path folder, long maxBytes) {
    this.maker = maker;
    this.folder = new SoundFolder(folder, maxBytes);
  }

  @Override
  public String voice() {
    return maker.voice();
  }

  @Override
  public Pcm speak(String words) {
    String key = key(words);
    Optional<Pcm> kept = kept(key);
    if (kept.isPresent()) {
      return kept.get();
    }
    synchronized (making) {
      return kept(key).orElseGet(() -> made(key, words));
    }
  }

  /** Whether the words are in the cache already, whole and sound. */
  public boolean has(String words) {
    return kept(key(words)).isPresent();
  }

  /**
   * Makes every sentence of these texts that is not there yet.
   *
   * @param texts texts as they will be said
   * @return how many sentences were made
   */
  public int warm(Collection<String> texts) {
    int made = 0;
    for (String text : texts) {
      for (String sentence : SpokenText.sentences(text)) {
        if (!has(sentence)) {
          speak(sentence);
          made++;
        }
      }
    }
    return made;
  }

  @Override
  public void close() {
    maker.close();
  }

  private Optional<Pcm> kept(String key) {
    synchronized (memory) {
      Pcm sound = memory.get(key);
      if (sound != null) {
        return Optional.of(sound);
      }
    }
    Optional<Pcm> sound = folder.read(key);
    sound.ifPresent(found -> remember(key, found));
    return sound;
  }

  private Pcm made(String key, String words) {
    Pcm sound = maker.speak(words);
    folder.write(key, sound);
    remember(key, sound);
    return sound;
  }

  private void remember(String key, Pcm sound) {
    synchronized (memory) {
      Pcm before = memory.put(key, sound);
      inMemory += 2L * (sound.length() - (before == null ? 0 : before.length()));
      var eldest = memory.values().iterator();
      while (inMemory > IN_MEMORY_BYTES && memory.size() > 1) {
        inMemory -= 2L * eldest.next().length();
        eldest.remove();
      }
    }
  }

  private String key(String words) {
    return Sha256.hex((maker.voice() + "\n" + words).getBytes(StandardCharsets.UTF_8));
  }
}
