package org.leat.sure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.leat.check.Examined;
import org.leat.check.Finding;
import org.leat.check.Identity;
import org.leat.quantity.QuantityKind;

/**
 * How sure the verdicts on a design are. Counts what the design states a tolerance for and what had to be assumed within a range,
 * each alike over its range and independent of the others; a number written without a tolerance is taken as exact, and so are the
 * laws. Immutable, and the same at every call: nothing is drawn at random.
 *
 * @param inputs what may vary
 * @param verdicts one for each finding that compares a value or hangs on an assumption, in the report's order
 * @param points how many plants were solved for the verdicts that are sampled; 0 if there were none
 * @param anyError share of these plants in which anything fails as an error, 1 where an error stands that is not near its limit; empty
 *     where none does and nothing was sampled
 * @param doubtful share of them in which none does and one that might could not be judged: added to {@code anyError} it is the most
 *     that may fail
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Sureness(
        List<Input> inputs, List<OfVerdict> verdicts, int points, OptionalDouble anyError, double doubtful) {

    /** A verdict nearer to its limit than this many standard uncertainties is sampled. */
    public static final double NEAR = 3;

    public Sureness {
        inputs = List.copyOf(inputs);
        verdicts = List.copyOf(verdicts);
    }

    /**
     * What may vary, by anything between two ends alike.
     *
     * @param path field of the design
     * @param origin why it is not exact
     * @param kind what it measures
     * @param value the design was solved with, SI
     * @param low least it may be, SI
     * @param high most it may be, SI
     */
    public record Input(String path, Origin origin, QuantityKind kind, double value, double low, double high) {

        /** {@return its standard uncertainty, SI} */
        public double standardUncertainty() {
            return Rectangular.standardUncertainty(low, high);
        }
    }

    /** Why an input is not exact. */
    public enum Origin {
        /** the design states a tolerance, or readings from which one comes. */
        TOLERANCE,
        /** it is not stated and was taken from a range. */
        ASSUMPTION
    }

    /** What a probability rests on. */
    public enum Basis {
        /** nothing that may vary moves the value: neither sure nor unsure is said of it. */
        UNMOVED,
        /** slopes at the values taken: the limit is further away than {@link #NEAR} uncertainties. */
        FIRST_ORDER,
        /**
         * plants solved all over the ranges: where the limit is near, where the value is not straight in an input, and where a rule
         * answers something else when an input is moved.
         */
        SAMPLED
    }

    /**
     * What one input does to one value.
     *
     * @param path of the input
     * @param contribution to the distance from the limit by one standard uncertainty of the input, in the value's SI unit; towards
     *     failing if positive
     * @param share of the square of the value's uncertainty, 0 to 1
     */
    public record Share(String path, double contribution, double share) {}

    /**
     * How sure one verdict is.
     *
     * @param finding the verdict; its kind stands, whatever the probability
     * @param basis what the probability rests on
     * @param uncertainty standard uncertainty of the distance between value and limit, SI; empty where there is none
     * @param failing probability that it fails; empty where none can be told
     * @param undecided share of the plants sampled in which it could not be judged: added to {@code failing} it is the most that
     *     may fail
     * @param shares of the inputs, the one that matters most first; those that matter not at all are left out
     */
    public record OfVerdict(
            Finding finding,
            Basis basis,
            OptionalDouble uncertainty,
            OptionalDouble failing,
            double undecided,
            List<Share> shares) {

        public OfVerdict {
            shares = List.copyOf(shares);
        }

        /** {@return which finding} */
        public Identity identity() {
            return finding.outcome().identity();
        }

        /** {@return the input that matters most; empty where none does} */
        public Optional<Share> most() {
            return shares.stream().findFirst();
        }
    }

    /** {@return how sure the verdicts of an examined design are} Costs some hundreds of solutions of the plant. */
    public static Sureness of(Examined examined) {
        return Study.of(examined, Study.POINTS);
    }
}
