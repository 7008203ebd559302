package org.leat.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.leat.design.Alternator;
import org.leat.design.Connection;
import org.leat.design.NoLoadLoss;
import org.leat.design.OpenCircuit;
import org.leat.design.VoltageAs;
import org.leat.design.VoltageBetween;
import org.leat.file.Reading;
import org.leat.quantity.Measured;
import org.leat.quantity.Quantities.RotationalSpeed;
import org.leat.quantity.Quantities.SpeedPerVoltage;
import org.leat.quantity.Si;
import org.leat.readings.MotorBench;
import org.leat.readings.MotorBench.Constant;
import org.leat.readings.MotorBench.Fault;
import org.leat.readings.MotorBench.What;

/** What a bench tells of the fields of a design, and which of them it must not touch. */
final class BenchFound {

    private static final String OPEN = "/alternator/open-circuit";
    private static final String WINDING = "/alternator/winding";
    private static final double RPM = Math.PI / 30;
    private static final MathContext DIGITS = new MathContext(4);

    private final Reading design;
    private final Alternator alternator;
    private final MotorBench motor;
    private final List<Learned.Found> found = new ArrayList<>();
    private final List<Learned.Stays> stays = new ArrayList<>();

    BenchFound(Reading design, Alternator alternator, MotorBench motor) {
        this.design = design;
        this.alternator = alternator;
        this.motor = motor;
        String refused = refused();
        if (refused.isEmpty()) {
            volts();
            winding();
            count();
            loss();
        } else {
            stays("/alternator", refused);
        }
    }

    List<Learned.Found> found() {
        return found;
    }

    List<Learned.Stays> stays() {
        return stays;
    }

    private String refused() {
        if (motor.unexplained()) {
            return "no single fault explains the readings: read again first";
        }
        return switch (motor.first().fault()) {
            case NOTHING, POLE_PAIRS_MISCOUNTED, MAGNETS_WEAK, STAR_FOR_DELTA, BEARING_DRAGS, ANOTHER_MOTOR -> "";
            case PEAK_FOR_RMS,
                    STAR_POINT_FOR_LEADS,
                    METER_LOSES_WITH_FREQUENCY,
                    SPEED_TWICE_OR_HALF,
                    CLAMP_TWICE,
                    TEST_LEADS_COUNTED -> BenchWords.name(motor.first()) + ": read again first";
            case GEAR_OR_SLIP, PHASE_WEAK, SHORTED_TURNS, PHASE_REVERSED, PHASE_OPEN, JOINT_BAD ->
                BenchWords.name(motor.first()) + ": mend the motor first";
        };
    }

    private void stays(String path, String why) {
        stays.add(new Learned.Stays(path, design.positions().of(path), why));
    }

    private void put(String path, Object value, String from) {
        found.add(new Learned.Found(path, value, from));
    }

    /** Puts a measured value in place of what is stated, unless that is known better. */
    private void put(String path, Measured<?> stated, Measured<?> now, String from) {
        if (Learned.knownBetter(stated, now.plusMinusSi())) {
            stays(path, "it is stated with a smaller tolerance than this was measured with");
        } else {
            put(path, now, from);
        }
    }

    private static double round(double value) {
        return new BigDecimal(value).round(DIGITS).doubleValue();
    }

    private void volts() {
        Constant perSpeed = motor.constant(What.VOLTS_PER_SPEED);
        if (perSpeed == null) {
            return;
        }
        double share = 2 * perSpeed.standard() / perSpeed.value();
        if (alternator.openCircuit() instanceof OpenCircuit.VoltsAtSpeed read) {
            if (read.between() == VoltageBetween.BRIDGE_OUTPUT || read.as() == VoltageAs.DIRECT) {
                stays(OPEN + "/voltage", "it is stated behind a bridge: write it between the leads first");
                return;
            }
            double form = (read.as() == VoltageAs.PEAK ? Math.sqrt(2) : 1)
                    / (read.between() == VoltageBetween.LEAD_AND_STAR_POINT ? Math.sqrt(3) : 1);
            double volts = perSpeed.value() * Si.of(read.speed()) * form;
            put(
                    OPEN + "/voltage",
                    read.voltage(),
                    Learned.measured(volts, share * volts, "V", ElectricPotential.class),
                    "open leads on the bench");
        } else if (alternator.openCircuit() instanceof OpenCircuit.SpeedPerVolt marked) {
            double leads = marked.between() == VoltageBetween.LEAD_AND_STAR_POINT ? Math.sqrt(3) : 1;
            double peak = marked.as() == VoltageAs.RMS ? 1 : 1 / Math.sqrt(2);
            double rpmPerVolt = peak * leads / (perSpeed.value() * RPM);
            put(
                    OPEN + "/speed-per-volt",
                    Si.quantity(round(rpmPerVolt), "rpm/V", SpeedPerVoltage.class),
                    "open leads on the bench");
            if (marked.as() == null) {
                put(OPEN + "/as", VoltageAs.PEAK, "open leads on the bench");
            }
        }
    }

    private void winding() {
        Constant resistance = motor.constant(What.RESISTANCE);
        if (resistance != null) {
            Measured<ElectricResistance> now =
                    Learned.measured(resistance.value(), 2 * resistance.standard(), "Ω", ElectricResistance.class);
            Measured<ElectricResistance> stated = alternator.winding().resistanceBetweenLeads();
            if (Learned.knownBetter(stated, now.plusMinusSi())) {
                stays(
                        WINDING + "/resistance-between-leads",
                        "it is stated with a smaller tolerance than this was measured with");
            } else {
                put(WINDING + "/resistance-between-leads", now, "ohms between leads on the bench");
                Quantity<Temperature> twenty = Si.quantity(20, "°C", Temperature.class);
                Quantity<Temperature> before = alternator.winding().resistanceTemperature();
                if (before == null || Si.of(before) != Si.of(twenty)) {
                    put(WINDING + "/resistance-temperature", twenty, "ohms between leads on the bench");
                }
            }
        }
        Constant inductance = motor.constant(What.INDUCTANCE);
        if (inductance != null) {
            Measured<ElectricInductance> now = Learned.measured(
                    1e3 * inductance.value(), 2e3 * inductance.standard(), "mH", ElectricInductance.class);
            Measured<ElectricInductance> stated = alternator.winding().inductanceBetweenLeads();
            String path = WINDING + "/inductance-between-leads";
            if (stated == null) {
                put(path, now, "shorted leads on the bench");
            } else {
                put(path, stated, now, "shorted leads on the bench");
            }
        }
        Connection connected = alternator.winding().connection();
        Connection seen = motor.first().size() > 0 ? Connection.DELTA : Connection.STAR;
        if (motor.first().fault() == Fault.STAR_FOR_DELTA && connected != null && connected != seen) {
            put(WINDING + "/connection", seen, "volts and resistance on the bench");
        }
        share(What.SPREAD_OF_VOLTAGES, "spread-of-voltages", "three pairs on the bench");
        share(What.SPREAD_OF_RESISTANCES, "spread-of-resistances", "three pairs on the bench");
    }

    private void share(What what, String field, String from) {
        Constant spread = motor.constant(what);
        if (spread != null) {
            double percent = new BigDecimal(100 * spread.value())
                    .setScale(1, java.math.RoundingMode.HALF_UP)
                    .doubleValue();
            put(WINDING + "/" + field, Si.quantity(percent, "%", Dimensionless.class), from);
        }
    }

    private void count() {
        Constant pairs = motor.constant(What.POLE_PAIRS);
        Integer stated = alternator.polePairs();
        if (pairs != null && (stated == null || stated != (int) pairs.value())) {
            put("/alternator/pole-pairs", (int) pairs.value(), "frequency and speed on the bench");
        }
    }

    /** The line of torque over speed as two powers, at two speeds that were coasted through. */
    private void loss() {
        Constant constant = motor.constant(What.CONSTANT_TORQUE);
        Constant growing = motor.constant(What.GROWING_TORQUE);
        if (constant == null || growing == null) {
            return;
        }
        String from = "coasting on the bench";
        String path = "/alternator/no-load-loss";
        double slow = 100 * RPM;
        double fast = 500 * RPM;
        NoLoadLoss stated = alternator.noLoadLoss();
        Quantity<RotationalSpeed> at = Si.quantity(500, "rpm", RotationalSpeed.class);
        Quantity<RotationalSpeed> second = Si.quantity(100, "rpm", RotationalSpeed.class);
        Quantity<Power> power = power(constant, growing, fast);
        Quantity<Power> atSecond = power(constant, growing, slow);
        if (stated == null) {
            put(path, new NoLoadLoss(power, at, atSecond, second), from);
            return;
        }
        put(path + "/power", power, from);
        put(path + "/speed", at, from);
        put(path + "/power-at-second-speed", atSecond, from);
        put(path + "/second-speed", second, from);
    }

    private static Quantity<Power> power(Constant constant, Constant growing, double speed) {
        return Si.quantity(round((constant.value() + growing.value() * speed) * speed), "W", Power.class);
    }

    static @Nullable Alternator alternator(Reading design) {
        return design.design() == null ? null : design.design().alternator();
    }
}
