package org.leat.pack.kit;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.design.Intake;
import org.leat.design.Vent;
import org.leat.plant.duties.VentAir;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.Si;

/** Vents below a shut-off at the top, for rules whose verdict rests on one. They have the limits of {@link OutsidePressure}. */
public final class Vents {

    /** Where the design has it. */
    public static final String PATH = "/intake/vent";

    /** The field that tells whether it freezes. */
    public static final String FROST_PROOF = PATH + "/frost-proof";

    /** How a bore is judged. */
    public static final String FORMULA = "air through a sharp opening (C 0.6), isentropic, at a drop of at most 5 psi"
            + " (34.5 kPa) and of what the wall may see";

    /** Where that is from. */
    public static final String SOURCE =
            "AWWA M51 (from memory) and an air valve maker's practice: 5 psi while draining";

    private Vents() {}

    /** {@return the vent below the shut-off; null where there is none, or it sits above} Open where the design does not tell. */
    public static @Nullable Vent below(Judgement j, Spot spot) {
        Intake intake = spot.given("/intake", j.design().intake());
        Vent vent = intake.vent();
        return vent != null && spot.given(PATH + "/below-valve", vent.belowValve()) ? vent : null;
    }

    /** {@return whether every section stands for hours that the water hangs in it with no air let in} */
    public static boolean wallStandsIt(Judgement j, Spot spot) {
        double safety = j.limit("safety").value();
        for (SectionNumbers section : OutsidePressure.soft(j)) {
            double allowed = spot.known(OutsidePressure.bucklingOfHours(j, section)) / safety;
            if (OutsidePressure.hanging(j, section) > allowed) {
                return false;
            }
        }
        return true;
    }

    /** {@return whether the vent stays open the whole year} Open where there is frost and the design does not tell. */
    public static boolean staysOpen(Judgement j, Spot spot, Vent vent) {
        return !j.numbers().site().frost() || spot.given(FROST_PROOF, vent.frostProof());
    }

    /**
     * {@return the bore of a vent against the air that must enter as fast as a flow of water leaves, m³/s} An error where the wall
     * buckles by the drop that this takes, a warning where only the safety factor is short. Told with {@code flow} and {@code drop}.
     */
    public static Outcome wideEnough(Judgement j, Spot spot, Vent vent, double flow) {
        double drop = drop(j, spot);
        double bore = Si.of(vent.bore());
        OptionalDouble allowed = allowed(j, spot);
        boolean folds = allowed.isPresent()
                && folds(
                        VentAir.drop(j.numbers(), flow, bore),
                        allowed.getAsDouble() * j.limit("safety").value());
        return spot.as(folds ? ERROR : WARNING)
                .with("flow", flow, VOLUME_FLOW)
                .with("drop", drop, PRESSURE)
                .atLeast(bore, spot.known(VentAir.leastBore(j.numbers(), flow, drop)), LENGTH);
    }

    /** {@return a vent of the next size that can be bought for a flow, m³/s; told with {@code bore}} None above DN 150. */
    public static Stream<Change> forFlow(Judgement j, double flow) {
        Amount least = VentAir.leastBore(j.numbers(), flow, drop(j, j.at(PATH)));
        Amount size = least instanceof Amount.Known bore ? VentAir.size(bore.value()) : least;
        if (!(size instanceof Amount.Known nominal)) {
            return Stream.empty();
        }
        double millimetres = Math.rint(nominal.value() * 1000);
        Boolean proof = j.numbers().site().frost() ? Boolean.TRUE : null;
        return Stream.of(
                Change.of(PATH, new Vent(mm(millimetres), true, proof)).with("bore", millimetres / 1000, LENGTH));
    }

    private static double drop(Judgement j, Spot spot) {
        double draining = VentAir.drainingDrop();
        return Math.min(draining, allowed(j, spot).orElse(draining));
    }

    /** Air that would be choked brings any drop. */
    private static boolean folds(Amount drop, double buckles) {
        return !(drop instanceof Amount.Known known) || known.value() > buckles;
    }

    /** What the softest section may see for hours, Pa; empty where all are proof against suction. */
    private static OptionalDouble allowed(Judgement j, Spot spot) {
        double safety = j.limit("safety").value();
        return OutsidePressure.soft(j).stream()
                .mapToDouble(section -> spot.known(OutsidePressure.bucklingOfHours(j, section)) / safety)
                .min();
    }
}
