package org.leat.pack.dump;

import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.DumpLoad;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.numbers.DumpLoadNumbers;

/** What rules of the dump load say where there is none. */
final class DumpLoads {

    /** What is said with the text {@code none}. */
    static final String NONE = "Not judged: there is no dump load.";

    private DumpLoads() {}

    /** {@return the judging of a dump load in a solved plant} Without one it answers {@code none}. */
    static Function<Judgement, Outcome> judge(BiFunction<Judgement, DumpLoad, Outcome> judging) {
        return j -> {
            DumpLoad dump = j.design().dumpLoad();
            if (dump == null) {
                return j.at("/dump-load").says("none");
            }
            j.solved();
            return judging.apply(j, dump);
        };
    }

    /** {@return battery full, the set on which the voltage across its elements is highest} */
    static BatteryFull hardest(Judgement j) {
        return Worst.most(j.solved().batteryFull(), BatteryFull::dumpVoltage);
    }

    /** {@return the current of its cold elements then, A} */
    static double current(Judgement j) {
        return numbers(j).currentCold(hardest(j).dumpVoltage());
    }

    /** {@return the numbers of a dump load that the design states: it has a resistance, or what gives one} */
    static DumpLoadNumbers numbers(Judgement j) {
        return Objects.requireNonNull(j.numbers().dumpLoad());
    }
}
