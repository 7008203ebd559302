package org.leat.report.mending;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.OnHand;
import org.leat.check.Report;
import org.leat.check.WayOut;
import org.leat.design.PlantPart;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
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
}
