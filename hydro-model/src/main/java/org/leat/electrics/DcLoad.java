package org.leat.electrics;

import org.leat.law.Physical;

/** What hangs on the output of a bridge that is stepped in time. Volts, ohms, farads, henries, seconds. */
public sealed interface DcLoad {

    /**
     * A battery behind a resistance.
     *
     * @param voltage EMF, V
     * @param resistance of battery and cables, Ω
     */
    record Battery(double voltage, double resistance) implements DcLoad {
        public Battery {
            Physical.notNegative("battery voltage", voltage);
            Physical.notNegative("battery resistance", resistance);
        }
    }

    /**
     * A resistor alone.
     *
     * @param resistance Ω
     */
    record Resistor(double resistance) implements DcLoad {
        public Resistor {
            Physical.notNegative("load resistance", resistance);
        }
    }

    /**
     * A resistor behind a choke.
     *
     * @param resistance Ω
     * @param inductance H
     */
    record Choke(double resistance, double inductance) implements DcLoad {
        public Choke {
            Physical.notNegative("load resistance", resistance);
            Physical.positive("choke inductance", inductance);
        }
    }

    /**
     * A capacitor with a resistor beside it, and a battery that may be there until it opens.
     *
     * @param capacitance F
     * @param resistance beside it, Ω; infinite for none
     * @param charged voltage at the beginning, V
     * @param battery EMF of the battery, V
     * @param batteryResistance of battery and cables, Ω
     * @param opensAfter when the battery opens, s from the beginning; nil for no battery
     */
    record Capacitor(
            double capacitance,
            double resistance,
            double charged,
            double battery,
            double batteryResistance,
            double opensAfter)
            implements DcLoad {
        public Capacitor {
            Physical.positive("capacitance", capacitance);
            Physical.notNegative("initial voltage", charged);
            if (!(resistance > 0) || (opensAfter > 0 && !(batteryResistance > 0))) {
                throw new IllegalArgumentException("a capacitor needs resistances above zero beside it");
            }
        }

        /** {@return a capacitor with a resistor beside it and no battery} */
        public static Capacitor alone(double capacitance, double resistance, double charged) {
            return new Capacitor(capacitance, resistance, charged, 0, 0, 0);
        }
    }
}
