package org.leat.readings;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What came of many diagnoses of one fault, size and way of reading, or of several of them together. */
final class FaultTally {

    int draws;
    /** Draws that these readings together would not show by three standard uncertainties: not counted below. */
    int hidden;
    /** Draws that move a reading by three standard uncertainties; of these what follows. */
    int seen;
    /** The fault itself named first. */
    int first;
    /** The fault itself, or one that cannot be told from it. */
    int group;
    /** Nothing named first. */
    int nothing;
    /** Of all that is not hidden: called above 90 %, and of these not right. */
    int sure;

    int sureWrong;
    /** By tenth of the probability of the first: how many, how many right. */
    final int[] called = new int[11];

    final int[] right = new int[11];

    /**
     * Counts one diagnosis.
     *
     * @param moves whether the fault moves a reading by three standard uncertainties; of a sound plant so
     * @param shows whether it moves all of them together by as much; of a sound plant so
     */
    void count(FaultKind kind, Diagnosis said, boolean moves, boolean shows) {
        Diagnosis.Ranked first = said.ranked().get(0);
        boolean named = first.kind() == kind;
        draws++;
        if (moves) {
            seen++;
            this.first += named ? 1 : 0;
            group += named || said.alike().contains(kind) ? 1 : 0;
            nothing += first.kind() == FaultKind.NOTHING ? 1 : 0;
        }
        if (!shows) {
            hidden++;
            return;
        }
        double probability = said.probability(first.kind());
        int tenth = (int) Math.round(probability * 10);
        called[tenth]++;
        right[tenth] += named ? 1 : 0;
        if (probability > 0.9) {
            sure++;
            sureWrong += named ? 0 : 1;
        }
    }

    /** {@return all its counts in a line} */
    String line() {
        return numbers(new int[] {draws, hidden, seen, first, group, nothing, sure, sureWrong}) + " " + numbers(called)
                + " " + numbers(right);
    }

    /** Adds the counts of another run. */
    void add(FaultTally other) {
        draws += other.draws;
        hidden += other.hidden;
        seen += other.seen;
        first += other.first;
        group += other.group;
        nothing += other.nothing;
        sure += other.sure;
        sureWrong += other.sureWrong;
        for (int i = 0; i < called.length; i++) {
            called[i] += other.called[i];
            right[i] += other.right[i];
        }
    }

    private static String numbers(int[] counts) {
        return Arrays.stream(counts).mapToObj(Integer::toString).collect(Collectors.joining(" "));
    }

    static FaultTally of(String line) {
        String[] words = line.split(" ", -1);
        FaultTally tally = new FaultTally();
        tally.draws = Integer.parseInt(words[0]);
        tally.hidden = Integer.parseInt(words[1]);
        tally.seen = Integer.parseInt(words[2]);
        tally.first = Integer.parseInt(words[3]);
        tally.group = Integer.parseInt(words[4]);
        tally.nothing = Integer.parseInt(words[5]);
        tally.sure = Integer.parseInt(words[6]);
        tally.sureWrong = Integer.parseInt(words[7]);
        for (int i = 0; i < 11; i++) {
            tally.called[i] = Integer.parseInt(words[8 + i]);
            tally.right[i] = Integer.parseInt(words[19 + i]);
        }
        return tally;
    }
}
