package org.leat.page;

import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A picture of the page with the words and the numbers that go with it.
 *
 * @param topic what it is about
 * @param caption what to look at; where there is no picture, why there is none
 * @param picture draws it, its key included; null where there is nothing to draw
 * @param tables the same numbers
 */
record Figure(Topic topic, String caption, @Nullable Consumer<Markup> picture, List<DataTable> tables) {

    Figure {
        tables = List.copyOf(tables);
    }

    /** {@return a place without a picture} */
    static Figure without(Topic topic, String why) {
        return new Figure(topic, why, null, List.of());
    }
}
