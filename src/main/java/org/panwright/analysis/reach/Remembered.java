package org.panwright.analysis.reach;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The last few results of a computation, by the value of what they were computed from. Any thread;
 * two threads that miss the same key both compute it, and neither waits for the other.
 */
public final class Remembered<K, V> {
  private final Map<K, V> results;

  /** Remembers the {@code most} results used last. */
  public Remembered(int most) {
    results =
        new LinkedHashMap<>(16, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        };
  }

  /** The result for {@code key}, computed now if it is not remembered. */
  public V get(K key, Supplier<V> computation) {
    synchronized (results) {
      V known = results.get(key);
      if (known != null) {
        return known;
      }
    }
    V computed = computation.get();
    synchronized (results) {
      results.put(key, computed);
    }
    return computed;
  }
}
