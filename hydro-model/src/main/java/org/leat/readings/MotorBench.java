package org.leat.readings;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;

/**
 * What readings on the bench tell of a motor: its constants with their uncertainty, and what is wrong with it or with the readings,
 * ranked; "nothing" is one of the answers.
 *
 * @param constants of the motor as the likeliest answer has it, those that the readings determine
 * @param read every reading against what a sound motor of these constants lets one read
 * @param ranked what may be wrong, likeliest first, shares that make one together
 * @param unexplained whether not even the likeliest answer fits the readings
 * @param unseen what these readings could not show
 * @param twins what they cannot tell from the first, with the reading that would
 * @param next readings that tell most, best first
 * @param cannot readings that cannot be, or that do not go with the others; left out
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record MotorBench(
        List<Constant> constants,
        List<Read> read,
        List<Ranked> ranked,
        boolean unexplained,
        List<Fault> unseen,
        List<Twin> twins,
        List<Test> next,
        List<Cannot> cannot) {

    public MotorBench {
        constants = List.copyOf(constants);
        read = List.copyOf(read);
        ranked = List.copyOf(ranked);
        unseen = List.copyOf(unseen);
        twins = List.copyOf(twins);
        next = List.copyOf(next);
        cannot = List.copyOf(cannot);
    }

    /**
     * {@return what the readings tell}
     *
     * @param stated what a design says of the motor, or its maker by it; null where nobody says anything
     */
    public static MotorBench of(BenchReadings readings, @Nullable Design stated) {
        return new BenchStudy(readings, stated).result();
    }

    /** {@return the likeliest answer} */
    public Ranked first() {
        return ranked.get(0);
    }

    /**
     * {@return whether anything is left that could show a fault} Where not, the answer that nothing is wrong rests on nothing: readings
     * were left out, or the rotor only coasted and nobody states a torque.
     */
    public boolean judged() {
        return !read.isEmpty();
    }

    /** {@return a constant; null where the readings do not determine it} */
    public @Nullable Constant constant(What what) {
        return constants.stream().filter(c -> c.what() == what).findFirst().orElse(null);
    }

    /** A number of the motor. */
    public enum What {
        /** volts between two leads, rms, over angular speed, V·s. */
        VOLTS_PER_SPEED,
        /** magnets of one polarity. */
        POLE_PAIRS,
        /** between two leads at 20 °C, mean of the three, Ω. */
        RESISTANCE,
        /** between two leads, mean of the three, H. */
        INDUCTANCE,
        /** torque of iron and friction that does not depend on speed, N·m. */
        CONSTANT_TORQUE,
        /** torque of iron and friction over angular speed, the part that grows with it, N·m·s. */
        GROWING_TORQUE,
        /** largest of the three open-circuit voltages less the least, over the largest. */
        SPREAD_OF_VOLTAGES,
        /** largest of the three resistances less the least, over the largest. */
        SPREAD_OF_RESISTANCES
    }

    /**
     * A number of the motor, determined by the readings.
     *
     * @param what it is
     * @param value SI
     * @param standard uncertainty, one sigma, SI; nil of a count
     */
    public record Constant(What what, double value, double standard) {}

    /** Where a fault lies. */
    public enum Lies {
        /** nowhere. */
        NOWHERE,
        /** in how it was read: read again. */
        IN_THE_READING,
        /** in the motor. */
        IN_THE_MOTOR,
        /** in what is stated of the motor. */
        IN_WHAT_IS_STATED
    }

    /** What may be wrong; how common each is, is common practice. */
    public enum Fault {
        /** nothing. */
        NOTHING(Lies.NOWHERE, 6, 0),
        /** the meter shows the peak, and it was taken for rms. */
        PEAK_FOR_RMS(Lies.IN_THE_READING, 1, 0),
        /** volts from a lead to the star point taken for volts between leads. */
        STAR_POINT_FOR_LEADS(Lies.IN_THE_READING, 0.7, 0),
        /** the meter loses volts as the frequency rises; size: share lost at the highest. */
        METER_LOSES_WITH_FREQUENCY(Lies.IN_THE_READING, 0.7, 0.08),
        /** the counter shows twice the speed, or half. */
        SPEED_TWICE_OR_HALF(Lies.IN_THE_READING, 0.5, 0),
        /** the pole pairs are others than counted; size: how many there are. */
        POLE_PAIRS_MISCOUNTED(Lies.IN_WHAT_IS_STATED, 1, 0),
        /** frequency and speed give no whole number: a gear or freewheel inside; size: turns of the rotor for one of the shaft. */
        GEAR_OR_SLIP(Lies.IN_THE_MOTOR, 0.4, 3),
        /** the clamp held the lead twice. */
        CLAMP_TWICE(Lies.IN_THE_READING, 0.4, 0),
        /** the ohmmeter's own leads were counted; size: Ω. */
        TEST_LEADS_COUNTED(Lies.IN_THE_READING, 1.5, 0.1),
        /** one phase gives less; size: share of its volts lost. */
        PHASE_WEAK(Lies.IN_THE_MOTOR, 0.8, 0.08),
        /** turns of one phase shorted; size: share of its turns. */
        SHORTED_TURNS(Lies.IN_THE_MOTOR, 0.8, 0.08),
        /** one phase wired the wrong way round. */
        PHASE_REVERSED(Lies.IN_THE_MOTOR, 0.4, 0),
        /** one phase or lead broken. */
        PHASE_OPEN(Lies.IN_THE_MOTOR, 0.8, 0),
        /** a bad joint in one phase or lead; size: share of the phase's resistance on top. */
        JOINT_BAD(Lies.IN_THE_MOTOR, 0.8, 0.4),
        /** magnets weaker than stated; size: share lost. */
        MAGNETS_WEAK(Lies.IN_THE_MOTOR, 0.8, 0.08),
        /** connected in delta where the numbers stated are of star, or the other way round; size: 1 for delta, −1 for star. */
        STAR_FOR_DELTA(Lies.IN_WHAT_IS_STATED, 0.7, 0),
        /** bearing or seal drags; size: share of what is stated on top. */
        BEARING_DRAGS(Lies.IN_THE_MOTOR, 0.7, 1),
        /** what is stated is of another motor, or was guessed. */
        ANOTHER_MOTOR(Lies.IN_WHAT_IS_STATED, 0.5, 0);

        private final Lies lies;
        private final double weight;
        private final double typical;

        Fault(Lies lies, double weight, double typical) {
            this.lies = lies;
            this.weight = weight;
            this.typical = typical;
        }

        /** {@return where it lies} */
        public Lies lies() {
            return lies;
        }

        double weight() {
            return weight;
        }

        /** Median of its size, nil where it has none. */
        double typical() {
            return typical;
        }
    }

    /**
     * What may be wrong.
     *
     * @param fault what
     * @param lead 0 to 2 for the phase of lead A, B, C; −1 where it is none of one phase
     * @param probability from nil to one
     * @param size as its kind tells it; nil where it has none
     * @param low end of the size's range, 95 %
     * @param high end of the size's range, 95 %
     */
    public record Ranked(Fault fault, int lead, double probability, double size, double low, double high) {}

    /**
     * What the readings cannot tell from the first answer.
     *
     * @param fault what
     * @param by the reading that would; null where none on the bench does
     */
    public record Twin(Fault fault, @Nullable Test by) {}

    /** A reading that can be taken on the bench. */
    public enum Test {
        /** direct volts behind a bridge with a small capacitor, nothing connected, fast. */
        BRIDGE_VOLTS,
        /** pole pairs counted by hand. */
        COUNT_BY_HAND,
        /** frequency and speed at once. */
        FREQUENCY,
        /** volts of all three pairs. */
        VOLTS_OF_PAIRS,
        /** volts at twice the speed. */
        VOLTS_FAST,
        /** volts at a quarter of the speed. */
        VOLTS_SLOW,
        /** resistance of all three pairs, with four wires. */
        RESISTANCE_OF_PAIRS,
        /** amperes of shorted leads, turned slowly. */
        SHORTED_SLOW,
        /** amperes of shorted leads, turned fast. */
        SHORTED_FAST,
        /** coasting, with a known inertia. */
        COASTING
    }

    /** Which kind of reading. */
    public enum Kind {
        /** mean of the volts between leads, V. */
        VOLTS,
        /** a pair's volts less the mean of the pairs, V. */
        VOLTS_OF_PAIR,
        /** direct volts behind a bridge, V. */
        BRIDGE_VOLTS,
        /** frequency, Hz. */
        FREQUENCY,
        /** resistance between two leads, Ω. */
        RESISTANCE,
        /** amperes of a shorted lead, A. */
        AMPS,
        /** what is stated of volts over speed, V·s. */
        STATED_VOLTS,
        /** what is stated of the resistance between leads, Ω at 20 °C. */
        STATED_RESISTANCE,
        /** what is stated of the inductance between leads, H. */
        STATED_INDUCTANCE,
        /** pole pairs as counted or stated. */
        STATED_POLE_PAIRS,
        /** torque of iron and friction over what is stated. */
        DRAG
    }

    /**
     * A reading against what a sound motor with the fitted constants gives.
     *
     * @param kind of reading
     * @param pair 0 to 2 for AB, BC, CA, or for the leads A, B, C; −1 for their mean
     * @param path in the file of readings, or in the design
     * @param value read, SI
     * @param expected SI
     * @param standard uncertainty, one sigma, SI
     */
    public record Read(Kind kind, int pair, String path, double value, double expected, double standard) {

        /** {@return by how many standard uncertainties it is off} */
        public double off() {
            return (value - expected) / standard;
        }
    }

    /** Why a reading cannot be. */
    public enum Why {
        /** coasting, it turns faster than before. */
        COASTS_FASTER,
        /** two speeds at one time. */
        SAME_TIME,
        /** what slows it falls with speed: something else brakes. */
        TORQUE_FALLS,
        /** what slows it grows faster than in proportion to speed: a fan or wheel coasts with it. */
        TORQUE_ABOVE_PROPORTION,
        /** coasting without an inertia tells no torque. */
        NO_INERTIA,
        /** a frequency tells no speed without pole pairs. */
        NO_POLE_PAIRS,
        /** no volts at all from a machine that turns: a lead off, the meter on another range, or turned the other way than counted. */
        NO_VOLTS,
        /** no three phases give these volts: one pair has more than the other two allow. */
        NO_SUCH_VOLTS,
        /** no three phases give these resistances. */
        NO_SUCH_RESISTANCES,
        /** no three shorted leads carry these amperes: one has more than the other two together. */
        NO_SUCH_AMPS,
        /** more pole pairs than any such machine has. */
        NO_SUCH_POLE_PAIRS,
        /** more volts at this speed than any such machine makes. */
        NO_SUCH_VOLTS_AT_SPEED,
        /** ten times what the others say. */
        TEN_TIMES,
        /** a tenth of what the others say. */
        A_TENTH,
        /** a thousand times what the others say: milli. */
        THOUSAND_TIMES,
        /** a thousandth of what the others say: milli. */
        A_THOUSANDTH,
        /** it does not go with the others. */
        ALONE
    }

    /**
     * A reading that is left out.
     *
     * @param path in the file of readings
     * @param why it is
     * @param value that tells it, SI
     */
    public record Cannot(String path, Why why, double value) {}
}
