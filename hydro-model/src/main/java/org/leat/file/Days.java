package org.leat.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days as people write them, for telling how to write them. */
final class Days {

    private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})[./ -](\\d{1,2})[./ -](\\d{4})");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[./ -](\\d{1,2})[./ -](\\d{1,2})");

    private Days() {}

    /** {@return the day, or the two it may be} */
    static String written(String text) {
        Set<String> days = new LinkedHashSet<>();
        Matcher last = YEAR_LAST.matcher(text);
        Matcher first = YEAR_FIRST.matcher(text);
        if (last.matches()) {
            int year = Integer.parseInt(last.group(3));
            add(days, year, Integer.parseInt(last.group(2)), Integer.parseInt(last.group(1)));
            if (!text.contains(".")) {
                add(days, year, Integer.parseInt(last.group(1)), Integer.parseInt(last.group(2)));
            }
        } else if (first.matches()) {
            add(
                    days,
                    Integer.parseInt(first.group(1)),
                    Integer.parseInt(first.group(2)),
                    Integer.parseInt(first.group(3)));
        }
        return String.join("\" or \"", days);
    }

    private static void add(Set<String> days, int year, int month, int day) {
        try {
            days.add(LocalDate.of(year, month, day).toString());
        } catch (DateTimeException e) {
            // no such day, so this was not meant
        }
    }
}
