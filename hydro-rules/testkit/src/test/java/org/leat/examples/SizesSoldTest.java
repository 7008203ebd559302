package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Sizes that ways out propose, as the examples expect them, against the series in which such parts are sold. The series are
 * written down here on their own, so that a slip in the program is not one here too.
 */
class SizesSoldTest {

    private static final Set<String> VOLTS = Set.of(
            "12 V", "24 V", "32 V", "36 V", "48 V", "50 V", "58 V", "60 V", "75 V", "80 V", "100 V", "125 V", "150 V",
            "160 V", "200 V", "250 V", "300 V", "400 V", "450 V", "500 V", "600 V", "800 V", "1000 V");

    private static final Set<String> RATED_CURRENTS = Set.of(
            "1 A", "2 A", "3 A", "4 A", "5 A", "6 A", "8 A", "10 A", "12 A", "13 A", "15 A", "16 A", "20 A", "25 A",
            "30 A", "32 A", "35 A", "40 A", "50 A", "60 A", "63 A", "70 A", "80 A", "90 A", "100 A", "125 A", "150 A",
            "160 A", "200 A", "250 A", "300 A", "315 A", "400 A");

    /** By the end of the edit's path. Sources: see each. */
    private static final Map<String, Set<String>> SERIES = new TreeMap<>(Map.ofEntries(
            // IEC 60228
            Map.entry(
                    "/conductor/area",
                    Set.of(
                            "0.5 mm²",
                            "0.75 mm²",
                            "1 mm²",
                            "1.5 mm²",
                            "2.5 mm²",
                            "4 mm²",
                            "6 mm²",
                            "10 mm²",
                            "16 mm²",
                            "25 mm²",
                            "35 mm²",
                            "50 mm²",
                            "70 mm²",
                            "95 mm²",
                            "120 mm²",
                            "150 mm²",
                            "185 mm²",
                            "240 mm²",
                            "300 mm²")),
            // ISO 161-1
            Map.entry(
                    "/pipe/outside-diameter",
                    Set.of(
                            "16 mm", "20 mm", "25 mm", "32 mm", "40 mm", "50 mm", "63 mm", "75 mm", "90 mm", "110 mm",
                            "125 mm", "140 mm", "160 mm", "180 mm", "200 mm", "225 mm", "250 mm", "280 mm", "315 mm")),
            // ISO 4065
            Map.entry("/pipe/sdr", Set.of("6", "7.4", "9", "11", "13.6", "17", "21", "26", "33", "41")),
            // IEC 60269-1, ISO 8820 and the sizes sold in North America
            Map.entry("/rated-current", RATED_CURRENTS),
            Map.entry("/dump-load/fuse", RATED_CURRENTS),
            // ratings of diodes, capacitors, cables in a list, regulators, fuses: makers' lists
            Map.entry("/repetitive-peak-reverse-voltage", VOLTS),
            Map.entry("/capacitor-voltage", VOLTS),
            Map.entry("]/rated-voltage", VOLTS),
            Map.entry("/input-voltage-limit", VOLTS),
            Map.entry("/management/voltage-rating", VOLTS),
            Map.entry("/direct-voltage", VOLTS),
            Map.entry("/fuse-direct-voltage", VOLTS),
            // IEC 60898-1 and makers' lists, direct current
            Map.entry(
                    "/breaking-capacity",
                    Set.of(
                            "1 kA", "1.5 kA", "2.5 kA", "3 kA", "4.5 kA", "6 kA", "10 kA", "15 kA", "20 kA", "25 kA",
                            "33 kA", "50 kA", "100 kA")),
            // deep groove ball bearings, makers' tables (from memory)
            Map.entry(
                    "/dynamic-rating",
                    Set.of(
                            "3450 N", "4750 N", "5400 N", "5850 N", "6370 N", "8060 N", "9950 N", "11900 N", "14800 N",
                            "20300 N")),
            // IP codes of housings against jets
            Map.entry("/alternator/protection", Set.of("IP55", "IP56", "IP65", "IP66", "IP54")),
            // IEC 60063, E24
            Map.entry(
                    "/dump-load/resistance",
                    Set.of(
                            "1 Ω", "1.1 Ω", "1.2 Ω", "1.3 Ω", "1.5 Ω", "1.6 Ω", "1.8 Ω", "2 Ω", "2.2 Ω", "2.4 Ω",
                            "2.7 Ω", "3 Ω", "3.3 Ω", "3.6 Ω", "3.9 Ω", "4.3 Ω", "4.7 Ω", "5.1 Ω", "5.6 Ω", "6.2 Ω",
                            "6.8 Ω", "7.5 Ω", "8.2 Ω", "9.1 Ω", "10 Ω"))));

    private static final Pattern EDITS = Pattern.compile("edits: \\{(.*)}\\s*$");
    private static final Pattern EDIT = Pattern.compile("'?(/[^':]+|/[^:]+?)'?: ([^,{}']+)(?:,|$)");

    @Test
    void every_size_that_a_way_out_proposes_is_one_that_is_sold() throws IOException {
        List<String> unsold = new ArrayList<>();
        Map<String, Integer> looked = new TreeMap<>();
        try (Stream<Path> files = Files.walk(PackExamples.FOLDER)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                for (String line : Files.readAllLines(file)) {
                    Matcher edits = EDITS.matcher(line);
                    if (edits.find()) {
                        look(file, edits.group(1), looked, unsold);
                    }
                }
            }
        }
        assertThat(unsold).isEmpty();
        assertThat(looked).hasSizeGreaterThan(10);
    }

    private static void look(Path file, String edits, Map<String, Integer> looked, List<String> unsold) {
        Matcher edit = EDIT.matcher(edits);
        while (edit.find()) {
            String path = edit.group(1).strip();
            String value = edit.group(2).strip().replaceFirst("^(\\d+)\\.0$", "$1");
            SERIES.forEach((end, series) -> {
                if (path.endsWith(end) && !value.equals("null")) {
                    looked.merge(end, 1, Integer::sum);
                    if (!series.contains(value)) {
                        unsold.add(file.getFileName() + ": " + path + " " + value);
                    }
                }
            });
        }
    }
}
