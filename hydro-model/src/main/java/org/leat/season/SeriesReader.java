package org.leat.season;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.season.SeriesReading.SeriesFault;

/**
 * Reads daily flows. Two forms: CSV with a head line {@code date,flow_l_s} (or {@code _m3_s}, {@code _ft3_s}), and the tab-separated
 * form of a national water service, in which a line of widths follows the names and the discharge is the column whose name ends in
 * {@code 00060_00003}, in cubic feet a second, with a column of codes beside it. Lines that begin with {@code #} are comments.
 *
 * <p>Days need not be in order. A day without a number, or marked as spoilt by ice or by equipment, is a gap; gaps up to a stated
 * length are filled straight between their neighbours, longer ones are faults. A repeated day, a negative flow, a decimal comma are
 * faults, each with its line. Never throws for a bad file.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class SeriesReader {

    /** Days of a gap that are filled if nothing else is said: common practice. */
    public static final int USUAL_GAP = 7;

    private static final int MOST_DAYS = 100_000;
    private static final int MOST_FAULTS = 20;
    private static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;
    private static final Pattern WIDTHS = Pattern.compile("\\d+[sdn]");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Set<String> SPOILT =
            Set.of("", "ice", "eqp", "bkw", "dis", "mnt", "ssn", "tst", "zfl", "***", "nan", "na", "-");

    private final List<SeriesFault> faults = new ArrayList<>();
    private final NavigableMap<LocalDate, Double> days = new TreeMap<>();
    private int estimated;
    private int longest = USUAL_GAP;

    private SeriesReader() {}

    /**
     * Where the columns are.
     *
     * @param day of the date
     * @param flow of the flow
     * @param code of the quality code; below zero where there is none
     * @param factor from the column's unit to m³/s
     */
    private record Columns(int day, int flow, int code, double factor) {}

    /** {@return the flows of a text, gaps up to {@link #USUAL_GAP} days filled} */
    public static SeriesReading read(String text) {
        return read(text, USUAL_GAP);
    }

    /**
     * {@return the flows of a text}
     *
     * @param longestGap days of a gap that is filled
     */
    public static SeriesReading read(String text, int longestGap) {
        SeriesReader reader = new SeriesReader();
        reader.longest = longestGap;
        reader.all(text);
        FlowSeries series = reader.faults.isEmpty() ? FlowSeries.of(reader.days, reader.estimated) : null;
        return new SeriesReading(series, reader.faults);
    }

    private void all(String text) {
        boolean tabs = text.lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .findFirst()
                .orElse("")
                .contains("\t");
        CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(tabs ? '\t' : ',');
        ObjectReader rows = new CsvMapper()
                .readerFor(String[].class)
                .with(CsvParser.Feature.WRAP_AS_ARRAY)
                .with(CsvParser.Feature.SKIP_EMPTY_LINES)
                .with(CsvParser.Feature.TRIM_SPACES)
                .with(CsvParser.Feature.ALLOW_COMMENTS)
                .with(schema);
        try (MappingIterator<String[]> each = rows.readValues(text)) {
            Columns columns = null;
            while (each.hasNextValue() && faults.size() < MOST_FAULTS) {
                String[] row = each.nextValue();
                int line = Math.max(
                        1,
                        each.getCurrentLocation().getLineNr() - (text.endsWith("\n") || each.hasNextValue() ? 1 : 0));
                if (columns == null) {
                    columns = head(row, line);
                    if (columns == null) {
                        return;
                    }
                } else if (!widths(row)) {
                    day(row, line, columns);
                }
                if (days.size() > MOST_DAYS) {
                    fault(line, "more than " + MOST_DAYS + " days");
                    return;
                }
            }
        } catch (JsonProcessingException e) {
            fault(e.getLocation() == null ? 1 : e.getLocation().getLineNr(), "no table: a quote that does not end?");
        } catch (IOException e) {
            fault(1, "no table");
        }
        end();
    }

    private void end() {
        if (!faults.isEmpty()) {
            return;
        }
        if (days.isEmpty()) {
            fault(1, "no day with a flow");
            return;
        }
        for (FlowSeries.Gap gap : FlowSeries.gaps(days)) {
            if (gap.days() > longest && faults.size() < MOST_FAULTS) {
                fault(
                        1,
                        "no flow from " + gap.first() + " to " + gap.last() + ": " + gap.days()
                                + " days, more than the " + longest + " that are filled");
            }
        }
    }

    private @Nullable Columns head(String[] row, int line) {
        int day = -1;
        int flow = -1;
        int code = -1;
        double factor = 0;
        for (int i = 0; i < row.length; i++) {
            String name = row[i].strip().toLowerCase(Locale.ROOT);
            if (name.equals("date") || name.equals("day") || name.equals("datetime")) {
                day = i;
            } else if (name.endsWith("00060_00003")) {
                flow = i;
                factor = CUBIC_FOOT;
            } else if (name.endsWith("00060_00003_cd") || name.equals("code")) {
                code = i;
            } else if (name.startsWith("flow")) {
                flow = i;
                factor = unit(name.substring("flow".length()));
            }
        }
        if (day < 0 || flow < 0) {
            fault(line, "the head line names no " + (day < 0 ? "date" : "flow") + "; write date,flow_l_s");
            return null;
        }
        if (factor == 0) {
            fault(line, "\"" + row[flow].strip() + "\" has no unit; write flow_l_s, flow_m3_s or flow_ft3_s");
            return null;
        }
        return new Columns(day, flow, code, factor);
    }

    private static double unit(String text) {
        return switch (text.replaceAll("[\\s()\\[\\]_/]", "").replace('³', '3')) {
            case "ls" -> 0.001;
            case "m3s" -> 1;
            case "ft3s", "cfs" -> CUBIC_FOOT;
            default -> 0;
        };
    }

    private static boolean widths(String[] row) {
        for (String cell : row) {
            if (!WIDTHS.matcher(cell.strip()).matches()) {
                return false;
            }
        }
        return true;
    }

    private void day(String[] row, int line, Columns at) {
        if (row.length <= Math.max(at.day(), at.flow())) {
            fault(line, row.length + " columns, fewer than the head line names");
            return;
        }
        LocalDate day = date(row[at.day()].strip(), line);
        String code = at.code() >= 0 && at.code() < row.length
                ? row[at.code()].strip().toLowerCase(Locale.ROOT)
                : "a";
        String written = row[at.flow()].strip();
        if (day == null || SPOILT.contains(written.toLowerCase(Locale.ROOT))) {
            return;
        }
        double flow = number(written, line) * at.factor();
        if (Double.isNaN(flow)) {
            return;
        }
        if (flow < 0) {
            fault(line, "a flow of " + written + ": below nothing");
        } else if (days.putIfAbsent(day, flow) != null) {
            fault(line, "the day " + day + " again");
        } else if (code.contains("e")) {
            estimated++;
        }
    }

    private @Nullable LocalDate date(String written, int line) {
        try {
            return LocalDate.parse(written);
        } catch (DateTimeParseException e) {
            fault(line, "\"" + shortened(written) + "\" is no day; write it as 2024-02-29");
            return null;
        }
    }

    private double number(String written, int line) {
        try {
            double value = Double.parseDouble(written);
            if (Double.isFinite(value) && Math.abs(value) < 1e9 && !written.endsWith("d") && !written.endsWith("f")) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, with the cure
        }
        fault(
                line,
                COMMA.matcher(written).matches()
                        ? "\"" + written + "\": write a decimal point, " + written.replace(',', '.')
                        : "\"" + shortened(written) + "\" is no flow");
        return Double.NaN;
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }

    private void fault(int line, String what) {
        faults.add(new SeriesFault(line, what));
    }
}
