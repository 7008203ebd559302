package org.leat.report;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.leat.check.Outcome;
import org.leat.file.Names;
import org.leat.sure.Sureness;

/** How sure verdicts are, in the shapes of {@link JsonModel}. */
final class JsonSureness {

    private JsonSureness() {}

    static JsonModel.SurenessEntry of(Sureness s) {
        return new JsonModel.SurenessEntry(
                s.points(),
                number(s.anyError()),
                s.anyError().isPresent() ? Numbers.of(s.doubtful()) : null,
                s.inputs().stream().map(JsonSureness::input).toList(),
                s.verdicts().stream().map(JsonSureness::verdict).toList());
    }

    private static @Nullable BigDecimal number(OptionalDouble value) {
        return value.isPresent() ? Numbers.of(value.getAsDouble()) : null;
    }

    private static JsonModel.VariedEntry input(Sureness.Input i) {
        return new JsonModel.VariedEntry(
                i.path(),
                Names.ofConstant(i.origin()),
                i.kind().label(),
                i.kind().siSymbol(),
                Numbers.of(i.value()),
                Numbers.of(i.low()),
                Numbers.of(i.high()),
                Numbers.of(i.standardUncertainty()));
    }

    private static JsonModel.SureEntry verdict(Sureness.OfVerdict v) {
        Outcome outcome = v.finding().outcome();
        return new JsonModel.SureEntry(
                outcome.rule(),
                outcome.path(),
                outcome.during(),
                outcome.kind().word(),
                Names.ofConstant(v.basis()),
                number(v.uncertainty()),
                number(v.failing()),
                v.basis() == Sureness.Basis.SAMPLED ? Numbers.of(v.undecided()) : null,
                v.shares().stream()
                        .map(s ->
                                new JsonModel.ShareEntry(s.path(), Numbers.of(s.contribution()), Numbers.of(s.share())))
                        .toList());
    }
}
