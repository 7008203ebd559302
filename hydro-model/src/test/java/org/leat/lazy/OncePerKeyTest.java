package org.leat.lazy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

class OncePerKeyTest {

    private final List<Integer> computed = Collections.synchronizedList(new ArrayList<>());

    private int squared(int key) {
        computed.add(key);
        return key * key;
    }

    @Test
    void a_value_is_computed_once_for_equal_keys() {
        OncePerKey<Integer, Integer> squares = new OncePerKey<>(this::squared);
        for (int key = 0; key < 3000; key++) {
            assertThat(squares.get(key)).isEqualTo(key * key);
        }
        for (int key = 0; key < 3000; key++) {
            assertThat(squares.get(key)).isEqualTo(key * key);
        }
        assertThat(computed).hasSize(3000).doesNotHaveDuplicates();
    }

    @Test
    void what_is_asked_for_again_and_again_is_not_forgotten() {
        OncePerKey<Integer, Integer> squares = new OncePerKey<>(this::squared, 10);
        for (int key = 1; key < 200; key++) {
            squares.get(key);
            assertThat(squares.get(0)).isZero();
        }
        assertThat(computed).hasSize(200).doesNotHaveDuplicates();
    }

    @Test
    void of_many_no_more_are_kept_than_twice_as_many_as_asked_for() {
        OncePerKey<Integer, Integer> squares = new OncePerKey<>(this::squared, 10);
        for (int key = 0; key < 1000; key++) {
            squares.get(key);
        }
        computed.clear();
        for (int key = 999; key >= 0; key--) {
            assertThat(squares.get(key)).isEqualTo(key * key);
        }
        assertThat(computed).hasSizeBetween(980, 990).doesNotContain(999).contains(0);
    }

    @Test
    void the_newer_half_is_put_by_as_soon_as_it_is_full() {
        OncePerKey<Integer, Integer> squares = new OncePerKey<>(this::squared, 10);
        for (int key = 0; key < 100; key++) {
            squares.get(key);
            assertThat(squares.kept()).isEqualTo((key + 1) % 10);
        }
    }

    @Test
    void of_the_keys_asked_for_last_so_many_are_kept_at_least() {
        for (int asked = 10; asked < 40; asked++) {
            OncePerKey<Integer, Integer> squares = new OncePerKey<>(this::squared, 10);
            for (int key = 0; key < asked; key++) {
                squares.get(key);
            }
            computed.clear();
            for (int key = asked - 10; key < asked; key++) {
                squares.get(key);
            }
            assertThat(computed).isEmpty();
        }
    }

    @Test
    void many_threads_get_the_same() throws Exception {
        OncePerKey<Integer, Integer> squares = new OncePerKey<>(this::squared, 5);
        CyclicBarrier together = new CyclicBarrier(4);
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            Callable<List<Integer>> asking = () -> {
                together.await();
                List<Integer> got = new ArrayList<>();
                for (int turn = 0; turn < 2000; turn++) {
                    got.add(squares.get(turn % 23));
                }
                return got;
            };
            for (Future<List<Integer>> got : threads.invokeAll(Collections.nCopies(4, asking))) {
                for (int turn = 0; turn < 2000; turn++) {
                    assertThat(got.get().get(turn)).isEqualTo((turn % 23) * (turn % 23));
                }
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
