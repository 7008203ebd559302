package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.report.JsonWriter;
import org.leat.report.MarkdownWriter;
import org.leat.report.ReportWriter;
import org.leat.report.Tally;

/**
 * Plants that nobody drew: the examples' designs with some of their numbers moved, each by a factor of its own. Whatever the reader
 * takes is checked whole. Two dozen in the gate; {@code -Dleat.random-designs=1000000} for as many as that, or as many as
 * {@code -Dleat.random-minutes} allows, which tells every fault and what took a processor longer than 2 s, whatever
 * else runs on the machine.
 */
class RandomDesignsTest {

    private static final int WANTED = Integer.getInteger("leat.random-designs", 24);
    private static final boolean LONG = WANTED > 24;
    private static final long MINUTES = Long.getLong("leat.random-minutes", 10_000);
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final Pattern NUMBER =
            Pattern.compile("(?<=[ \\[:])(\\d+(?:\\.\\d+)?)(?= ?[%a-zA-Z°µΩ²/]+[ ,}\\]\n])");
    private static final Pattern NO_NUMBER = Pattern.compile("\\b(?:NaN|-?Infinity)\\b|\u221e");

    private static final MathContext FOUR = new MathContext(4);

    private final Rulebook rules = PackExamples.CHECKER.rulebook();

    private Tally tally = new Tally();

    @Test
    void a_random_plant_is_judged_without_a_broken_rule_a_number_that_is_none_or_energy_from_nowhere()
            throws IOException {
        List<String> bases = bases();
        long seed = Long.getLong("leat.random-seed", 20_261L);
        int legal = 0;
        int solved = 0;
        int errors = 0;
        long slowest = 0;
        List<String> slow = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        long ends = System.nanoTime() + MINUTES * 60_000_000_000L;
        for (int tried = 0; legal < WANTED && (!LONG || System.nanoTime() < ends) && wrong.size() < 20; tried++) {
            assertThat(tried).as("most are legal").isLessThan(6 * Math.max(legal, 24));
            Random random = new Random(seed + tried);
            String text = moved(bases.get(random.nextInt(bases.size())), random);
            Reading reading = DesignReader.read(text, "random-" + (seed + tried) + ".yaml");
            if (reading.design() == null) {
                continue;
            }
            legal++;
            long began = THREADS.getCurrentThreadCpuTime(); // told, never judged
            try {
                solved += judged(reading) ? 1 : 0;
            } catch (RuntimeException | AssertionError | StackOverflowError e) {
                String told = "-Dleat.random-seed=" + (seed + tried) + ": " + e + "\n" + text;
                if (!LONG) {
                    throw new AssertionError(told, e);
                }
                System.out.println(told);
                wrong.add("-Dleat.random-seed=" + (seed + tried) + ": " + e);
            }
            long took = (THREADS.getCurrentThreadCpuTime() - began) / 1_000_000;
            slowest = Math.max(slowest, took);
            if (LONG && took > 2000) {
                slow.add((seed + tried) + ": " + took + " ms");
            }
            errors += tally.failsAt(Level.ERROR) ? 1 : 0;
        }
        if (LONG) {
            System.out.println(legal + " legal, " + solved + " solved, " + errors + " with an error; slowest " + slowest
                    + " ms of a processor, above 2 s: " + slow);
        }
        assertThat(wrong).isEmpty();
        assertThat(solved).isGreaterThan(legal / 2);
        assertThat(errors).isBetween(legal / 4, legal);
    }

    private boolean judged(Reading reading) throws IOException {
        Report report = PackExamples.CHECKER.check(reading);
        assertThat(report.findings().stream().filter(Finding::broke).map(String::valueOf))
                .isEmpty();
        assertThat(report.broke()).isFalse();
        StringBuilder json = new StringBuilder();
        written(new JsonWriter(rules, json), report);
        assertThat(NO_NUMBER.matcher(json).find()).as(json.toString()).isFalse();
        StringBuilder markdown = new StringBuilder();
        written(new MarkdownWriter(rules, markdown), report);
        assertThat(NO_NUMBER.matcher(markdown).find()).as(markdown.toString()).isFalse();
        tally = new Tally();
        tally.add(report);
        long failed = report.findings().stream()
                .filter(finding -> finding.outcome().kind() == Kind.FAIL)
                .count();
        assertThat(report.count(Kind.FAIL)).isEqualTo(failed);
        // what the program ends with is told by these
        for (Level level : Level.values()) {
            assertThat(tally.failsAt(level))
                    .as(level.name())
                    .isEqualTo(report.findings().stream()
                            .anyMatch(finding -> finding.outcome().kind() == Kind.FAIL
                                    && finding.outcome().level().compareTo(level) >= 0));
        }
        Plant plant = Plant.of(Objects.requireNonNull(reading.design()));
        plant.solve().running().forEach(running -> kept(running.operatingPoint().energy()));
        return !plant.solve().running().isEmpty();
    }

    private static void written(ReportWriter writer, Report report) throws IOException {
        writer.add(report);
        writer.end();
    }

    private static void kept(EnergyAccount energy) {
        double before = Double.POSITIVE_INFINITY;
        double lost = 0;
        for (EnergyAccount.Entry entry : energy.entries()) {
            assertThat(entry.power()).as(entry.stage().name()).isBetween(0.0, before);
            before = entry.power();
            lost += entry.lost();
        }
        double water = energy.at(Stage.WATER);
        assertThat(Math.abs(lost + energy.at(Stage.STORED) - water)).isLessThanOrEqualTo(1e-6 * water);
    }

    private static List<String> bases() throws IOException {
        RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);
        List<String> texts = new ArrayList<>();
        for (Example example : PackExamples.all()) {
            texts.add(kit.read(example).text());
        }
        return texts;
    }

    /** Some numbers that have a unit, each times a factor of its own: mostly by some per cent, now and then by many times. */
    private static String moved(String text, Random random) {
        double share = 0.6 * random.nextDouble();
        Matcher numbers = NUMBER.matcher(text);
        StringBuilder moved = new StringBuilder();
        while (numbers.find()) {
            double spread = random.nextInt(12) == 0 ? 1.5 : 0.2;
            boolean moves = random.nextDouble() < share;
            double factor = Math.exp(spread * random.nextGaussian());
            double number = Double.parseDouble(numbers.group());
            numbers.appendReplacement(
                    moved, moves ? new BigDecimal(number * factor, FOUR).toPlainString() : numbers.group());
        }
        return numbers.appendTail(moved).toString();
    }
}
