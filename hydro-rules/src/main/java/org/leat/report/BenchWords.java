package org.leat.report;

import org.leat.quantity.QuantityKind;
import org.leat.readings.MotorBench.Cannot;
import org.leat.readings.MotorBench.Constant;
import org.leat.readings.MotorBench.Fault;
import org.leat.readings.MotorBench.Kind;
import org.leat.readings.MotorBench.Ranked;
import org.leat.readings.MotorBench.Read;
import org.leat.readings.MotorBench.Test;
import org.leat.readings.MotorBench.What;

/** What a bench tells, in words. */
final class BenchWords {

    private static final double RPM = Math.PI / 30;
    private static final String LEADS = "ABC";

    private BenchWords() {}

    private static String lead(int lead) {
        return lead < 0 ? "" : LEADS.substring(lead, lead + 1);
    }

    private static String pair(int pair) {
        return pair < 0 ? "" : lead(pair) + lead((pair + 1) % 3);
    }

    /** {@return what may be wrong, without its size} */
    static String name(Ranked ranked) {
        return switch (ranked.fault()) {
            case STAR_FOR_DELTA ->
                ranked.size() > 0
                        ? "connected in delta, and what is stated are the numbers of star"
                        : "connected in star, and what is stated are the numbers of delta";
            case SPEED_TWICE_OR_HALF ->
                ranked.size() > 0 ? "the counter shows twice the speed" : "the counter shows half the speed";
            case PHASE_WEAK, SHORTED_TURNS, PHASE_REVERSED, PHASE_OPEN, JOINT_BAD ->
                name(ranked.fault()) + ", that of lead " + lead(ranked.lead());
            default -> name(ranked.fault());
        };
    }

    /** {@return what may be wrong} */
    static String name(Fault fault) {
        return switch (fault) {
            case NOTHING -> "nothing wrong that these readings show";
            case PEAK_FOR_RMS -> "the meter shows peak, not rms";
            case STAR_POINT_FOR_LEADS -> "volts to the star point taken for volts between leads";
            case METER_LOSES_WITH_FREQUENCY -> "the meter loses volts as the frequency rises";
            case SPEED_TWICE_OR_HALF -> "the counter shows twice the speed, or half";
            case POLE_PAIRS_MISCOUNTED -> "pole pairs miscounted";
            case GEAR_OR_SLIP -> "a gear, a freewheel or slip between counter and rotor";
            case CLAMP_TWICE -> "the lead went through the clamp twice";
            case TEST_LEADS_COUNTED -> "the ohmmeter's own leads were counted";
            case PHASE_WEAK -> "a phase weak";
            case SHORTED_TURNS -> "shorted turns in a phase";
            case PHASE_REVERSED -> "a phase the wrong way round";
            case PHASE_OPEN -> "a phase open";
            case JOINT_BAD -> "a bad joint in a phase";
            case MAGNETS_WEAK -> "magnets weaker than stated";
            case STAR_FOR_DELTA -> "star for delta";
            case BEARING_DRAGS -> "bearing or seal drags";
            case ANOTHER_MOTOR -> "what is stated is of another motor, or was guessed";
        };
    }

    /** {@return how large it is, with its range; "" where it has no size} */
    static String size(Ranked r) {
        return switch (r.fault()) {
            case PHASE_WEAK, METER_LOSES_WITH_FREQUENCY, MAGNETS_WEAK ->
                FaultWords.share(r.size()) + " lost (" + range(r) + ")";
            case SHORTED_TURNS -> FaultWords.share(r.size()) + " of its turns (" + range(r) + ")";
            case JOINT_BAD, BEARING_DRAGS -> FaultWords.share(r.size()) + " on top (" + range(r) + ")";
            case TEST_LEADS_COUNTED -> ohms(r.size()) + " (" + ohms(r.low()) + " to " + ohms(r.high()) + ")";
            case POLE_PAIRS_MISCOUNTED -> "there are " + Math.round(r.size());
            case GEAR_OR_SLIP -> UsualUnits.show(r.size(), QuantityKind.RATIO) + " turns of the rotor for one counted";
            default -> "";
        };
    }

    private static String range(Ranked r) {
        return FaultWords.share(r.low()) + " to " + FaultWords.share(r.high());
    }

    private static String ohms(double value) {
        return UsualUnits.show(value, QuantityKind.RESISTANCE);
    }

    /** {@return what to look at with hands and eyes; "" for nothing} */
    static String look(Fault fault) {
        return switch (fault) {
            case NOTHING -> "";
            case PEAK_FOR_RMS ->
                "Read the same pair with a meter that says true rms: the first shows 1.41 times as much if it shows the peak.";
            case STAR_POINT_FOR_LEADS -> "Both clips on thick power leads, none on the star point or on a hall lead.";
            case METER_LOSES_WITH_FREQUENCY ->
                "Read in the manual up to which frequency the meter is good; read again slowly.";
            case SPEED_TWICE_OR_HALF -> "One mark on the rotor, and count ten slow turns by hand beside the counter.";
            case POLE_PAIRS_MISCOUNTED ->
                "Feed the hall sensors and count the pulses of one in a turn: that many pairs.";
            case GEAR_OR_SLIP -> "Turn by hand: does the rotor turn as often as what was counted, both ways round?";
            case CLAMP_TWICE -> "One lead through the clamp, once.";
            case TEST_LEADS_COUNTED ->
                "Hold the ohmmeter's tips together and take off what it shows, or use four wires.";
            case PHASE_WEAK ->
                "Look for a coil left out, or magnets loose over it; is its resistance that of the others?";
            case SHORTED_TURNS ->
                "Turned by hand, does it brake with nothing connected? Smell, brown varnish: it will burn under load.";
            case PHASE_REVERSED -> "A phase that was opened and closed again: turn its two ends round.";
            case PHASE_OPEN -> "Follow the lead into the housing: connector, crimp, solder.";
            case JOINT_BAD -> "Move lead and connector while the ohmmeter is on: does it jump?";
            case MAGNETS_WEAK ->
                "Was it hot once? A magnet cracked, loose or gone is seen with the cover off; do not run it loose.";
            case STAR_FOR_DELTA ->
                "Open the cover: three ends joined in one point is a star, three joints of two is a delta.";
            case BEARING_DRAGS -> "Turn by hand with the leads apart: does it grate, or grease drag when cold?";
            case ANOTHER_MOTOR -> "Compare the plate with what the design says.";
        };
    }

    /** {@return a reading that would tell} */
    static String test(Test test) {
        return switch (test) {
            case BRIDGE_VOLTS ->
                "direct volts behind a bridge with a small capacitor, nothing connected, at a speed read";
            case COUNT_BY_HAND -> "pole pairs by hand: hall pulses or magnets of one polarity in a turn";
            case FREQUENCY -> "frequency between two leads and speed at once";
            case VOLTS_OF_PAIRS -> "volts of all three pairs at one speed";
            case VOLTS_FAST -> "volts at twice the speed";
            case VOLTS_SLOW -> "volts at a quarter of the speed";
            case RESISTANCE_OF_PAIRS -> "resistance of all three pairs with four wires";
            case SHORTED_SLOW -> "amps of all three shorted leads, turned slowly";
            case SHORTED_FAST -> "amps of all three shorted leads, turned fast; seconds only";
            case COASTING -> "coasting from speed, with a known inertia";
        };
    }

    /** {@return what was read} */
    static String name(Read read) {
        return switch (read.kind()) {
            case VOLTS -> read.pair() < 0 ? "volts between leads" : "volts " + pair(read.pair());
            case VOLTS_OF_PAIR -> "volts " + pair(read.pair()) + " over the mean";
            case BRIDGE_VOLTS -> "volts behind the bridge";
            case FREQUENCY -> "frequency";
            case RESISTANCE ->
                read.pair() < 0
                        ? "resistance between leads"
                        : Math.abs(read.expected()) < 1e-9
                                ? "resistance " + pair(read.pair()) + " over the mean"
                                : "resistance " + pair(read.pair());
            case AMPS -> "amps of lead " + lead(read.pair()) + ", shorted";
            case STATED_VOLTS -> "stated: volts at 1000 rpm";
            case STATED_RESISTANCE -> "stated: resistance between leads";
            case STATED_INDUCTANCE -> "stated: inductance between leads";
            case STATED_POLE_PAIRS -> "stated: pole pairs";
            case DRAG -> "iron and friction over what is stated";
        };
    }

    /** {@return a value of a reading, as people read it} */
    static String show(double value, double like, Kind kind) {
        double times = kind == Kind.STATED_VOLTS ? 1000 * RPM : 1;
        return UsualUnits.alike(value * times, like * times, kind(kind));
    }

    /** {@return what the number of a reading measures} */
    static QuantityKind kind(Kind kind) {
        return switch (kind) {
            case VOLTS, VOLTS_OF_PAIR, BRIDGE_VOLTS, STATED_VOLTS -> QuantityKind.VOLTAGE;
            case FREQUENCY -> QuantityKind.FREQUENCY;
            case RESISTANCE, STATED_RESISTANCE -> QuantityKind.RESISTANCE;
            case AMPS -> QuantityKind.CURRENT;
            case STATED_INDUCTANCE -> QuantityKind.INDUCTANCE;
            case STATED_POLE_PAIRS, DRAG -> QuantityKind.RATIO;
        };
    }

    /** {@return what a constant is} */
    static String name(What what) {
        return switch (what) {
            case VOLTS_PER_SPEED -> "volts between leads at 1000 rpm, rms";
            case POLE_PAIRS -> "pole pairs";
            case RESISTANCE -> "resistance between leads, 20 °C";
            case INDUCTANCE -> "inductance between leads";
            case CONSTANT_TORQUE -> "torque of iron and friction";
            case GROWING_TORQUE -> "and on top of it at 1000 rpm";
            case SPREAD_OF_VOLTAGES -> "spread of the three voltages";
            case SPREAD_OF_RESISTANCES -> "spread of the three resistances";
        };
    }

    /** {@return the value of a constant with twice its uncertainty, as people read it} */
    static String[] value(Constant c) {
        double times = switch (c.what()) {
            case VOLTS_PER_SPEED, GROWING_TORQUE -> 1000 * RPM;
            default -> 1;
        };
        QuantityKind kind = switch (c.what()) {
            case VOLTS_PER_SPEED -> QuantityKind.VOLTAGE;
            case RESISTANCE -> QuantityKind.RESISTANCE;
            case INDUCTANCE -> QuantityKind.INDUCTANCE;
            case CONSTANT_TORQUE, GROWING_TORQUE -> QuantityKind.TORQUE;
            case POLE_PAIRS, SPREAD_OF_VOLTAGES, SPREAD_OF_RESISTANCES -> QuantityKind.RATIO;
        };
        if (c.what() == What.POLE_PAIRS) {
            return new String[] {Long.toString(Math.round(c.value())), ""};
        }
        if (kind == QuantityKind.RATIO) {
            return new String[] {FaultWords.share(c.value()), ""};
        }
        double value = c.value() * times;
        return new String[] {
            UsualUnits.show(value, kind, 4), "± " + UsualUnits.alike(2 * c.standard() * times, value, kind)
        };
    }

    /** {@return what one slip would make of a reading that nothing else explains; "" where none does} */
    static String slip(Read read) {
        double times = read.value() / read.expected();
        String told = times > 400 && times < 2500
                ? "some thousand times what goes with the others: milli?"
                : times > 1 / 2500d && times < 1 / 400d
                        ? "about a thousandth of what goes with the others: milli?"
                        : times > 8 && times < 12.5
                                ? "some ten times what goes with the others: look at the point and the range."
                                : times > 1 / 12.5 && times < 1 / 8d
                                        ? "about a tenth of what goes with the others: look at the point and the range."
                                        : "";
        return told.isEmpty() ? "" : name(read) + " is " + told;
    }

    /** {@return why a reading is left out} */
    static String cannot(Cannot cannot) {
        return switch (cannot.why()) {
            case COASTS_FASTER -> "coasting, nothing turns faster than before";
            case SAME_TIME -> "two speeds at one time";
            case TORQUE_FALLS ->
                "what slows it falls as it turns faster: something else braked, or the watch was late; told as one torque";
            case TORQUE_ABOVE_PROPORTION ->
                "what slows it grows faster than in proportion to speed: does a fan or a wheel coast with it?";
            case NO_INERTIA -> "coasting tells a torque only with the inertia of what coasts";
            case NO_POLE_PAIRS -> "a frequency tells no speed without pole pairs; left out";
            case NO_VOLTS ->
                "a machine that turns makes volts: look at the clips, the meter's range, and whether it is a.c.; left out";
            case NO_SUCH_VOLTS ->
                "no three phases give these volts: this pair has more than the other two together; left out";
            case NO_SUCH_RESISTANCES ->
                "no winding has these resistances: this pair has more than the other two together; left out";
            case NO_SUCH_AMPS ->
                "no three shorted leads carry these amps: this one has more than the other two together; left out";
            case NO_SUCH_POLE_PAIRS ->
                "with this speed it would be a machine of " + Math.round(cannot.value())
                        + " pole pairs: did speed and frequency, or another column, change places? The line is left out";
            case NO_SUCH_VOLTS_AT_SPEED ->
                "no such machine makes these volts at this speed: did speed and volts change places? The line is left out";
            case TEN_TIMES -> "ten times what the others say: look at the point and the range; left out";
            case A_TENTH -> "a tenth of what the others say: look at the point and the range; left out";
            case THOUSAND_TIMES -> "a thousand times what the others say: milli? left out";
            case A_THOUSANDTH -> "a thousandth of what the others say: milli? left out";
            case ALONE -> "it does not go with the others; left out";
        };
    }
}
