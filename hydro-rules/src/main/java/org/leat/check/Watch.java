package org.leat.check;

import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Asks foreign code, each time for no longer than a limit, on threads that keep no process alive. */
final class Watch {

    private final Duration limit;
    private final ClassLoader loader;
    private final ExecutorService threads;

    /** @param loader the code's own, for what it looks up by its thread */
    Watch(Duration limit, ClassLoader loader) {
        this.limit = limit;
        this.loader = loader;
        this.threads = Executors.newCachedThreadPool(this::thread);
    }

    private Thread thread(Runnable work) {
        Thread thread = new Thread(work, "rule of a pack");
        thread.setDaemon(true);
        thread.setContextClassLoader(loader);
        return thread;
    }

    /**
     * {@return what was answered, with no more than was asked}
     *
     * @throws PackFault for whatever else happened
     */
    <T> T ask(String what, Supplier<T> question) {
        Future<Said<T>> answer = threads.submit(() -> said(question));
        try {
            Said<T> said = answer.get(limit.toMillis(), TimeUnit.MILLISECONDS);
            if (said.cause() != null) {
                throw new PackFault(what + " broke: " + said.cause(), true);
            }
            if (said.given() == null) {
                throw new PackFault(what + " gave null");
            }
            return said.given();
        } catch (TimeoutException e) {
            answer.cancel(true);
            throw new PackTimeout(what + " did not end within " + limit.toMillis() + " ms");
        } catch (InterruptedException e) {
            answer.cancel(true);
            Thread.currentThread().interrupt();
            throw new PackFault(what + " was interrupted");
        } catch (ExecutionException e) {
            // out of memory in telling why, at most
            throw new PackFault(what + " broke", true);
        }
    }

    /** What was given, or why nothing was. */
    private record Said<T>(@Nullable T given, @Nullable String cause) {}

    private static <T> Said<T> said(Supplier<T> question) {
        try {
            return new Said<>(question.get(), null);
        } catch (Throwable e) { // whatever foreign code can throw
            return new Said<>(null, PackFault.cause(e));
        }
    }
}
