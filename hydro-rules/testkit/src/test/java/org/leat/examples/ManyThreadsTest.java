package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.report.JsonWriter;

/** One checker, several threads, the same bytes. */
class ManyThreadsTest {

    private static final int THREADS = 4;

    /** The same reading is shared too: what is worked out lazily is worked out once, by whoever comes first. */
    private final Map<String, Reading> readings = new TreeMap<>();

    private static String written(Checker checker, Reading reading) {
        StringBuilder json = new StringBuilder();
        try {
            JsonWriter writer = new JsonWriter(checker.rulebook(), json);
            writer.add(checker.check(reading), reading);
            writer.end();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return json.toString();
    }

    @Test
    void a_checker_that_has_checked_variants_of_a_design_says_of_it_what_a_new_one_says() throws IOException {
        String text = Files.readString(Path.of("../../hydro-examples/designs/rowan-ghyll.yaml"));
        List<String> variants = List.of(
                text.replace("gross-head: 32 m", "gross-head: 34 m"),
                text.replace("open: [ 11 mm ]", "open: [ 9 mm ]"),
                text.replace("drop-per-diode: 0.85 V", "drop-per-diode: 0.6 V"),
                text);
        assertThat(variants).doesNotHaveDuplicates();
        Checker used = Checker.of(List.of(new BuiltInPack()));
        for (String variant : variants) {
            Reading reading = DesignReader.read(variant, "variant");
            assertThat(written(used, reading)).isEqualTo(written(Checker.of(List.of(new BuiltInPack())), reading));
        }
    }

    @Test
    void one_checker_asked_by_many_threads_at_once_says_what_it_says_to_one() throws Exception {
        for (String name : List.of("bases/sound", "bases/sound-tracking")) {
            readings.put(name, DesignReader.read(PackExamples.FOLDER.resolve(name + ".yaml")));
        }
        readings.put("ash-gill", DesignReader.read(Path.of("../../hydro-examples/designs/ash-gill.yaml")));
        Checker shared = Checker.of(List.of(new BuiltInPack()));
        CyclicBarrier together = new CyclicBarrier(THREADS);
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Callable<Map<String, String>>> asked = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                List<String> order = new ArrayList<>(readings.keySet());
                Collections.shuffle(order, new Random(thread / 2)); // two by two in the same order
                asked.add(() -> {
                    together.await();
                    Map<String, String> said = new TreeMap<>();
                    order.forEach(name -> said.put(name, written(shared, readings.get(name))));
                    return said;
                });
            }
            Map<String, String> alone = new TreeMap<>();
            Checker own = Checker.of(List.of(new BuiltInPack()));
            readings.forEach((name, reading) -> alone.put(name, written(own, reading)));
            for (Future<Map<String, String>> said : threads.invokeAll(asked)) {
                assertThat(said.get()).isEqualTo(alone);
            }
            assertThat(alone)
                    .hasSize(3)
                    .allSatisfy((name, json) -> assertThat(json).hasSizeGreaterThan(20_000));
        } finally {
            threads.shutdownNow();
        }
    }
}
