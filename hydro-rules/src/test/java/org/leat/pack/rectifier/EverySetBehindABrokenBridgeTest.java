package org.leat.pack.rectifier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;
import org.leat.plant.cases.BrokenBridge;

/** Each number of a broken bridge is that of the set on which it is worst, and says so, wherever in the drawer that set lies. */
class EverySetBehindABrokenBridgeTest {

    private static final Path SOUND = Path.of("../hydro-examples/designs/rowan-ghyll.yaml");
    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));
    private static final String LEAD_FUSE = "  - { name: lead fuse, kind: fuse, from: alternator, to: rectifier,"
            + " rated-current: 16 A, direct-voltage: 160 V, full-range: true }\n";

    private static Design design(String from, String to) throws IOException {
        String text = Files.readString(SOUND);
        assertThat(text).contains(from);
        return Objects.requireNonNull(
                DesignReader.read(text.replace(from, to), "plant.yaml").design());
    }

    private static BrokenBridge worst(List<BrokenBridge> all, ToDoubleFunction<BrokenBridge> of) {
        return all.stream().max(Comparator.comparingDouble(of)).orElseThrow();
    }

    private static Outcome at(Design design, String rule, String path) {
        return CHECKER.outcomes(design).stream()
                .filter(o -> o.rule().equals(rule) && o.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static void is(Outcome outcome, Kind kind, double value, BrokenBridge of) {
        assertThat(outcome.kind()).isEqualTo(kind);
        assertThat(Objects.requireNonNull(outcome.comparison()).value()).isCloseTo(value, within(1e-9));
        assertThat(outcome.during()).endsWith("/" + of.nozzles().name());
    }

    @Test
    void without_a_fuse_winding_and_bridge_are_judged_on_the_set_that_loads_them_most() throws IOException {
        Design bare = design(LEAD_FUSE, "");
        List<BrokenBridge> all = Plant.of(bare).solve().diodeShorted();
        assertThat(all).hasSize(3);
        BrokenBridge most = worst(all, BrokenBridge::phaseCurrent);
        assertThat(most).isNotEqualTo(all.get(0));
        is(at(bare, "rectifier/diode-short", "/alternator/current-limit"), Kind.FAIL, most.phaseCurrent(), most);
        BrokenBridge diode = worst(all, BrokenBridge::diodeCurrent);
        is(at(bare, "rectifier/diode-short", "/rectifier/average-current"), Kind.FAIL, 3 * diode.diodeCurrent(), diode);
        assertThat(at(bare, "rectifier/diode-short", "/alternator/insulation-class")
                        .during())
                .endsWith("/" + most.nozzles().name());
    }

    @Test
    void a_fuse_is_held_against_the_set_that_blows_it_least() throws IOException {
        Design sound = design(LEAD_FUSE, LEAD_FUSE);
        BrokenBridge least = worst(Plant.of(sound).solve().diodeShorted(), broken -> -broken.phaseCurrent());
        is(
                at(sound, "rectifier/diode-short", "/protection[lead fuse]/rated-current"),
                Kind.PASS,
                least.phaseCurrent(),
                least);
    }

    /** A fuse of 20 A surely opens from 32 A on (IEC 60269-1: 1.6 times, from memory), which the smallest set does not bring. */
    @Test
    void a_fuse_that_opens_at_full_flow_leaves_winding_and_bridge_to_be_judged_at_what_just_does_not_open_it()
            throws IOException {
        Design large = design("rated-current: 16 A", "rated-current: 20 A");
        List<BrokenBridge> all = Plant.of(large).solve().diodeShorted();
        assertThat(worst(all, broken -> -broken.phaseCurrent()).phaseCurrent()).isLessThan(32);
        Outcome winding = at(large, "rectifier/diode-short", "/alternator/current-limit");
        assertThat(winding.kind()).isEqualTo(Kind.FAIL);
        assertThat(Objects.requireNonNull(winding.comparison()).value()).isCloseTo(32, within(1e-9));
        BrokenBridge most =
                worst(all, broken -> broken.phaseCurrent() < 32 ? 0 : broken.diodeCurrent() / broken.phaseCurrent());
        Outcome bridge = at(large, "rectifier/diode-short", "/rectifier/average-current");
        is(bridge, Kind.FAIL, 3 * 32 * most.diodeCurrent() / most.phaseCurrent(), most);
    }

    /** Where a fuse is held to open, a smaller jet on the same plant brings just as much as does not open it: no more than is judged. */
    @Test
    void no_smaller_jet_brings_more_than_is_judged_of_a_partly_blocked_nozzle() throws IOException {
        Design many = design(
                "available: [ 9 mm, 11 mm, 11.5 mm ]",
                "available: [ 5 mm, 6 mm, 7 mm, 8 mm, 8.5 mm, 9 mm, 10 mm, 11.5 mm ]");
        Outcome winding = at(many, "rectifier/diode-short", "/alternator/current-limit");
        Outcome bridge = at(many, "rectifier/diode-short", "/rectifier/average-current");
        double opens = 1.6 * 16;
        List<BrokenBridge> whole = Plant.of(many).solve().diodeShorted().stream()
                .filter(broken -> broken.phaseCurrent() < opens)
                .toList();
        assertThat(whole).hasSize(5);
        for (BrokenBridge broken : whole) {
            assertThat(broken.phaseCurrent())
                    .isLessThan(Objects.requireNonNull(winding.comparison()).value());
            assertThat(3 * broken.diodeCurrent())
                    .isLessThan(Objects.requireNonNull(bridge.comparison()).value());
        }
    }

    @Test
    void an_open_phase_is_judged_on_the_set_that_drives_most_through_the_others() throws IOException {
        Design sound = design(LEAD_FUSE, LEAD_FUSE);
        List<BrokenBridge> all = Plant.of(sound).solve().broken();
        BrokenBridge most = worst(all, BrokenBridge::phaseCurrent);
        assertThat(most.nozzles()).isNotEqualTo(all.get(0).nozzles());
        is(at(sound, "alternator/phase-open", "/alternator/current-limit"), Kind.PASS, most.phaseCurrent(), most);
    }
}
