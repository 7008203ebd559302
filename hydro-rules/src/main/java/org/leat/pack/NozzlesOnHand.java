package org.leat.pack;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Other nozzles to open: those on hand first, then what could be made. */
final class NozzlesOnHand {

    private NozzlesOnHand() {}

    /** {@return candidates with smaller bores than the smallest open, largest first; the rule says {@code message}} */
    static Stream<Candidate> smaller(Judgement j, String message) {
        int positions = j.design().nozzles().open().size();
        double open =
                j.design().nozzles().open().stream().mapToDouble(Si::of).min().orElseThrow();
        List<Double> onHand = j.design().nozzles().available().stream()
                .map(Si::of)
                .filter(bore -> bore < open - 1e-6)
                .sorted(Comparator.reverseOrder())
                .toList();
        Stream<Double> made = Stream.iterate(Math.floor(open * 2000 - 1e-6), n -> n >= 4, n -> n - 1)
                .map(n -> n / 2000);
        return Stream.concat(onHand.stream(), made)
                .map(bore -> Candidate.of(
                        message,
                        new Edit(
                                "/nozzles/open",
                                Collections.nCopies(positions, Si.quantity(bore * 1000, "mm", Length.class))),
                        Arg.of("bore", bore, QuantityKind.LENGTH)));
    }
}
