package org.leat.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * A long run that a person may stop: the first interrupt of the process asks it to end with what it has, and the process stays until
 * that is written.
 */
final class Interruptible implements AutoCloseable {

    private static final int LONGEST_WAIT = 60;

    private final CountDownLatch written = new CountDownLatch(1);
    private final Thread hook = new Thread(this::ask, "stopped by hand");
    private volatile boolean asked;

    private Interruptible() {}

    /** {@return the watch over a run that begins now} */
    static Interruptible watched() {
        Interruptible watch = new Interruptible();
        Runtime.getRuntime().addShutdownHook(watch.hook);
        return watch;
    }

    /** {@return whether it was asked to end} */
    boolean asked() {
        return asked;
    }

    private void ask() {
        asked = true;
        try {
            if (!written.await(LONGEST_WAIT, TimeUnit.SECONDS)) {
                Thread.currentThread().interrupt(); // nothing more can be done: the process ends
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** What there is to say is written. */
    @Override
    public void close() {
        written.countDown();
        if (!asked) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // the process is ending already, and the hook with it
            }
        }
    }
}
