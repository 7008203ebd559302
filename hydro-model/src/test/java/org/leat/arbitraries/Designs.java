package org.leat.arbitraries;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import net.jqwik.api.Arbitrary;
import org.leat.design.Alternative;
import org.leat.design.BatteryBank;
import org.leat.design.Buckets;
import org.leat.design.Design;
import org.leat.design.Inverter;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.design.Making;
import org.leat.design.NozzleChoice;
import org.leat.design.NozzleForm;
import org.leat.design.NozzleSet;
import org.leat.design.PlantPart;
import org.leat.design.Runner;
import org.leat.design.RunnerKind;
import org.leat.quantity.Si;

/**
 * Random plants that could be built: heads of 3 to 120 m, a few litres a second, tens of watts to some kilowatts, with
 * every part sized near what the others need and then off by a factor either way.
 */
public final class Designs {

    private static final int TAPE = 320;

    private Designs() {}

    /** {@return plants that could be built, some of them well} */
    public static Arbitrary<Design> plausible() {
        return Draw.arbitrary(TAPE, Designs::draw);
    }

    /**
     * What the parts are sized by.
     *
     * @param head metres
     * @param flow cubic metres per second
     * @param volts of the bus
     * @param speed best speed of the runner, revolutions a minute
     * @param power roughly at the alternator, watts
     * @param jet diameter of one jet, metres
     * @param pitch diameter of the runner, metres
     */
    record Scale(double head, double flow, double volts, double speed, double power, double jet, double pitch) {}

    private static Design draw(Draw d) {
        double head = d.spread(3, 120);
        double flow = d.spread(0.4e-3, 30e-3);
        int jets = d.whole(1, 4);
        double velocity = 0.97 * Math.sqrt(2 * 9.81 * head);
        double jet = Math.sqrt(4 * flow / jets / Math.PI / velocity);
        double pitch = jet * d.between(6, 18);
        double speed = 0.46 * velocity / (pitch / 2) * 30 / Math.PI;
        BatteryBank battery = ElectricParts.battery(d);
        double volts = battery.cellsInSeries() * ElectricParts.cellVolts(battery.chemistry());
        double power = 0.5 * 9810 * flow * head;
        Scale s = new Scale(head, flow, volts, speed, power, jet, pitch);
        return new Design(
                1,
                d.of("Alder Beck", "Nant y Gors", "Plant 3: \"upper\" # one", "Bach, unteres Werk"),
                d.maybe(() -> d.of("two lines\nof notes", "- not a list", " blanks around ")),
                List.of(),
                WaterParts.site(d, s),
                d.maybe(() -> WaterParts.intake(d, s)),
                WaterParts.penstock(d, s),
                nozzles(d, s, jets),
                d.share() < 0.1 ? null : runner(d, s),
                ElectricParts.alternator(d, s),
                d.maybe(() -> ElectricParts.rectifier(d, s)),
                ElectricParts.cables(d, s),
                d.maybe(() -> ElectricParts.regulator(d, s)),
                d.maybe(() -> ElectricParts.dumpLoad(d, s)),
                battery,
                d.maybe(() -> inverter(d, s)),
                d.list(0, 3, () -> load(d)),
                ElectricParts.protection(d, s),
                d.maybe(() -> ElectricParts.safeguards(d)),
                d.list(0, 3, () -> d.of(PlantPart.class)),
                d.list(0, 2, () -> alternative(d, s)),
                List.of());
    }

    private static NozzleSet nozzles(Draw d, Scale s, int jets) {
        double bore = Draw.rounded(s.jet() * 1000, 3);
        List<javax.measure.Quantity<Length>> open = new ArrayList<>();
        for (int i = 0; i < jets; i++) {
            open.add(Si.quantity(bore, "mm", Length.class));
        }
        return new NozzleSet(
                open,
                d.list(0, 4, () -> d.quantity(bore * 0.6, bore * 1.6, "mm", Length.class)),
                d.list(0, 2, () -> new NozzleChoice(open.subList(0, d.whole(1, jets)), null)),
                d.maybe(() -> d.of(NozzleForm.class)),
                d.maybe(() -> d.between(0.9, 0.99)),
                null,
                d.maybe(() -> d.quantity(bore * 1.5, bore * 4, "mm", Length.class)),
                d.maybe(() -> d.between(0, 1.5)),
                d.maybe(() -> d.quantity(0.1, 30, "s", javax.measure.quantity.Time.class)),
                List.of(),
                null,
                d.maybe(() -> d.of(org.leat.design.ShutOff.class)));
    }

    private static Runner runner(Draw d, Scale s) {
        double width = s.jet() * d.between(2, 4.5) * 1000;
        return new Runner(
                d.of(RunnerKind.class),
                Si.quantity(Draw.rounded(s.pitch() * 1000, 4), "mm", Length.class),
                d.maybe(() -> new Buckets(
                        d.maybe(() -> d.whole(12, 26)),
                        d.maybe(() -> d.quantity(width * 0.8, width * 1.2, "mm", Length.class)),
                        d.maybe(() -> d.quantity(width * 0.6, width, "mm", Length.class)),
                        null,
                        d.maybe(() -> d.quantity(5, 300, "g", Mass.class)),
                        null,
                        null,
                        null,
                        d.maybe(() -> d.of("PETG", "brass", "PA12")),
                        d.maybe(() -> d.of(Making.class)),
                        null,
                        d.maybe(d::yes),
                        null)),
                d.maybe(() -> d.quantity(0, 25, "°", javax.measure.quantity.Angle.class)),
                d.maybe(() -> d.quantity(40, 88, "%", Dimensionless.class)),
                d.maybe(() -> d.between(1.5, 2.1)),
                null,
                d.maybe(() -> d.quantity(10, 500, "mm", Length.class)),
                null,
                d.maybe(() -> d.quantity(0.2, 20, "kg", Mass.class)),
                null);
    }

    private static Inverter inverter(Draw d, Scale s) {
        return new Inverter(
                null,
                null,
                d.maybe(() -> d.quantity(200, 5000, "W", Power.class)),
                null,
                d.maybe(() -> d.quantity(80, 96, "%", Dimensionless.class)),
                d.maybe(() -> d.quantity(1, 30, "W", Power.class)),
                null,
                d.maybe(d::yes));
    }

    private static Load load(Draw d) {
        return new Load(
                d.of("lights", "fridge", "pump/well [2]", "null"),
                d.quantity(5, 1500, "W", Power.class),
                d.maybe(() -> d.whole(1, 6)),
                d.maybe(() -> d.between(0, 24)),
                d.maybe(() -> d.between(1, 7)),
                d.maybe(() -> d.of(LoadSupply.class)),
                null);
    }

    private static Alternative alternative(Draw d, Scale s) {
        return new Alternative(
                d.of("larger pipe", "other winding"),
                null,
                null,
                d.maybe(() -> WaterParts.penstock(d, s)),
                null,
                d.maybe(() -> runner(d, s)),
                d.maybe(() -> ElectricParts.alternator(d, s)),
                null,
                List.of(),
                null,
                null,
                null,
                null);
    }
}
