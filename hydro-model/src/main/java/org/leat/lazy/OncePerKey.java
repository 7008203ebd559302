package org.leat.lazy;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Values computed from keys, each when it is first asked for, and once for equal keys. The key is all that a value is computed
 * from, so whoever shares one of these shares work and nothing else. Where only so many are kept, those that were not asked for
 * lately are forgotten and computed again. Safe to share between threads.
 */
public final class OncePerKey<K, V> {

    private final Function<K, V> how;
    private final int most;
    private volatile Map<K, Once<V>> recent = new ConcurrentHashMap<>();
    private volatile Map<K, Once<V>> earlier = Map.of();

    /** Keeps every value. */
    public OncePerKey(Function<K, V> how) {
        this(how, Integer.MAX_VALUE);
    }

    /**
     * Keeps no more values than twice as many as this, but for what threads that ask at once add on top.
     *
     * @param most of the keys asked for last so many are kept at least
     */
    public OncePerKey(Function<K, V> how, int most) {
        this.how = how;
        this.most = most;
    }

    public V get(K key) {
        Map<K, Once<V>> now = recent;
        Once<V> value = now.computeIfAbsent(key, this::earlierOrNew);
        if (now.size() >= most) {
            age(now);
        }
        return value.get();
    }

    /** {@return how many keys were asked for lately, no more than are kept} */
    public int kept() {
        return recent.size();
    }

    private Once<V> earlierOrNew(K key) {
        Once<V> known = earlier.get(key);
        return known == null ? new Once<>(() -> how.apply(key)) : known;
    }

    private synchronized void age(Map<K, Once<V>> full) {
        if (recent == full) {
            earlier = full;
            recent = new ConcurrentHashMap<>();
        }
    }
}
