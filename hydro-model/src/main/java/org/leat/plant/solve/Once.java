package org.leat.plant.solve;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value computed when first asked for, and once. */
public final class Once<T> {

    private final Supplier<T> how;
    private volatile @Nullable T value;

    public Once(Supplier<T> how) {
        this.how = how;
    }

    public T get() {
        T known = value;
        if (known == null) {
            synchronized (this) {
                known = value;
                if (known == null) {
                    known = how.get();
                    value = known;
                }
            }
        }
        return known;
    }
}
