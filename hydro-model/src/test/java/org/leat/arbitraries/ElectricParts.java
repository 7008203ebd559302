package org.leat.arbitraries;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.leat.arbitraries.Designs.Scale;
import org.leat.design.Alternator;
import org.leat.design.BatteryBank;
import org.leat.design.Cable;
import org.leat.design.ChargeRegulator;
import org.leat.design.Chemistry;
import org.leat.design.Conductor;
import org.leat.design.ConductorMaterial;
import org.leat.design.Connection;
import org.leat.design.DeviceKind;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.design.InsulationClass;
import org.leat.design.LiveParts;
import org.leat.design.MagnetGrade;
import org.leat.design.NoLoadLoss;
import org.leat.design.OpenCircuit;
import org.leat.design.Place;
import org.leat.design.ProtectiveDevice;
import org.leat.design.Rectifier;
import org.leat.design.RegulatorKind;
import org.leat.design.Safeguards;
import org.leat.design.Safeguards.GuardKind;
import org.leat.design.Safeguards.SecondGuard;
import org.leat.design.SpinDown;
import org.leat.design.StopWater;
import org.leat.design.Stranding;
import org.leat.design.TripCurve;
import org.leat.design.VoltageAs;
import org.leat.design.VoltageBetween;
import org.leat.design.VoltageRange;
import org.leat.design.Winding;
import org.leat.quantity.Quantities.MomentOfInertia;
import org.leat.quantity.Quantities.RotationalSpeed;
import org.leat.quantity.Quantities.SharePerTemperature;
import org.leat.quantity.Quantities.SpeedPerVoltage;
import org.leat.quantity.Quantities.ThermalResistance;
import org.leat.quantity.Si;

/** The electrical side of random plants. */
final class ElectricParts {

    private ElectricParts() {}

    static double cellVolts(Chemistry chemistry) {
        return switch (chemistry) {
            case FLOODED_LEAD_ACID, AGM_LEAD_ACID, GEL_LEAD_ACID -> 2.1;
            case LITHIUM_IRON_PHOSPHATE -> 3.3;
            case LITHIUM_ION -> 3.7;
        };
    }

    static BatteryBank battery(Draw d) {
        Chemistry chemistry = d.of(Chemistry.class);
        double nominal = d.of(12.0, 24.0, 48.0);
        return new BatteryBank(
                chemistry,
                (int) Math.round(nominal * 1.07 / cellVolts(chemistry)),
                d.quantity(20, 1000, "Ah", ElectricCharge.class),
                d.maybe(() -> d.whole(1, 3)),
                d.maybe(d::yes),
                d.maybe(() -> d.quantity(1, 60, "mohm", ElectricResistance.class)),
                d.maybe(() -> d.quantity(5, 200, "A", ElectricCurrent.class)),
                null,
                d.maybe(() -> d.quantity(0, 100, "%", Dimensionless.class)),
                null,
                d.maybe(() -> d.quantity(-15, 15, "°C", Temperature.class)),
                d.maybe(d::yes),
                null,
                null,
                null);
    }

    static Alternator alternator(Draw d, Scale s) {
        double gear = d.share() < 0.8 ? 1 : d.of(2.0, 3.0);
        // open-circuit direct voltage at the runner's best speed: below the bus to three times above it
        double direct = s.volts() * d.between(0.7, 3);
        double leads = direct / 1.35;
        double amperes = Math.max(s.power() / direct, 0.2);
        double resistance = d.spread(0.02, 0.4) * direct / amperes;
        double speed = s.speed() * gear;
        return new Alternator(
                openCircuit(d, leads, speed),
                winding(d, resistance),
                d.maybe(() -> d.whole(2, 24)),
                gear == 1 ? null : (Double) gear,
                d.maybe(() -> d.quantity(amperes * 0.5, amperes * 3, "A", ElectricCurrent.class)),
                d.maybe(() -> d.quantity(speed * 0.8, speed * 4, "rpm", RotationalSpeed.class)),
                d.maybe(() -> noLoadLoss(d, speed, s)),
                d.maybe(() -> spinDown(d, speed)),
                d.maybe(() -> d.quantity(0.1, 4, "K/W", ThermalResistance.class)),
                d.maybe(() -> d.of(InsulationClass.class)),
                d.maybe(() -> d.of(MagnetGrade.class)),
                d.maybe(() -> d.quantity(-0.2, -0.08, "%/K", SharePerTemperature.class)),
                d.maybe(() -> d.of("IP54", "IP65")),
                null);
    }

    /** One reading, or two of which a fifth to three fifths of the torque at the faster grows with speed. */
    private static NoLoadLoss noLoadLoss(Draw d, double rpm, Scale s) {
        double power = Draw.rounded(s.power() * d.between(0.01, 0.2), 4);
        double grows = d.between(0.2, 0.6);
        double half = Draw.rounded(power / 2 * (1 - grows / 2), 4);
        boolean two = d.yes();
        return new NoLoadLoss(
                Si.quantity(power, "W", Power.class),
                Si.quantity(Draw.rounded(rpm, 4), "rpm", RotationalSpeed.class),
                two ? Si.quantity(half, "W", Power.class) : null,
                two ? Si.quantity(Draw.rounded(rpm / 2, 4), "rpm", RotationalSpeed.class) : null);
    }

    /** From full to half speed, or on to a quarter, of which the torque grows with speed. */
    private static SpinDown spinDown(Draw d, double rpm) {
        double time = d.between(2, 60);
        boolean two = d.yes();
        return new SpinDown(
                d.quantity(0.002, 0.2, "kg·m²", MomentOfInertia.class),
                Si.quantity(Draw.rounded(rpm, 4), "rpm", RotationalSpeed.class),
                Si.quantity(Draw.rounded(rpm / 2, 4), "rpm", RotationalSpeed.class),
                Si.quantity(time, "s", Time.class),
                two ? Si.quantity(Draw.rounded(rpm / 4, 4), "rpm", RotationalSpeed.class) : null,
                two ? Si.quantity(Draw.rounded(time * d.between(0.55, 0.95), 4), "s", Time.class) : null);
    }

    private static OpenCircuit openCircuit(Draw d, double leads, double speed) {
        double test = speed * d.between(0.3, 1);
        double volts = leads * test / speed;
        return switch (d.whole(0, 4)) {
            case 0 ->
                new OpenCircuit.VoltsAtSpeed(
                        d.measured(volts / Math.sqrt(3), "V", ElectricPotential.class),
                        rpm(test),
                        VoltageBetween.LEAD_AND_STAR_POINT,
                        VoltageAs.RMS);
            case 1 ->
                new OpenCircuit.VoltsAtSpeed(
                        d.measured(volts * 1.35, "V", ElectricPotential.class),
                        rpm(test),
                        VoltageBetween.BRIDGE_OUTPUT,
                        VoltageAs.DIRECT);
            case 2 ->
                new OpenCircuit.SpeedPerVolt(
                        Si.quantity(Draw.rounded(test / volts, 4), "rpm/V", SpeedPerVoltage.class),
                        VoltageBetween.LEADS,
                        VoltageAs.RMS);
            case 3 ->
                new OpenCircuit.VoltsAtSpeed(
                        d.measured(volts * Math.sqrt(2), "V", ElectricPotential.class),
                        rpm(test),
                        VoltageBetween.LEADS,
                        VoltageAs.PEAK);
            default ->
                new OpenCircuit.VoltsAtSpeed(d.measured(volts, "V", ElectricPotential.class), rpm(test), null, null);
        };
    }

    private static javax.measure.Quantity<RotationalSpeed> rpm(double value) {
        return Si.quantity(Draw.rounded(value, 4), "rpm", RotationalSpeed.class);
    }

    private static Winding winding(Draw d, double resistance) {
        return new Winding(
                d.measured(resistance, "ohm", ElectricResistance.class),
                d.maybe(() -> d.quantity(10, 30, "°C", Temperature.class)),
                d.maybe(() -> d.measured(resistance * d.spread(0.3, 6), "mH", ElectricInductance.class)),
                null,
                null,
                d.maybe(() -> d.of(Connection.class)),
                d.maybe(() -> d.quantity(20, 110, "°C", Temperature.class)),
                d.maybe(d::yes),
                d.maybe(() -> d.quantity(0, 5, "%", Dimensionless.class)),
                null);
    }

    static Rectifier rectifier(Draw d, Scale s) {
        return new Rectifier(
                d.maybe(() -> Si.quantity(d.of(100.0, 200.0, 400.0, 1000.0), "V", ElectricPotential.class)),
                d.maybe(() -> d.quantity(10, 100, "A", ElectricCurrent.class)),
                d.maybe(() -> d.quantity(0.3, 1.1, "V", ElectricPotential.class)),
                d.maybe(() -> d.quantity(0, 10, "mohm", ElectricResistance.class)),
                d.maybe(() -> d.quantity(0.3, 5, "K/W", ThermalResistance.class)),
                null,
                d.maybe(() -> d.quantity(1, 50, "mF", ElectricCapacitance.class)),
                null,
                d.maybe(d::yes));
    }

    static List<Cable> cables(Draw d, Scale s) {
        List<Cable> cables = new ArrayList<>();
        Place[][] runs = {{Place.ALTERNATOR, Place.RECTIFIER}, {Place.RECTIFIER, Place.BATTERY}};
        for (Place[] run : runs) {
            if (d.yes()) {
                cables.add(new Cable(
                        run[0],
                        run[1],
                        d.quantity(1, 200, "m", Length.class),
                        new Conductor(
                                Si.quantity(d.of(1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 50.0), "mm²", Area.class),
                                d.maybe(() -> d.of(ConductorMaterial.class)),
                                d.maybe(() -> d.of(Stranding.class)),
                                d.maybe(() -> d.whole(1, 2))),
                        null,
                        null,
                        d.maybe(d::yes),
                        null));
            }
        }
        return cables;
    }

    static ChargeRegulator regulator(Draw d, Scale s) {
        return new ChargeRegulator(
                d.of(RegulatorKind.class),
                d.maybe(() -> d.quantity(s.volts() * 1.3, s.volts() * 8, "V", ElectricPotential.class)),
                d.maybe(() -> d.quantity(10, 100, "A", ElectricCurrent.class)),
                d.maybe(() -> new VoltageRange(
                        Si.quantity(Draw.rounded(s.volts() * 1.1, 3), "V", ElectricPotential.class),
                        d.quantity(s.volts() * 1.5, s.volts() * 6, "V", ElectricPotential.class))),
                d.maybe(() -> d.quantity(90, 98, "%", Dimensionless.class)),
                d.maybe(() -> d.quantity(s.volts() * 1.05, s.volts() * 1.2, "V", ElectricPotential.class)),
                d.maybe(() -> d.quantity(s.volts(), s.volts() * 1.1, "V", ElectricPotential.class)),
                null,
                null,
                null,
                d.maybe(() -> d.quantity(0, 5, "W", Power.class)));
    }

    static DumpLoad dumpLoad(Draw d, Scale s) {
        double ohms = s.volts() * s.volts() / Math.max(s.power(), 10);
        return new DumpLoad(
                d.quantity(ohms * 0.3, ohms * 2, "ohm", ElectricResistance.class),
                null,
                d.maybe(() -> d.quantity(s.power() * 0.3, s.power() * 3, "W", Power.class)),
                null,
                d.maybe(() -> d.quantity(s.volts() * 1.02, s.volts() * 1.25, "V", ElectricPotential.class)),
                null,
                d.maybe(() -> d.of(DumpSide.class)),
                d.maybe(d::yes),
                d.maybe(d::yes),
                null,
                d.maybe(() -> d.quantity(32, 500, "V", ElectricPotential.class)));
    }

    static List<ProtectiveDevice> protection(Draw d, Scale s) {
        return d.list(0, 2, () -> device(d));
    }

    private static ProtectiveDevice device(Draw d) {
        DeviceKind kind = d.of(DeviceKind.class);
        return new ProtectiveDevice(
                d.of("battery fuse", "isolator"),
                kind,
                Place.RECTIFIER,
                Place.BATTERY,
                d.quantity(6, 200, "A", ElectricCurrent.class),
                d.maybe(() -> d.quantity(32, 500, "V", ElectricPotential.class)),
                null,
                d.maybe(() -> d.quantity(0, 3, "m", Length.class)),
                kind == DeviceKind.BREAKER ? d.maybe(() -> d.of(TripCurve.class)) : null,
                kind == DeviceKind.FUSE ? d.maybe(d::yes) : null,
                kind == DeviceKind.SWITCH ? d.maybe(d::yes) : null,
                kind == DeviceKind.BREAKER ? d.maybe(d::yes) : null,
                d.maybe(d::yes),
                kind == DeviceKind.BREAKER ? d.maybe(() -> d.quantity(60, 400, "Hz", Frequency.class)) : null);
    }

    static Safeguards safeguards(Draw d) {
        return new Safeguards(
                d.maybe(d::yes),
                d.maybe(d::yes),
                d.maybe(d::yes),
                d.maybe(() -> d.of(LiveParts.class)),
                d.maybe(d::yes),
                d.maybe(d::yes),
                d.maybe(d::yes),
                d.maybe(d::yes),
                d.maybe(() -> d.of(StopWater.class)),
                d.maybe(d::yes),
                d.maybe(() -> secondGuard(d)),
                d.maybe(d::yes));
    }

    private static SecondGuard secondGuard(Draw d) {
        return new SecondGuard(
                d.of(GuardKind.class),
                d.maybe(() -> d.of(DumpSide.class)),
                d.maybe(() -> d.quantity(12, 200, "V", ElectricPotential.class)),
                d.maybe(() -> d.quantity(50, 3000, "W", Power.class)));
    }
}
