package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Laws of the motor on the bench, against textbooks and the circuit simulator. */
class BenchLawsTest {

    private static final double RPM = Math.PI / 30;

    @TempDir
    Path folder;

    @Test
    void phases_that_are_alike_give_root_three_and_one_the_wrong_way_round_gives_its_own_volts() {
        assertThat(UnequalPhases.between(10, 10)).isCloseTo(10 * Math.sqrt(3), within(1e-12));
        assertThat(UnequalPhases.between(10, -10)).isCloseTo(10, within(1e-12));
        assertThat(UnequalPhases.between(10, 0)).isEqualTo(10);
    }

    /** Kennelly: branches of 10, 20 and 30 Ω in delta behave as a star of 20·10/60, 10·30/60 and 30·20/60 Ω. */
    @Test
    void a_delta_seen_from_its_leads_is_the_star_of_kennelly() {
        double ab = 10 * (20 + 30) / 60.0;
        double bc = 20 * (30 + 10) / 60.0;
        double ca = 30 * (10 + 20) / 60.0;
        assertThat(UnequalPhases.phaseResistance(ab, ca, bc)).isCloseTo(10 * 30 / 60.0, within(1e-12));
        assertThat(UnequalPhases.phaseResistance(ab, bc, ca)).isCloseTo(10 * 20 / 60.0, within(1e-12));
        assertThat(UnequalPhases.phaseResistance(bc, ca, ab)).isCloseTo(20 * 30 / 60.0, within(1e-12));
        assertThatThrownBy(() -> UnequalPhases.phaseResistance(1, 1, 2.5)).isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * A synchronous machine of 45 kVA: 202 V between leads on the air-gap line where 118 A flow shorted, 0.0335 Ω a phase; the book
     * gives a reactance of 0.987 Ω. Fitzgerald, Kingsley and Umans, Electric Machinery, synchronous machines, examples on open and
     * short circuit (from memory).
     */
    @Test
    void open_and_short_circuit_of_a_textbook_machine_give_its_reactance() {
        double peak = 202 * Math.sqrt(2) / Math.sqrt(3);
        assertThat(ShortCircuitTorque.inductance(peak, 118, 0.0335, 1)).isCloseTo(0.987, within(0.001));
        double[] back = ShortedLeads.currents(
                new double[] {202 / Math.sqrt(3), 202 / Math.sqrt(3), 202 / Math.sqrt(3)},
                new double[] {0.0335, 0.0335, 0.0335},
                0.9878);
        assertThat(back).containsExactly(new double[] {118, 118, 118}, within(0.1));
    }

    /** Two motor tests of the tables of reference: pole pairs 20, 0.08 V/rpm, 1 mH, 0.5 Ω at 238.7 rpm → 15.5929 A. */
    @Test
    void leads_of_phases_that_are_alike_carry_what_the_short_circuit_law_says() {
        AlternatorConstants m = AlternatorConstants.fromLeads(20, EmfConstant.fromLineRms(0.08, RPM), 1, 2e-3);
        double speed = 238.7 * RPM;
        double each = m.phaseEmf(speed) / Math.sqrt(2);
        double[] amps = ShortedLeads.currents(
                new double[] {each, each, each}, new double[] {0.5, 0.5, 0.5}, m.reactance(speed));
        assertThat(amps[1]).isCloseTo(15.5929, within(0.001 * 15.6));
        assertThat(amps[1]).isCloseTo(ShortCircuitTorque.current(m, speed), within(1e-9));
    }

    @Test
    void a_lead_that_is_broken_carries_nothing_and_the_others_the_same() {
        double[] amps = ShortedLeads.currents(new double[] {10, 10, 10}, new double[] {1e9, 1, 1}, 1);
        assertThat(amps[0]).isLessThan(1e-6);
        assertThat(amps[1]).isCloseTo(10 * Math.sqrt(3) / Math.sqrt(8), within(1e-6));
        assertThat(amps[2]).isCloseTo(amps[1], within(1e-6));
    }

    /** The worked example of the bench test: 500, 250 and 125 rpm after 6.0 s and 3.6 s more, 0.04 kg·m². */
    @Test
    void coasting_by_the_curve_passes_the_three_speeds_that_its_loss_was_read_from() {
        IronLoss loss = Coasting.fromTwoTimes(0.04, 500 * RPM, 250 * RPM, 125 * RPM, 6, 3.6);
        assertThat(loss.constantTorque()).isCloseTo(0.1161, within(5e-5));
        assertThat(CoastingCurve.speed(loss, 0.04, 500 * RPM, 6)).isCloseTo(250 * RPM, within(1e-6));
        assertThat(CoastingCurve.speed(loss, 0.04, 500 * RPM, 9.6)).isCloseTo(125 * RPM, within(1e-6));
        assertThat(CoastingCurve.speed(loss, 0.04, 500 * RPM, 1000)).isZero();
        assertThat(CoastingCurve.speed(new IronLoss(0.2, 0), 0.04, 50, 4)).isCloseTo(30, within(1e-12));
    }

    private static final Pattern MEASURE = Pattern.compile("^(i[abc]2)\\s*=\\s*([-+0-9.eE]+)", Pattern.MULTILINE);

    /** Phases of 100, 80 and −60 %, resistances as unlike, all leads joined, star point free: the simulator's waveforms settled. */
    @Test
    void the_circuit_simulator_gives_the_same_amps_of_unlike_phases() throws IOException, InterruptedException {
        assumeTrue(CircuitSimulator.installed(), "ngspice is not on the path: shorted leads were NOT simulated");
        double[] emf = {20, 16, -12};
        double[] ohms = {0.2, 0.35, 0.25};
        double henry = 1.1e-3;
        double f = 75;
        StringBuilder net = new StringBuilder("* shorted leads of unlike phases\n");
        for (int x = 0; x < 3; x++) {
            char c = "abc".charAt(x);
            net.append(String.format(
                    Locale.ROOT,
                    "V%c n%c1 nn SIN(0 %.8g %g 0 0 %d)%nR%c n%c1 n%c2 %g%nL%c n%c2 j %g%n",
                    c,
                    c,
                    emf[x] * Math.sqrt(2),
                    f,
                    -120 * x,
                    c,
                    c,
                    c,
                    ohms[x],
                    c,
                    c,
                    henry));
        }
        net.append("Rj j 0 1\n.options reltol=1e-5 method=gear maxord=2\n.tran 10u 0.4 0.2 10u\n.control\nrun\n");
        for (char c : "abc".toCharArray()) {
            net.append("let q")
                    .append(c)
                    .append(" = i(V")
                    .append(c)
                    .append(")*i(V")
                    .append(c)
                    .append(")\n");
            net.append("meas tran i").append(c).append("2 AVG q").append(c).append('\n');
        }
        net.append("quit\n.endc\n.end\n");
        Path file = Files.writeString(folder.resolve("shorted.cir"), net, StandardCharsets.UTF_8);
        Path log = folder.resolve("shorted.log");
        Process process = new ProcessBuilder("ngspice", "-b", file.toString())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        String said = Files.readString(log, StandardCharsets.ISO_8859_1);
        double[] ours = ShortedLeads.currents(emf, ohms, 2 * Math.PI * f * henry);
        Matcher m = MEASURE.matcher(said);
        for (int x = 0; x < 3; x++) {
            assertThat(m.find()).as(said).isTrue();
            assertThat(Math.sqrt(Double.parseDouble(m.group(2)))).isCloseTo(ours[x], within(0.003 * ours[x]));
        }
    }
}
