package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InOrderTest {

    private static final List<Integer> THINGS = IntStream.range(0, 200).boxed().toList();

    @Test
    void answers_come_in_the_order_of_the_things_however_long_each_takes() throws IOException {
        CountDownLatch second = new CountDownLatch(1);
        List<Integer> taken = new ArrayList<>();
        InOrder.each(
                THINGS,
                3,
                thing -> {
                    if (thing == 0) {
                        await(second); // the first is done after the second has begun
                    } else {
                        second.countDown();
                    }
                    return 10 * thing;
                },
                taken::add);
        assertThat(taken).isEqualTo(THINGS.stream().map(thing -> 10 * thing).toList());
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void no_more_than_a_few_answers_wait_to_be_taken() throws IOException {
        AtomicInteger begun = new AtomicInteger();
        List<Integer> ahead = new ArrayList<>();
        InOrder.each(
                THINGS,
                2,
                thing -> {
                    begun.incrementAndGet();
                    return thing;
                },
                thing -> ahead.add(begun.get() - thing));
        assertThat(ahead).hasSize(THINGS.size()).allMatch(many -> many <= 8);
    }

    @Test
    void nothing_is_taken_after_the_taker_has_had_enough() throws IOException {
        for (int workers : new int[] {1, 4}) {
            List<Integer> taken = new ArrayList<>();
            InOrder.each(THINGS, workers, thing -> thing, thing -> {
                taken.add(thing);
                return thing < 5;
            });
            assertThat(taken).containsExactly(0, 1, 2, 3, 4, 5);
        }
    }

    @Test
    void one_worker_or_one_thing_is_worked_on_where_it_is_asked_for_and_more_are_not() throws IOException {
        Set<Thread> threads = ConcurrentHashMap.newKeySet();
        InOrder.each(THINGS, 1, thing -> threads.add(Thread.currentThread()), answer -> true);
        InOrder.each(List.of(1), 8, thing -> threads.add(Thread.currentThread()), answer -> true);
        assertThat(threads).containsExactly(Thread.currentThread());
        threads.clear();
        InOrder.each(THINGS, 2, thing -> threads.add(Thread.currentThread()), answer -> true);
        assertThat(threads).doesNotContain(Thread.currentThread()).hasSizeLessThanOrEqualTo(2);
    }

    @Test
    void what_the_work_ends_with_reaches_the_caller_as_it_is() {
        for (Throwable end : new Throwable[] {new StackOverflowError("deep"), new IllegalArgumentException("wrong")}) {
            assertThatThrownBy(() -> InOrder.each(THINGS, 2, thing -> thrown(end), answer -> true))
                    .isSameAs(end);
        }
    }

    private static int thrown(Throwable end) {
        if (end instanceof Error error) {
            throw error;
        }
        throw (RuntimeException) end;
    }
}
