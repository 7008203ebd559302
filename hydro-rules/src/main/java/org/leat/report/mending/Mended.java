package org.leat.report.mending;

import java.util.List;
import org.leat.check.Finding;
import org.leat.check.Report;
import org.leat.check.WayOut;
import org.leat.file.DesignEdit;

/**
 * A design file's text with ways out carried into it.
 *
 * @param before what was found in the text as it was
 * @param after what is found in the text as it is now
 * @param text as it is now
 * @param steps the changes, in their order
 * @param left failures that were asked for and still stand, worst first
 */
public record Mended(Report before, Report after, String text, List<Step> steps, List<Left> left) {

    public Mended {
        steps = List.copyOf(steps);
        left = List.copyOf(left);
    }

    /**
     * One change.
     *
     * @param finding that it takes away
     * @param way what it carries out
     * @param edit of the text that the earlier changes left; lines stay where they are
     * @param lineBefore the line that it changes
     * @param lineAfter that line afterwards
     */
    public record Step(Finding finding, WayOut way, DesignEdit edit, String lineBefore, String lineAfter) {}

    /**
     * A failure that still stands.
     *
     * @param finding which
     * @param why no change took it away
     */
    public record Left(Finding finding, Why why) {}

    /** Why a failure was left; of several ways out, that of the one that came nearest. */
    public enum Why {
        /** No way out is known. */
        NO_WAY_OUT("no way out is known"),
        /** The ways out are advice, no values. */
        ADVICE_ONLY("its ways out are advice, no change of a value"),
        /** The ways out are other things than those on hand; a file that said they are would lie. */
        FACT("its ways out are things of other ratings: to be got, then written as they are"),
        /** The ways out change a part that is bought or built already. */
        ON_HAND("its ways out change what is on hand already"),
        /** The ways out change several values at once. */
        SEVERAL_VALUES("its ways out change several values at once"),
        /** The value stands in no file, in a parts file, or in a form that is not replaced. */
        NOT_IN_PLACE("the value to be changed does not stand in this file as one plain value"),
        /** The value is a list, which is not replaced. */
        LIST("the value to be changed is a list, and a list cannot be edited here: write it yourself"),
        /** An earlier change set that value. */
        CHANGED_ALREADY("an earlier change has set the value that would have to change"),
        /** Judged again, the change does not help or brings another failure as bad. */
        BRINGS_ANOTHER("its ways out bring another failure as bad"),
        /** The changes together made something worse that can hurt: none of them is kept. */
        WORSE_TOGETHER("the changes together make worse what can hurt someone, so that none is kept"),
        /** The limit of changes in one run was reached. */
        TOO_MANY_CHANGES("too many changes for one run");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** {@return the reason in words} */
        public String words() {
            return words;
        }
    }
}
