package org.leat.pack.kit;

import java.util.List;
import java.util.function.BiFunction;
import org.leat.catalogue.tables.AmpacityCatalogue;
import org.leat.catalogue.tables.CableLaying;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.design.Cable;
import org.leat.design.ConductorMaterial;
import org.leat.design.Installation;
import org.leat.plant.cases.CableDuty;
import org.leat.quantity.Si;

/** What the conductors of a run carry for ever as they are laid. */
public final class RunCapacity {

    /** What {@link #each} says of a run whose loads are not told, under {@code not-loaded}. */
    public static final String NOT_LOADED =
            "Cannot be judged: no load is told that this run feeds. Tell it, with supply: bus; what leads from an"
                    + " inverter's sockets is no run of a design.";

    private RunCapacity() {}

    /** {@return each run judged by what it carries; open where no run is stated, and at a run whose loads are not told} */
    public static List<Outcome> each(Judgement j, BiFunction<Spot, CableDuty.Carries, Outcome> judge) {
        List<CableDuty> duties = j.solved().cableDuties();
        return j.eachOr(j.at("/cables").notGiven("/cables"), duties, duty -> {
            Spot spot = j.at(duty.cable().path() + "/conductor/area");
            return duty instanceof CableDuty.NotLoaded
                    ? spot.says("not-loaded")
                    : judge.apply(spot, carries(spot, duty));
        });
    }

    /** {@return what a loaded run carries; open at the spot where a field is not given that would tell} */
    public static CableDuty.Carries carries(Spot spot, CableDuty duty) {
        String missing = duty instanceof CableDuty.NotStated unknown ? unknown.missing() : "/loads";
        return spot.given(missing, duty instanceof CableDuty.Carries carries ? carries : null);
    }

    /** {@return capacity, A, all parallel cores together; nothing of the laying is taken for granted} */
    public static double capacity(Judgement j, Spot spot, CableDuty.Carries duty) {
        Cable cable = j.design().cables().get(duty.cable().index());
        Installation laid = DesignParts.installation(cable);
        String path = duty.cable().path() + "/installation/";
        ConductorMaterial material = cable.conductor().material();
        CableLaying laying = new CableLaying(
                material == null ? ConductorMaterial.COPPER : material,
                spot.given(path + "method", laid.method()),
                spot.given(path + "insulation", laid.insulation()),
                duty.threePhase() ? 3 : 2,
                spot.si(path + "ambient", laid.ambient()),
                spot.given(path + "grouped-circuits", laid.groupedCircuits()));
        int parallel =
                cable.conductor().parallel() == null ? 1 : cable.conductor().parallel();
        return parallel
                * spot.known(AmpacityCatalogue.capacity(Si.of(cable.conductor().area()), laying));
    }
}
