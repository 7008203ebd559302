package org.leat.pack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.design.ElementPath;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.quantity.Si;

/** What rules of the inverter say where there is none, and what hangs on it. */
final class Inverters {

    private Inverters() {}

    /** {@return not applicable without an inverter; open where a load that needs one is stated} */
    static Outcome missing(Judgement j, String path, String none) {
        Spot spot = j.at(path);
        return loads(j).isEmpty() ? spot.notApplicable(none) : spot.notGiven("/inverter");
    }

    /** {@return the loads it feeds} */
    static List<Load> loads(Judgement j) {
        return j.design().loads().stream()
                .filter(load -> load.supply() != LoadSupply.BUS)
                .toList();
    }

    /** {@return power of all it feeds at once, W} */
    static double together(Judgement j) {
        return loads(j).stream().mapToDouble(DailyUse::power).sum();
    }

    /** {@return the most drawn for a moment: one load starts while all others run, W} */
    static double starting(Judgement j) {
        double most = 0;
        for (Load load : loads(j)) {
            double factor = load.surgeFactor() == null ? 1 : load.surgeFactor();
            most = Math.max(most, (factor - 1) * Si.of(load.power()));
        }
        return together(j) + most;
    }

    /** {@return the field that must be stated before a start can be judged; null where it can} */
    static @Nullable String unknownStart(Judgement j) {
        if (j.design().loads().isEmpty()) {
            return "/loads";
        }
        boolean known = loads(j).isEmpty() || loads(j).stream().anyMatch(load -> load.surgeFactor() != null);
        int largest = 0;
        for (int i = 1; i < j.design().loads().size(); i++) {
            Load load = j.design().loads().get(i);
            if (Si.of(load.power()) > Si.of(j.design().loads().get(largest).power())) {
                largest = i;
            }
        }
        return known ? null : ElementPath.item("/loads", j.design().loads(), largest) + "/surge-factor";
    }
}
