package org.leat.pack.dump;

import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.DumpLoad;
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

    /** {@return the numbers of a dump load that the design states: it has a resistance, or what gives one} */
    static DumpLoadNumbers numbers(Judgement j) {
        return Objects.requireNonNull(j.numbers().dumpLoad());
    }
}
