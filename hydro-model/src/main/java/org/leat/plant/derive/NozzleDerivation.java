package org.leat.plant.derive;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.design.NozzleChoice;
import org.leat.design.NozzleForm;
import org.leat.design.NozzleSet;
import org.leat.hydraulics.NozzleKind;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.NozzleNumbers;
import org.leat.plant.numbers.PenstockNumbers.ValveNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Nozzles of a plant. */
final class NozzleDerivation {

    private NozzleDerivation() {}

    static NozzleNumbers of(NozzleSet set, Assume assume) {
        NozzleForm form = set.form() == null ? NozzleForm.SMOOTH : set.form();
        double velocity = set.velocityCoefficient() != null
                ? set.velocityCoefficient()
                : coefficient("velocity-coefficient", assume, Coefficients.velocity(form));
        double contraction = set.contractionCoefficient() != null
                ? set.contractionCoefficient()
                : coefficient("contraction-coefficient", assume, Coefficients.contraction(form));
        OptionalDouble branchBore = Si.optional(set.branchBore());
        double branchLoss = set.branchLoss() == null ? 0 : set.branchLoss();
        ValveNumbers shutOff = set.shutOffTime() == null
                ? null
                : new ValveNumbers(
                        ValveDerivation.kind(set.shutOffBy()),
                        Si.of(set.shutOffTime()),
                        branchBore.orElse(0),
                        "/nozzles/shut-off-time");
        return new NozzleNumbers(groups(set), velocity, contraction, branchBore, branchLoss, shutOff);
    }

    private static double coefficient(String field, Assume assume, Coefficients usual) {
        return assume.value(
                "/nozzles/" + field,
                QuantityKind.RATIO,
                usual.value(),
                usual.low(),
                usual.high(),
                "assumed/nozzle-form",
                Coefficients.SOURCE,
                Assumption.Weight.SOUND_DEFAULT);
    }

    private static List<NozzleGroup> groups(NozzleSet set) {
        List<NozzleGroup> groups = new ArrayList<>();
        List<Double> built = bores(set.open());
        groups.add(new NozzleGroup(NozzleGroup.nameOf(built), built, true));
        for (NozzleChoice choice : set.sets()) {
            List<Double> bores = bores(choice.open());
            if (same(bores, built) && choice.name() != null) {
                groups.set(0, new NozzleGroup(choice.name(), built, true));
            } else {
                String name = choice.name() == null ? NozzleGroup.nameOf(bores) : choice.name();
                add(groups, new NozzleGroup(name, bores, false));
            }
        }
        if (set.sets().isEmpty()) {
            for (double bore : bores(set.available())) {
                add(groups, groups.get(0).withBores(bore));
            }
        }
        return groups;
    }

    private static void add(List<NozzleGroup> groups, NozzleGroup group) {
        for (NozzleGroup known : groups) {
            if (same(known.bores(), group.bores())) {
                return;
            }
        }
        groups.add(group);
    }

    private static boolean same(List<Double> one, List<Double> other) {
        List<Double> a = new ArrayList<>(one);
        List<Double> b = new ArrayList<>(other);
        Collections.sort(a);
        Collections.sort(b);
        return a.equals(b);
    }

    private static List<Double> bores(List<Quantity<Length>> open) {
        List<Double> bores = new ArrayList<>();
        for (Quantity<Length> bore : open) {
            bores.add(Si.of(bore));
        }
        return bores;
    }

    /** A nozzle coefficient with the range met. */
    record Coefficients(double value, double low, double high) {

        private static final String SOURCE = "Idelchik, Handbook of Hydraulic Resistance, section 11, from memory";

        static Coefficients velocity(NozzleForm form) {
            double usual = kind(form).velocityCoefficient();
            return new Coefficients(usual, 0.97 * usual, Math.min(1, 1.01 * usual));
        }

        static Coefficients contraction(NozzleForm form) {
            double usual = kind(form).contractionCoefficient();
            return new Coefficients(usual, 0.95 * usual, Math.min(1, 1.03 * usual));
        }

        private static NozzleKind kind(NozzleForm form) {
            return switch (form) {
                case SMOOTH -> NozzleKind.SMOOTH_CONVERGING;
                case SHARP_HOLE -> NozzleKind.SHARP_HOLE;
                case SHORT_TUBE -> NozzleKind.SHORT_TUBE;
            };
        }
    }
}
