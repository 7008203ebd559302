package org.leat.lazy;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value computed when it is first asked for, and once; where that fails it is tried again the next time. Safe to share. */
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

    /** {@return the value if it was asked for before, else null} */
    public @Nullable T known() {
        return value;
    }
}
