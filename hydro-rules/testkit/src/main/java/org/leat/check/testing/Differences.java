package org.leat.check.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is found against what is expected: each finding once, in no order. */
final class Differences {

    private Differences() {}

    /** {@return every difference, empty if there is none} */
    static List<String> of(List<Told> expected, List<Told> found) {
        List<Told> missing = new ArrayList<>();
        List<Told> left = new ArrayList<>(found);
        for (Told told : expected) {
            Optional<Told> met =
                    left.stream().filter(f -> of(told, f).isEmpty()).findFirst();
            met.ifPresentOrElse(left::remove, () -> missing.add(told));
        }
        List<String> differences = new ArrayList<>();
        for (Told told : missing) {
            Optional<Told> other = left.stream()
                    .filter(f -> f.subject().equals(told.subject()))
                    .findFirst();
            if (other.isPresent()) {
                left.remove(other.get());
                differences.addAll(of(told, other.get()));
            } else {
                differences.add("not found: " + told.line());
            }
        }
        left.forEach(told -> differences.add("not expected: " + told.line()));
        return differences;
    }

    /** What is told of a finding and is not so; only its position may be left unsaid. */
    private static List<String> of(Told expected, Told found) {
        List<String> differences = new ArrayList<>();
        if (!expected.rule().equals(found.rule())) {
            differences.add(said(expected, "rule", expected.rule(), found.rule()));
        }
        for (String name : Told.FACTS) {
            boolean unsaid = name.equals(Told.POSITION) && expected.fact(name).isEmpty();
            if (!unsaid && !expected.fact(name).equals(found.fact(name))) {
                differences.add(said(expected, name, expected.fact(name), found.fact(name)));
            }
        }
        if (!expected.text().equals(found.text())) {
            differences.add(said(expected, "text", expected.text(), found.text()));
        }
        for (Told.Way way : expected.waysOut()) {
            if (!found.waysOut().contains(way)) {
                differences.add(expected.subject() + ": way out not offered: " + way);
            }
        }
        for (Told.Way way : found.waysOut()) {
            if (!expected.waysOut().contains(way)) {
                differences.add(expected.subject() + ": way out not expected: " + way);
            }
        }
        if (differences.isEmpty() && !expected.waysOut().equals(found.waysOut())) {
            differences.add(expected.subject() + ": ways out in another order: " + found.waysOut());
        }
        return differences;
    }

    private static String said(Told of, String what, String expected, String found) {
        return of.subject() + ": " + what + " expected \"" + expected + "\", found \"" + found + "\"";
    }
}
