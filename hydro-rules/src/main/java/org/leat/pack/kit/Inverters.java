package org.leat.pack.kit;

import java.util.List;
import java.util.function.Function;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.design.ElementPath;
import org.leat.design.Inverter;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.quantity.Si;

/** What rules of the inverter say where there is none, and what hangs on it. */
public final class Inverters {

    /** What is said with the text {@code none}. */
    public static final String NONE = "Not judged: there is no inverter.";

    private Inverters() {}

    /** Judges an inverter at the field of it that is judged. */
    @FunctionalInterface
    public interface Judging {
        Outcome of(Judgement j, Inverter inverter, Spot spot);
    }

    /** {@return the judging of one field} Without an inverter it answers as {@link #missing} does. */
    public static Function<Judgement, Outcome> judge(String field, Judging judging) {
        return j -> {
            Inverter inverter = j.design().inverter();
            Spot spot = j.at(field);
            return inverter == null ? missing(j, spot) : judging.of(j, inverter, spot);
        };
    }

    /** {@return {@code none} without an inverter; open where a load that needs one is stated} */
    public static Outcome missing(Judgement j, Spot spot) {
        return loads(j).isEmpty() ? spot.says("none") : spot.notGiven("/inverter");
    }

    /** {@return the loads it feeds} */
    public static List<Load> loads(Judgement j) {
        return j.design().loads().stream()
                .filter(load -> load.supply() != LoadSupply.BUS)
                .toList();
    }

    /** {@return power of all it feeds at once, W} */
    public static double together(Judgement j) {
        return loads(j).stream()
                .mapToDouble(load -> Si.of(load.power()) * (load.count() == null ? 1 : load.count()))
                .sum();
    }

    /**
     * {@return the most drawn for a moment: one load starts while all others run, W; the spot is open where of no load it is
     * stated how hard it starts}
     */
    public static double starting(Judgement j, Spot spot) {
        List<Load> all = j.design().loads();
        if (all.isEmpty()) {
            spot.given("/loads", null);
        }
        List<Load> fed = loads(j);
        if (!fed.isEmpty() && fed.stream().allMatch(load -> load.surgeFactor() == null)) {
            Load largest = Worst.most(fed, load -> Si.of(load.power()));
            spot.given(ElementPath.item("/loads", all, all.indexOf(largest)) + "/surge-factor", null);
        }
        double most = 0;
        for (Load load : fed) {
            double factor = load.surgeFactor() == null ? 1 : load.surgeFactor();
            most = Math.max(most, (factor - 1) * Si.of(load.power()));
        }
        return together(j) + most;
    }
}
