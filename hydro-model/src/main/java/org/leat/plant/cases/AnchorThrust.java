package org.leat.plant.cases;

import java.util.List;
import org.leat.design.Fitting;
import org.leat.design.Section;
import org.leat.hydraulics.BendThrust;
import org.leat.hydraulics.EndThrust;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.Si;

/**
 * The greatest thrust of the water on a bend or on the end of the penstock, at the highest pressure of its section.
 *
 * @param force N; unknown where a pressure is
 * @param section in which the bend lies, or which ends at the nozzles; "" where nothing pushes
 * @param during id of the case; "" where nothing pushes
 */
public record AnchorThrust(Amount force, String section, String during) {

    /** {@return the greatest thrust} There is a set that runs. */
    public static AnchorThrust greatest(Cases cases, List<Section> sections) {
        AnchorThrust greatest = new AnchorThrust(Amount.of(0), "", "");
        for (int i = 0; i < sections.size(); i++) {
            HighestPressure highest = HighestPressure.of(cases, i);
            if (!(highest.pressure() instanceof Amount.Known pressure)) {
                return new AnchorThrust(highest.pressure(), "", "");
            }
            double force = force(cases, sections, i, Math.max(0, pressure.value()));
            if (force > greatest.force().or(0)) {
                greatest = new AnchorThrust(Amount.of(force), sections.get(i).name(), highest.during());
            }
        }
        return greatest;
    }

    private static double force(Cases cases, List<Section> sections, int index, double pressure) {
        SectionNumbers section = cases.numbers().penstock().sections().get(index);
        double diameter = section.outsideDiameter();
        double flow = cases.running().get(0).water().flow();
        double density = cases.numbers().water().density();
        double force = index == sections.size() - 1 ? EndThrust.force(pressure, diameter) : 0;
        for (Fitting fitting : sections.get(index).fittings()) {
            double angle = angle(fitting);
            if (angle > 0) {
                force = Math.max(force, BendThrust.force(pressure, density, flow, diameter, Math.min(Math.PI, angle)));
            }
        }
        return force;
    }

    private static double angle(Fitting fitting) {
        return switch (fitting.kind()) {
            case BEND_90, ELBOW_90 -> Si.of(fitting.angle(), Math.PI / 2);
            case BEND_45, ELBOW_45 -> Si.of(fitting.angle(), Math.PI / 4);
            default -> 0;
        };
    }
}
