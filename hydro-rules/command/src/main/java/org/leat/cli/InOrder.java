package org.leat.cli;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/**
 * Does the same with many things at once, and hands the answers on in the things' order. Never more than a few answers wait, so that a
 * long run needs no more memory than a short one.
 */
final class InOrder {

    /** How many answers for each worker may be begun and not yet handed on. */
    private static final int AHEAD = 4;

    private InOrder() {}

    /** Takes an answer. */
    @FunctionalInterface
    interface Taker<R> {
        /** {@return whether to go on} */
        boolean take(R answer) throws IOException;
    }

    /**
     * Works on each thing, and hands each answer on in this thread.
     *
     * @param workers threads at most; with one, or with one thing, all is done in this thread
     * @param work safe to run in several threads; it gives an answer whatever happens
     */
    static <T, R> void each(List<T> things, int workers, Function<T, R> work, Taker<R> taker) throws IOException {
        int threads = Math.min(workers, things.size());
        if (threads < 2) {
            for (T thing : things) {
                if (!taker.take(work.apply(thing))) {
                    return;
                }
            }
            return;
        }
        ExecutorService pool = Executors.newFixedThreadPool(threads, InOrder::thread);
        try {
            Deque<Future<R>> begun = new ArrayDeque<>();
            Iterator<T> waiting = things.iterator();
            while (waiting.hasNext() || !begun.isEmpty()) {
                while (waiting.hasNext() && begun.size() < AHEAD * threads) {
                    T thing = waiting.next();
                    begun.add(pool.submit(() -> work.apply(thing)));
                }
                if (!taker.take(answer(begun.remove()))) {
                    return;
                }
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "check");
        thread.setDaemon(true);
        return thread;
    }

    private static <R> R answer(Future<R> begun) {
        try {
            return begun.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e);
        }
    }
}
