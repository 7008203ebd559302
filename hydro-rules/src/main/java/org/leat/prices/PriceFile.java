package org.leat.prices;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Demand;
import org.leat.design.Limits;
import org.leat.file.AnyValue;

/**
 * What a price list says.
 *
 * @param format version of the file format
 * @param notes free words for whoever reads the file next
 * @param currency of all prices
 * @param choices what of the design may vary
 */
@About("Parts with prices, and what of a design may vary")
record PriceFile(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("free words for whoever reads the file next") @CanBeAbsent @Nullable
        String notes,

        @About("currency of all prices, as EUR") String currency,

        @About("what of the design may vary; of each one part is taken") @Limits(items = 1, mostItems = 30)
        List<Entry> choices) {

    PriceFile {
        Demand.limits(PriceFile.class, format, notes, currency, choices).hold();
        choices = List.copyOf(choices);
    }

    /**
     * One thing to choose.
     *
     * @param name what it is called
     * @param at element of the design
     * @param fields below it that may vary
     * @param parts of which one is taken
     */
    @About("One thing to choose: the fields of the design that it sets, and the parts of which one is taken")
    record Entry(
            @About("what it is called, as pipe") String name,

            @About("element of the design that the fields are of, as /penstock/sections[run]/pipe; / is the design")
            String at,

            @About("fields that may vary, as outside-diameter; below a field as conductor/area") @Limits(items = 1)
            List<String> fields,

            @About("parts of which one is taken") @Limits(items = 1)
            List<Priced> parts) {

        Entry {
            Demand.limits(Entry.class, name, at, fields, parts).hold();
            fields = List.copyOf(fields);
            parts = List.copyOf(parts);
        }
    }

    /**
     * One part.
     *
     * @param name what it is called
     * @param price of all that is needed of it
     * @param sets what each field that may vary becomes
     * @param notes free words
     */
    @About("One part: its price, and what each field that may vary becomes with it")
    record Priced(
            @About("what it is called, as PE100 63 mm SDR 17")
            String name,

            @About("price of all that the plant needs of it, delivered; 0 for what is there already")
            @Limits(atLeast = 0, atMost = 1e9)
            double price,

            @About("what each field that may vary becomes, written as in a design file")
            Map<String, AnyValue> sets,

            @About("free words, as where it is sold") @CanBeAbsent @Nullable
            String notes) {

        Priced {
            Demand.limits(Priced.class, name, price, sets, notes).hold();
            sets = Collections.unmodifiableMap(new LinkedHashMap<>(sets));
        }
    }
}
