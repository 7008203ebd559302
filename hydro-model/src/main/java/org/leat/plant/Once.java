package org.leat.plant;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value computed when first asked for, and once. */
final class Once<T> {

    private final Supplier<T> how;
    private volatile @Nullable T value;

    Once(Supplier<T> how) {
        this.how = how;
    }

    T get() {
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
