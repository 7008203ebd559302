package org.leat.report;

import java.util.stream.Collectors;
import org.leat.check.WayOut;
import org.leat.file.Names;

/** What a way out would change of what is on hand already. */
final class OnHandText {

    private OnHandText() {}

    /** {@return words to stand behind a way out; "" where it leaves alone what is on hand} */
    static String of(WayOut way) {
        return way.onHand().isEmpty()
                ? ""
                : way.onHand().stream()
                        .map(part -> Names.ofConstant(part).replace('-', ' '))
                        .collect(Collectors.joining(", ", " On hand already: ", "."));
    }
}
