package org.leat.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apiguardian.api.API;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;

/** Counts what a run came to. Not safe to share between threads. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Tally {

    private final Map<Level, Long> failures = new EnumMap<>(Level.class);
    private final Map<Kind, Long> kinds = new EnumMap<>(Kind.class);
    private int files;
    private int unreadable;
    private int alternatives;
    private int broken;
    private boolean broke;
    private long suppressed;
    private long known;
    private long absent;
    private long idle;

    /** Nothing counted yet. */
    public Tally() {}

    /** Counts one design's report; its alternatives are counted as such only. */
    public void add(Report report) {
        files++;
        unreadable += report.readable() ? 0 : 1;
        alternatives += report.alternatives().size();
        broke |= report.broke();
        suppressed += report.suppressed().size();
        known += report.known().size();
        absent += report.absent().size();
        idle += report.idle().size();
        for (Level level : Level.values()) {
            failures.merge(level, report.failures(level), Long::sum);
        }
        for (Kind kind : Kind.values()) {
            kinds.merge(kind, report.count(kind), Long::sum);
        }
    }

    /** Counts a file over which this program broke. */
    public void addBroken() {
        files++;
        broken++;
        broke = true;
    }

    /** {@return how many files or designs} */
    public int files() {
        return files;
    }

    /** {@return how many of them could not be read as a design} */
    public int unreadable() {
        return unreadable;
    }

    /** {@return over how many of them this program broke} */
    public int broken() {
        return broken;
    }

    /** {@return whether a rule, or the program, broke} */
    public boolean broke() {
        return broke;
    }

    /** {@return failures of exactly that level} */
    public long failures(Level level) {
        return failures.getOrDefault(level, 0L);
    }

    /** {@return findings of a kind} */
    public long count(Kind kind) {
        return kinds.getOrDefault(kind, 0L);
    }

    /** {@return findings that do not count by someone's word} */
    public long suppressed() {
        return suppressed;
    }

    /** {@return findings that the baseline knows} */
    public long known() {
        return known;
    }

    /** {@return what the baseline knows and is found no more} */
    public long absent() {
        return absent;
    }

    /** {@return suppressions that suppress nothing} */
    public long idle() {
        return idle;
    }

    /** {@return whether there is a failure of that level or worse} */
    public boolean failsAt(Level level) {
        for (Level worse : Level.values()) {
            if (worse.compareTo(level) >= 0 && failures(worse) > 0) {
                return true;
            }
        }
        return false;
    }

    /** {@return the counts on one line} */
    public String line() {
        List<String> parts = new ArrayList<>();
        parts.add(count(files, "file checked", "files checked"));
        if (unreadable > 0) {
            parts.add(count(unreadable, "not readable as a design", "not readable as designs"));
        }
        if (broken > 0) {
            parts.add(broken + " not checked because this program broke");
        }
        parts.add(count(failures(Level.ERROR), "error", "errors"));
        parts.add(count(failures(Level.WARNING), "warning", "warnings"));
        parts.add(count(failures(Level.NOTE), "note", "notes"));
        parts.add(count(Kind.PASS) + " passed");
        parts.add(count(Kind.OPEN) + " not judged");
        if (count(Kind.REVIEW) > 0) {
            parts.add(count(Kind.REVIEW) + " for a person");
        }
        if (suppressed > 0) {
            parts.add(suppressed + " suppressed");
        }
        if (idle > 0) {
            parts.add(count(idle, "suppression of nothing", "suppressions of nothing"));
        }
        if (known > 0) {
            parts.add(known + " known from the baseline");
        }
        if (absent > 0) {
            parts.add(absent + " in the baseline and no more");
        }
        if (alternatives > 0) {
            parts.add(count(alternatives, "alternative beside", "alternatives beside"));
        }
        return String.join(", ", parts) + ".";
    }

    private static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }
}
