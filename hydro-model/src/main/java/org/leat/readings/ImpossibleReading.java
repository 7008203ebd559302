package org.leat.readings;

import org.apiguardian.api.API;
import org.leat.readings.Channel.ReadingKind;

/**
 * A reading that cannot be on this plant, whatever is wrong with it.
 *
 * @param reading as it was taken
 * @param why it cannot be
 * @param most that physics allows, SI; zero where the sign is wrong
 * @param slip that would make it what is expected
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record ImpossibleReading(Observation reading, Why why, double most, Slip slip) {

    /** What it passes. */
    public enum Why {
        /** less than nothing. */
        BELOW_NIL,
        /** more pressure than the fall can make. */
        ABOVE_HEAD,
        /** faster than a wheel that has run away. */
        ABOVE_RUNAWAY,
        /** more volts than the runaway speed gives. */
        ABOVE_RUNAWAY_VOLTS,
        /** more power than the jets carry. */
        ABOVE_JET_POWER,
        /** more current than shorted leads carry. */
        ABOVE_SHORT_CIRCUIT,
        /** more than the nozzles pass with nothing lost. */
        ABOVE_FREE_JET,
        /** running water presses no more than standing water was read to. */
        ABOVE_STANDING,
        /** a battery that would give just what it should take: the clamp or the shunt is turned round. */
        TURNED_ROUND,
        /** this and another of its line are each what was expected of the other, and far from what was expected of itself. */
        CHANGED_PLACES,
        /** far off by the slip that another reading of the same kind, which cannot be, was taken with. */
        SAME_SLIP,
        /** a battery that is charged has no volts as low. */
        DEAD_BATTERY,
        /** no such value. */
        NO_SUCH_VALUE
    }

    /** What a reader may have done. */
    public enum Slip {
        /** nothing known. */
        NONE(1),
        /** the sign turned. */
        SIGN(-1),
        /** peak taken for rms. */
        PEAK_FOR_RMS(Math.sqrt(2)),
        /** psi written as bar. */
        PSI_FOR_BAR(1 / 0.0689476),
        /** metres of water written as bar. */
        METRES_FOR_BAR(1 / 0.0980665),
        /** ten times too much: the point misread, or the meter's range. */
        TEN_TIMES(10),
        /** a thousand times too much: milli. */
        THOUSAND_TIMES(1000),
        /** a tenth: the point misread, or the meter's range. */
        A_TENTH(0.1),
        /** a thousandth: milli. */
        A_THOUSANDTH(0.001),
        /** bar written as psi. */
        BAR_FOR_PSI(0.0689476),
        /** bar written as kilopascal. */
        BAR_FOR_KILOPASCAL(0.01),
        /** litres a minute written as litres a second. */
        MINUTE_FOR_SECOND(60),
        /** litres a second written as litres a minute. */
        SECOND_FOR_MINUTE(1 / 60d),
        /** a counter that counted several marks. */
        TWO_MARKS(2),
        /** a clamp round two turns. */
        TWO_TURNS(2);

        private final double factor;

        Slip(double factor) {
            this.factor = factor;
        }

        /** {@return what was read over what it should have been} */
        public double factor() {
            return factor;
        }

        boolean suits(ReadingKind what) {
            return switch (this) {
                case NONE -> false;
                case SIGN, TEN_TIMES, THOUSAND_TIMES, A_TENTH, A_THOUSANDTH -> true;
                case PEAK_FOR_RMS -> what == ReadingKind.LEAD_VOLTS || what == ReadingKind.LEAD_AMPS;
                case PSI_FOR_BAR, METRES_FOR_BAR, BAR_FOR_PSI, BAR_FOR_KILOPASCAL ->
                    what.kind() == ReadingKind.STANDING_PRESSURE.kind();
                case MINUTE_FOR_SECOND, SECOND_FOR_MINUTE ->
                    what == ReadingKind.FLOW || what == ReadingKind.INTAKE_FLOW;
                case TWO_MARKS -> what == ReadingKind.SPEED;
                case TWO_TURNS -> what.kind() == ReadingKind.LEAD_AMPS.kind();
            };
        }
    }
}
