package org.leat.pack;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Edit;
import org.leat.design.Design;
import org.leat.quantity.Si;

/** Other nozzles on hand for every open position, as edits of the design. */
final class NozzleSizes {

    private NozzleSizes() {}

    /**
     * One bore on hand in every position that is open.
     *
     * @param bore m
     * @param edits that put it into the design
     */
    record Bore(double bore, List<Edit> edits) {}

    /** {@return bores on hand below the largest open one, largest first} */
    static List<Bore> smaller(Design design) {
        double largest =
                design.nozzles().open().stream().mapToDouble(Si::of).max().orElse(0);
        return bores(design).stream()
                .filter(b -> b.bore() < largest * 0.999)
                .sorted(Comparator.comparingDouble(Bore::bore).reversed())
                .toList();
    }

    /** {@return bores on hand above the smallest open one, smallest first} */
    static List<Bore> larger(Design design) {
        double smallest =
                design.nozzles().open().stream().mapToDouble(Si::of).min().orElse(0);
        return bores(design).stream().filter(b -> b.bore() > smallest * 1.001).toList();
    }

    private static List<Bore> bores(Design design) {
        int positions = design.nozzles().open().size();
        List<Bore> bores = new ArrayList<>();
        for (Quantity<Length> bore : design.nozzles().available()) {
            bores.add(new Bore(Si.of(bore), List.of(new Edit("/nozzles/open", Collections.nCopies(positions, bore)))));
        }
        bores.sort(Comparator.comparingDouble(Bore::bore));
        return bores;
    }
}
