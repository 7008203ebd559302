package org.leat.report.mending;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import org.junit.jupiter.api.Test;
import org.leat.check.Change;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.OnHand;
import org.leat.check.Report;
import org.leat.check.Rule;
import org.leat.check.RuleBuilder;
import org.leat.check.RulePack;
import org.leat.check.WayOut;
import org.leat.design.ChargeRegulator;
import org.leat.design.PlantPart;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.report.FileChange;
import org.leat.report.TextWriter;
import org.leat.report.TextWriter.Colours;

/** What a thing on hand is, and what is bought already, are facts: no program writes them otherwise. */
class MendingFactsTest {

    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));

    private static String demo(String name) throws IOException {
        return Files.readString(Path.of("..", "hydro-examples", "designs", name + ".yaml"));
    }

    private static Reading read(String text) {
        return DesignReader.read(text, "f.yaml");
    }

    private static Mended mend(String text, String... rules) {
        return Mending.of(CHECKER, text, MendingFactsTest::read, Level.NOTE, Set.of(rules));
    }

    private static List<Mended.Left> left(Mended mended, String rule) {
        return mended.left().stream()
                .filter(l -> l.finding().outcome().rule().equals(rule))
                .toList();
    }

    @Test
    void a_rating_is_advice_and_stays_in_the_file_as_it_is() throws IOException {
        Mended mended = mend(demo("tannery-yard"), "rectifier/reverse-voltage");
        assertThat(mended.steps()).isEmpty();
        assertThat(mended.text()).isEqualTo(demo("tannery-yard"));
        assertThat(left(mended, "rectifier/reverse-voltage"))
                .isNotEmpty()
                .allMatch(l ->
                        l.why() == Mended.Why.FACT && !l.finding().waysOut().isEmpty());
        StringBuilder out = new StringBuilder();
        new MendedText(CHECKER.rulebook(), out).add("f.yaml", mended);
        assertThat(out.toString()).contains("advice: Diodes of 600 V.");
    }

    @Test
    void no_change_of_any_demo_writes_what_a_thing_is_marked_or_measured_to_be() throws IOException {
        List<String> facts = new ArrayList<>();
        try (var files = Files.list(Path.of("..", "hydro-examples", "designs"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                Reading reading = DesignReader.read(file);
                for (Finding finding : CHECKER.check(reading).findings()) {
                    for (WayOut way : finding.waysOut()) {
                        boolean fact = way.edits().stream().anyMatch(e -> OnHand.isFact(e.path(), reading.design()));
                        if (fact) {
                            facts.add(way.edits().toString());
                            assertThat(FileChange.of(way, reading)).isEmpty();
                        }
                    }
                }
            }
        }
        assertThat(facts).isNotEmpty();
    }

    @Test
    void what_is_measured_or_marked_is_a_fact_and_what_is_chosen_is_none() throws IOException {
        var design = read(demo("rowan-ghyll")).design();
        assertThat(List.of(
                        "/alternator/open-circuit/voltage",
                        "/alternator/winding/resistance-between-leads",
                        "/regulator/input-voltage-limit",
                        "/penstock/sections[run]/pipe/pressure-rating",
                        "/rectifier/repetitive-peak-reverse-voltage",
                        "/protection[battery fuse]/direct-voltage",
                        "/inverter/input-voltage/from"))
                .allMatch(path -> OnHand.isFact(path, design));
        assertThat(List.of(
                        "/nozzles/open",
                        "/penstock/sections[run]/pipe/sdr",
                        "/cables[0]/conductor/area",
                        "/regulator/absorption-voltage",
                        "/nowhere/at-all"))
                .noneMatch(path -> OnHand.isFact(path, design));
    }

    @Test
    void what_is_on_hand_stays_and_another_one_is_advice() throws IOException {
        String text = demo("tannery-yard");
        String bought = "on-hand: [penstock]\n" + text;
        assertThat(read(bought).problems()).isEmpty();
        assertThat(mend(text, "penstock/static-pressure").steps()).isNotEmpty();
        Mended mended = mend(bought, "penstock/static-pressure");
        assertThat(mended.steps()).isEmpty();
        assertThat(left(mended, "penstock/static-pressure")).isNotEmpty().allMatch(l -> l.why() == Mended.Why.ON_HAND);
        Finding finding = left(mended, "penstock/static-pressure").get(0).finding();
        assertThat(finding.waysOut()).isNotEmpty().allMatch(way -> way.onHand().equals(List.of(PlantPart.PENSTOCK)));
        StringBuilder out = new StringBuilder();
        TextWriter writer = new TextWriter(CHECKER.rulebook(), out, Colours.NONE);
        writer.add(mended.before());
        assertThat(out.toString()).contains("On hand already: penstock.");
    }

    @Test
    void after_all_changes_nothing_that_can_hurt_is_worse_than_before_them() throws IOException {
        for (String demo : List.of("tannery-yard", "orchard-sluice", "first-try", "ash-gill")) {
            Mended mended = mend(demo(demo));
            Report before = CHECKER.check(read(demo(demo)));
            assertThat(org.leat.check.Dangers.worse(before, mended.after())).isEmpty();
            assertThat(mended.after().findings().stream()
                            .filter(f -> f.endangers() && f.outcome().kind() == Kind.FAIL)
                            .count())
                    .isLessThanOrEqualTo(before.findings().stream()
                            .filter(f -> f.endangers() && f.outcome().kind() == Kind.FAIL)
                            .count());
        }
    }

    /** Wants a voltage of the regulator half a volt lower; a danger grows with each that is. */
    private record Creeping(double each) implements RulePack {

        private static final Map<String, Double> WANTED =
                Map.of("absorption-voltage", 27.5, "float-voltage", 26.5, "cut-off-voltage", 23.5);

        @Override
        public String name() {
            return "creeping";
        }

        private static double voltage(Judgement j, String field) {
            ChargeRegulator regulator = Objects.requireNonNull(j.design().regulator());
            return Si.of(
                    switch (field) {
                        case "absorption-voltage" -> regulator.absorptionVoltage();
                        case "float-voltage" -> regulator.floatVoltage();
                        default -> regulator.cutOffVoltage();
                    },
                    0);
        }

        private static RuleBuilder begun(String id, Level level) {
            return Rule.of("creeping/" + id, level, id)
                    .why("made")
                    .formula("made")
                    .judged("made")
                    .source("made")
                    .passes("holds", "It holds.")
                    .fails("does-not", "It is {value}, {limit}.");
        }

        private static Rule wants(String field, double wanted) {
            String path = "/regulator/" + field;
            return begun(field, Level.WARNING)
                    .judge(j -> j.at(path).atMost(voltage(j, field), wanted, QuantityKind.VOLTAGE))
                    .wayOut(
                            "lower",
                            "Lower.",
                            (j, f) -> Stream.of(Change.of(path, Si.quantity(wanted, "V", ElectricPotential.class))))
                    .build();
        }

        @Override
        public List<Rule> rules() {
            List<Rule> rules = new ArrayList<>();
            new TreeMap<>(WANTED).forEach((field, wanted) -> rules.add(wants(field, wanted)));
            rules.add(begun("danger", Level.ERROR)
                    .judge(j -> {
                        long lowered = WANTED.entrySet().stream()
                                .filter(w -> voltage(j, w.getKey()) <= w.getValue())
                                .count();
                        return j.at("/regulator").atMost(1.2 + each * lowered, 1, QuantityKind.RATIO);
                    })
                    .build());
            return rules;
        }
    }

    private static Mended creeping(double each) throws IOException {
        Checker checker = Checker.of(List.of(new Creeping(each)));
        return Mending.of(checker, demo("rowan-ghyll"), MendingFactsTest::read, Level.WARNING, Set.of());
    }

    @Test
    void where_no_change_alone_but_all_together_make_a_danger_worse_none_is_written() throws IOException {
        assertThat(creeping(0.002).steps()).as("0.6 % of the limit together").hasSize(3);
        Mended mended = creeping(0.006);
        assertThat(mended.steps()).isEmpty();
        assertThat(mended.text()).isEqualTo(demo("rowan-ghyll"));
        assertThat(mended.left())
                .filteredOn(l -> l.finding().outcome().level() == Level.WARNING)
                .hasSize(3)
                .allMatch(l -> l.why() == Mended.Why.WORSE_TOGETHER);
        assertThat(creeping(0.02).left())
                .filteredOn(l -> l.finding().outcome().level() == Level.WARNING)
                .as("each by itself is too much")
                .hasSize(3)
                .noneMatch(l -> l.why() == Mended.Why.WORSE_TOGETHER);
    }
}
