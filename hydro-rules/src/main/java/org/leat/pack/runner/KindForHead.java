package org.leat.pack.runner;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leat.catalogue.SpecificSpeedRange;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.plant.cases.Running;

/** Specific speed of the wheel against the usual range of its kind. */
final class KindForHead {

    private static final String MEASURE = "ns";
    private static final String PATH = "/runner/kind";

    static final Rule RULE = Rule.of("runner/kind-for-head", WARNING, "specific speed of the wheel against its kind")
            .why(
                    "Each kind of wheel turns water well between a least and a greatest specific speed. Below it the wheel is"
                            + " large and slow for its power, above it the jet is too thick for it.")
            .formula("n √P / H^1.25 in rpm, kW and m of net head; of the whole wheel, a range for one jet times √jets,"
                    + " wider by the slack")
            .judged("running on each nozzle set on hand")
            .source("range tables of handbooks, texts differ by a quarter (from memory)")
            .limit("slack", RATIO, 25, "%", "texts differ by as much (from memory)")
            .passes("usual", "The specific speed is {value}; usual for its kind is {limit}.")
            .fails("unusual", "The specific speed is {value}; usual for its kind is {limit}.")
            .notApplicable("no-range", "Not judged: no range is published for such a wheel.")
            .notApplicable("no-power", "Not judged: nothing turns the alternator.")
            .judgeAll(KindForHead::judge)
            .advice("other-kinds", "Wheels that such a head and flow suit: {kinds}.", KindForHead::otherKinds)
            .build();

    private KindForHead() {}

    private static List<Outcome> judge(Judgement j) {
        j.at("/runner").given(PATH, j.design().runner());
        return j.each(j.solved().running(), running -> judge(j, running));
    }

    private static Outcome judge(Judgement j, Running running) {
        Spot spot = j.at(PATH).during(running);
        Optional<SpecificSpeedRange> range = range(j);
        if (range.isEmpty()) {
            return spot.says("no-range");
        }
        double jets = Math.sqrt(running.water().jets().size());
        double value = running.specificSpeed();
        double slack = j.limit("slack").value();
        return value > 0
                ? spot.within(
                        value,
                        range.get().low() * jets * (1 - slack),
                        range.get().high() * jets * (1 + slack),
                        RATIO)
                : spot.says("no-power");
    }

    private static Optional<SpecificSpeedRange> range(Judgement j) {
        return switch (j.numbers().runner().kind()) {
            case PELTON -> SpecificSpeedRange.find("pelton-1", MEASURE);
            case TURGO -> SpecificSpeedRange.find("turgo", MEASURE);
            case CUPS, FLAT -> Optional.empty();
        };
    }

    private static Stream<Change> otherKinds(Judgement j, Outcome.Fail failure) {
        String kinds = SpecificSpeedRange.all().stream()
                .filter(range -> range.measure().equals(MEASURE) && range.holds(failure.value()))
                .map(SpecificSpeedRange::kind)
                .map(kind ->
                        kind.replaceAll("^pelton-(\\d)$", "pelton with $1 jets").replace("1 jets", "one jet"))
                .collect(Collectors.joining(", "));
        return kinds.isEmpty() ? Stream.empty() : Stream.of(Change.advice().with("kinds", kinds));
    }
}
