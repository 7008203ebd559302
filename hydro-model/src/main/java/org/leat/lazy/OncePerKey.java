package org.leat.lazy;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Values computed from keys, each when it is first asked for, and once for equal keys. The key is all that a value is computed
 * from, so whoever shares one of these shares work and nothing else. Safe to share between threads.
 */
public final class OncePerKey<K, V> {

    private final Map<K, Once<V>> values = new ConcurrentHashMap<>();
    private final Function<K, V> how;

    public OncePerKey(Function<K, V> how) {
        this.how = how;
    }

    public V get(K key) {
        return values.computeIfAbsent(key, k -> new Once<>(() -> how.apply(k))).get();
    }
}
