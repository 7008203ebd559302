package org.leat.plant.duties;

import java.util.List;
import java.util.function.DoublePredicate;
import org.leat.design.Fitting;
import org.leat.design.Section;
import org.leat.hydraulics.BendThrust;
import org.leat.hydraulics.EndThrust;
import org.leat.plant.cases.Cases;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.Si;

/**
 * The greatest thrust of the water on a bend or on the end of the penstock, at the highest pressure of its section in any case and
 * at the greatest flow of any nozzle set.
 *
 * @param force N; unknown where a pressure is
 * @param section in which the bend lies, or which ends at the nozzles; "" where nothing pushes
 * @param during id of the case; "" where nothing pushes
 * @param rejoined whether it is the blow of a water column that parted and rejoins
 */
public record AnchorThrust(Amount force, String section, String during, boolean rejoined) {

    private static final double ANY_PRESSURE = 1e5;

    /** {@return the greatest thrust, as far as it is not exceeded} There is a set that runs. */
    public static AnchorThrust greatest(Cases cases, List<Section> sections) {
        return greatest(cases, sections, force -> true);
    }

    /**
     * {@return the greatest thrust; one that is too much before one that is not known} There is a set that runs.
     *
     * @param held by each anchor, N
     */
    public static AnchorThrust greatest(Cases cases, List<Section> sections, double held) {
        return greatest(cases, sections, force -> force <= held);
    }

    private static AnchorThrust greatest(Cases cases, List<Section> sections, DoublePredicate held) {
        AnchorThrust greatest = new AnchorThrust(Amount.of(0), "", "", false);
        AnchorThrust unknown = null;
        for (int i = 0; i < sections.size(); i++) {
            if (force(cases, sections, i, ANY_PRESSURE) == 0) {
                continue;
            }
            int index = i;
            DoublePredicate holds = p -> held.test(force(cases, sections, index, Math.max(0, p)));
            HighestPressure highest = HighestPressure.of(cases, i, holds);
            if (!(highest.pressure() instanceof Amount.Known pressure)) {
                unknown = new AnchorThrust(highest.pressure(), "", highest.during(), false);
                continue;
            }
            double force = force(cases, sections, i, Math.max(0, pressure.value()));
            if (force > greatest.force().or(0)) {
                String name = sections.get(i).name();
                greatest = new AnchorThrust(Amount.of(force), name, highest.during(), highest.rejoined());
            }
        }
        return unknown == null || !held.test(greatest.force().or(0)) ? greatest : unknown;
    }

    private static double force(Cases cases, List<Section> sections, int index, double pressure) {
        SectionNumbers section = cases.numbers().penstock().sections().get(index);
        double diameter = section.outsideDiameter();
        double flow = cases.running().stream()
                .mapToDouble(running -> running.water().flow())
                .max()
                .orElseThrow();
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
